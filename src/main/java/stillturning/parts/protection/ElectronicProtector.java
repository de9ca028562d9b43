package stillturning.parts.protection;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.InLine;
import stillturning.parts.Lever;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Protection;
import stillturning.parts.Tag;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Channel.Switching;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Tolerance;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.OfDimension;

/**
 * One electronic switch with a trip between {@code in} and {@code out}, whose own logic lives on
 * {@code in} and {@code minus}: where several are fitted, each fails alone.
 *
 * @param closedByDefault state while its logic does not run
 */
public record ElectronicProtector(
        Tag tag, Switching switching, double ratedAmps, Demand logic, boolean closedByDefault)
        implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "electronic-protector",
                    "electronic protector",
                    "electronic protectors",
                    109,
                    Values.class,
                    "switch it, measure at its output");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of an electronic protector. */
    @Describes("One electronic channel in the place of a switch and a breaker, with its own logic.")
    public record Values(
            @Example("5 A (guess)") @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double rating,
            @Describes("On-resistance.") @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance,
            @Describes("Current limit as a share of its rating, in per cent.")
                    @OfDimension(value = Dimension.RATIO, above = "100 %")
                    double limit,
            @Describes("What its logic draws at the study's nominal voltage.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double logicDraws,
            @Describes("Whether it is on while its logic does not run.") boolean defaultOn)
            implements PartValues {

        @Override
        public ElectronicProtector part(Tag tag, PartSurroundings site) {
            return new ElectronicProtector(
                    tag,
                    new Switching(resistance, rating * limit),
                    rating,
                    new Demand(Demand.DemandKind.CONSTANT_POWER, logicDraws, site.nominalVolts()),
                    defaultOn);
        }
    }

    /** Its logic works from 5 V on, bridges 10 ms and starts in 10 ms. A guess. */
    private static final Tolerance LOGIC =
            new Tolerance(5, 5, 0.01, 0.01, Double.POSITIVE_INFINITY, 0);

    /** Its trip forgets its heat in this time (s). A guess. */
    private static final double COOLING_SECONDS = 10;

    /** What does not measure neither limits nor trips: more than any battery gives (A). */
    private static final double BLIND_AMPS = 1e6;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(
                new Consumer("logic", entry(), "minus", logic, LOGIC),
                channel(switching, ratedAmps));
    }

    @Override
    public List<FailureMode> failureModes() {
        Channel channel = channel(switching, ratedAmps);
        Channel blind = channel(new Switching(switching.ohms(), BLIND_AMPS), BLIND_AMPS);
        return List.of(
                FailureMode.of("off", Faults.open("channel"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.of("logic-dead", Faults.open("logic")).by(Damage.HUNG),
                FailureMode.of("trips-for-no-reason", Faults.open("channel")),
                FailureMode.of("stuck-on", Faults.metalFor(channel, switching.ohms())),
                FailureMode.of("does-not-trip-when-it-should", new Put(blind))
                        .inspectedBy("bench test of its trip"));
    }

    private Channel channel(Switching by, double tripAmps) {
        Trip trip = new Trip(tripAmps, ProtectorCurves.ELECTRONIC_TRIP, COOLING_SECONDS);
        return new Channel("channel", entry(), exit(), by, trip, "logic", closedByDefault, id());
    }

    @Override
    public List<Lever> levers() {
        return List.of(Lever.of(id(), "channel", Lever.COMMANDED));
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        Protection trip = new Protection(Protection.Chart.BREAKER, ratedAmps);
        return Optional.of(trip).filter(t -> !terminal.equals("minus"));
    }

    @Override
    public int logics() {
        return 1;
    }

    @Override
    public String detail() {
        return Detail.amps(ratedAmps);
    }
}
