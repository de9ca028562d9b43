package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;
import stillturning.parts.element.curve.TimeCurrentCurve;

/**
 * A thermal breaker between {@code in} and {@code out}, rating in ampere; a pilot can pull and
 * reset it.
 */
public record Breaker(Tag tag, double ratedAmps, double ohms, TimeCurrentCurve curve)
        implements Part {

    /** A bimetal cools in about a minute. Common practice, no published source. */
    private static final double COOLING_SECONDS = 60;

    @Override
    public List<String> terminals() {
        return List.of("in", "out");
    }

    @Override
    public List<Element> elements() {
        return List.of(
                new Protector(
                        "breaker", "in", "out", ohms, ratedAmps, curve, COOLING_SECONDS, true));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("opens for no reason", Faults.open("breaker")),
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
}
