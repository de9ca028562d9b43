package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Guard.Action;

/**
 * Over-voltage protection in a feed: {@code in} to {@code out}, measured from {@code in} to {@code
 * minus}. One kind opens the feed, the other shorts its input to {@code minus}; both for good.
 *
 * @param ohms resistance of its way through, and of its short (ohm)
 */
public record OvervoltageGuard(Tag tag, Guard.Trip trip, double ohms) implements Part {

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
                        FailureMode.of("opens for no reason", Faults.open("way")),
                        FailureMode.of("shorts for no reason", Faults.shortBetween("in", "minus")),
                        FailureMode.of("does not short when it should", Faults.open("guard")))
                : List.of(
                        FailureMode.of("opens for no reason", Faults.open("guard")),
                        FailureMode.of(
                                "does not open when it should",
                                Faults.metalFor(elements().get(0), ohms)));
    }

    @Override
    public String entry() {
        return "in";
    }

    @Override
    public String exit() {
        return "out";
    }

    @Override
    public boolean takesMany(String terminal) {
        return terminal.equals("minus");
    }

    private boolean shorts() {
        return trip.action() == Action.SHORTS;
    }
}
