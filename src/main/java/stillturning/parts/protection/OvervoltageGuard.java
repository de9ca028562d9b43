package stillturning.parts.protection;

import com.google.auto.service.AutoService;
import java.util.List;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.InLine;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Guard.Action;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

/**
 * Over-voltage protection in a feed: {@code in} to {@code out}, measured from {@code in} to {@code
 * minus}. One kind opens the feed, the other shorts its input to {@code minus}; both for good.
 *
 * @param ohms resistance of its way through, and of its short (ohm)
 */
public record OvervoltageGuard(Tag tag, Guard.GuardTrip trip, double ohms) implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "overvoltage-guard",
                    "over-voltage guard",
                    "over-voltage guards",
                    90,
                    Values.class,
                    "bench test with a raised voltage");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a guard. */
    @Describes("Acts when the voltage is too high.")
    public record Values(
            @Describes("disconnects (opens its feed) or shorts (joins its input to minus).")
                    Action acts,
            @Describes("Acts when this is exceeded.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("raise a bench supply on its sense lead slowly until it acts")
                    double trip,
            @Describes("... for longer than this.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    @MeasuredBy(
                            "step a bench supply above its trip and time it with an oscilloscope")
                    double after,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance)
            implements PartValues {

        @Override
        public OvervoltageGuard part(Tag tag, PartSurroundings site) {
            return new OvervoltageGuard(tag, new Guard.GuardTrip(trip, after, acts), resistance);
        }
    }

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
        return shorts()
                ? List.of(
                        new Conductor("way", "in", "out", ohms),
                        new Guard("guard", "in", "minus", "in", "minus", ohms, trip))
                : List.of(new Guard("guard", "in", "out", "in", "minus", ohms, trip));
    }

    @Override
    public List<FailureMode> failureModes() {
        return shorts()
                ? List.of(
                        opens("way"),
                        FailureMode.of("shorts-for-no-reason", Faults.shortBetween("in", "minus")),
                        FailureMode.of("does-not-short-when-it-should", Faults.open("guard")))
                : List.of(
                        opens("guard"),
                        FailureMode.of(
                                "does-not-open-when-it-should",
                                Faults.metalFor(elements().get(0), ohms)));
    }

    @Override
    public boolean takesMany(String terminal) {
        return terminal.equals("minus");
    }

    private boolean shorts() {
        return trip.action() == Action.SHORTS;
    }

    private static FailureMode opens(String element) {
        return FailureMode.of("opens-for-no-reason", Faults.open(element))
                .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED);
    }

    @Override
    public List<Symbol> symbols() {
        String volts = Detail.written(trip.volts(), "V");
        String acts = shorts() ? "shorts at " : "opens at ";
        return List.of(Symbol.around(this, Figure.BOX, acts + volts));
    }
}
