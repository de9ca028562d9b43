package stillturning.report.joint;

import static java.util.Map.entry;

import java.util.Map;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.protection.Breaker;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Connector;
import stillturning.parts.switching.Contactor;
import stillturning.parts.source.DcConverter;
import stillturning.parts.joining.Diode;
import stillturning.parts.protection.Fuse;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.Load;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.switching.Switch;
import stillturning.parts.Wire;

/**
 * How to look for a failure that no check shows, by part kind and mode. Common practice of the
 * trade, with no published source.
 */
final class InspectionWays {

    private static final String JOINT = "look at it, tug it, measure its resistance end to end";
    private static final String OUTPUT = "measure its voltage and its output under full load";

    /** Where the words of a failure mode ask for something else. */
    private record Way(Class<? extends Part> kind, String mode, String words) {}

    private static final Way[] BY_MODE = {
        new Way(Battery.class, "capacity lost", "capacity test at a known current, against time"),
        new Way(Breaker.class, "does not open when it should", "bench test of its trip"),
        new Way(Fuse.class, "does not open when it should", "look at its type and rating"),
        new Way(Load.class, "input diode", "feed each input alone, measure at the other"),
        new Way(Load.class, "input", "measure the resistance of its inputs, out of circuit"),
        new Way(Wire.class, "chafed", "look along its run, measure to ground with both ends off"),
    };

    /** Every kind of part. */
    static final Map<Class<? extends Part>, String> BY_KIND =
            Map.ofEntries(
                    entry(Alternator.class, OUTPUT),
                    entry(Battery.class, "measure its voltage at rest and while cranking"),
                    entry(Breaker.class, "pull it and measure on both sides"),
                    entry(Bus.class, "look at its studs, measure from stud to stud"),
                    entry(Connector.class, JOINT),
                    entry(Contactor.class, "measure across its contacts, coil off and on"),
                    entry(DcConverter.class, OUTPUT),
                    entry(Diode.class, "measure it both ways, out of circuit"),
                    entry(Fuse.class, "measure across it"),
                    entry(GroundPoint.class, JOINT),
                    entry(Load.class, "run it by itself, the other one off"),
                    entry(OvervoltageGuard.class, "bench test with a raised voltage"),
                    entry(SolidStateController.class, "switch the channel, measure at its output"),
                    entry(Switch.class, "measure across each pole in each position"),
                    entry(Wire.class, JOINT));

    private InspectionWays() {}

    /** In words, for the work list of an inspection. */
    static String of(Part part, String mode) {
        for (Way way : BY_MODE) {
            if (way.kind.isInstance(part) && mode.startsWith(way.mode)) {
                return way.words;
            }
        }
        String words = BY_KIND.get(part.getClass());
        if (words == null) {
            throw new IllegalStateException("nobody says how to inspect " + part.id());
        }
        return words;
    }
}
