package stillturning.model.wiring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Installation.Lay;
import stillturning.model.Installation.Laying;
import stillturning.model.Join;
import stillturning.model.Study.Aircraft;
import stillturning.model.Terminal;
import stillturning.model.wiring.Ampacity.WireSurroundings;
import stillturning.parts.Cable;
import stillturning.parts.Wire;

/** Where each wire of a candidate lies, and what that makes of its copper. */
public final class WirePlaces {

    /** Thicker wires lie alone: published bundle currents change their basis here as well. */
    private static final double THICK_CIRCULAR_MILS = Cable.awg("8").orElseThrow().circularMils();

    private final Aircraft aircraft;
    private final Laying laying;
    private final Map<String, Lay> said;
    private final Candidate candidate;
    private final Map<Terminal, Terminal> partners = new HashMap<>();

    /**
     * @param said what is said of single wires, by part
     */
    public WirePlaces(
            Aircraft aircraft, Laying laying, Map<String, Lay> said, Candidate candidate) {
        this.aircraft = aircraft;
        this.laying = laying;
        this.said = said;
        this.candidate = candidate;
        for (Join join : candidate.joins()) {
            partners.putIfAbsent(join.one(), join.other());
            partners.putIfAbsent(join.other(), join.one());
        }
    }

    /** What its first end is joined to; the end itself where that is nothing. */
    public Terminal from(Wire wire) {
        return partner(new Terminal(wire.id(), wire.entry()));
    }

    /** What its second end is joined to; the end itself where that is nothing. */
    public Terminal to(Wire wire) {
        return partner(new Terminal(wire.id(), wire.exit()));
    }

    private Terminal partner(Terminal end) {
        return partners.getOrDefault(end, end);
    }

    /** Zones of what it is joined to. */
    public List<String> zones(Wire wire) {
        return Stream.of(from(wire), to(wire))
                .map(end -> candidate.part(end.part()).map(p -> p.tag().zone()))
                .map(zone -> zone.orElse(wire.tag().zone()))
                .distinct()
                .toList();
    }

    /** What is said of it. */
    public Lay lay(Wire wire) {
        return said.getOrDefault(wire.id(), Lay.UNSAID);
    }

    /** Where a size of wire would lie in a wire's place. */
    public WireSurroundings place(Wire wire, Cable cable) {
        Lay lay = lay(wire);
        boolean thick = cable.circularMils() >= THICK_CIRCULAR_MILS;
        return new WireSurroundings(
                zones(wire).stream().mapToDouble(aircraft::celsius).max().orElseThrow(),
                lay.insulationCelsius().orElse(laying.insulationCelsius()),
                laying.altitudeMetres(),
                lay.bundleWires().orElse(thick ? 1 : laying.bundleWires()),
                laying.bundleLoading());
    }

    /** Continuous current (A) of a size of wire in a wire's place. */
    public double mostAmps(Wire wire, Cable cable) {
        return Ampacity.of(cable, place(wire, cable));
    }

    /**
     * Resistance of a size in a wire's place while it carries a current (A), as a multiple of that
     * at 20 °C; infinite where it is hotter than the insulation stands.
     */
    public double warmth(Wire wire, Cable cable, double amps) {
        WireSurroundings place = place(wire, cable);
        double most = Ampacity.of(cable, place);
        return most > 0
                ? Ampacity.hotter(Ampacity.conductorCelsius(amps, most, place))
                : Double.POSITIVE_INFINITY;
    }
}
