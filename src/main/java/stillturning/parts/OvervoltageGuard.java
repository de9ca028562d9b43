package stillturning.parts;

import java.util.List;
import stillturning.element.Element;
import stillturning.element.Guard;

/**
 * Over-voltage protection in a feed: {@code in} to {@code out}, measured from {@code in} to {@code
 * minus}; opens for good.
 *
 * @param tripVolts limit (V)
 * @param tripSeconds how long it must be exceeded (s)
 * @param ohms resistance while closed (ohm)
 */
public record OvervoltageGuard(Tag tag, double tripVolts, double tripSeconds, double ohms)
        implements Part {

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(
                new Guard("guard", "in", "out", "in", "minus", ohms, tripVolts, tripSeconds));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("opens for no reason", Faults.open("guard")),
                FailureMode.of(
                        "does not open when it should", Faults.metalFor(elements().get(0), ohms)));
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
}
