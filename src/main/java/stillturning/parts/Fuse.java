package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;
import stillturning.parts.element.curve.TimeCurrentCurve;

/** A fuse between {@code in} and {@code out}, rating in ampere; a pilot cannot replace it. */
public record Fuse(Tag tag, double ratedAmps, double ohms, TimeCurrentCurve curve) implements Part {

    /** A fuse element is thin and cools fast. Common practice, no published source. */
    private static final double COOLING_SECONDS = 10;

    @Override
    public List<String> terminals() {
        return List.of("in", "out");
    }

    @Override
    public List<Element> elements() {
        return List.of(
                new Protector("fuse", "in", "out", ohms, ratedAmps, curve, COOLING_SECONDS, false));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("opens for no reason", Faults.open("fuse")),
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
