package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Element;
import stillturning.parts.element.Rectifier;

/**
 * A diode from {@code in} (anode) to {@code out} (cathode).
 *
 * @param saturationAmps saturation current (A)
 * @param emissionVolts emission coefficient times thermal voltage (V)
 * @param ohms series resistance (ohm)
 */
public record Diode(Tag tag, double saturationAmps, double emissionVolts, double ohms)
        implements Part {

    @Override
    public List<String> terminals() {
        return List.of("in", "out");
    }

    @Override
    public List<Element> elements() {
        return List.of(new Rectifier("diode", "in", "out", saturationAmps, emissionVolts, ohms));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("diode")),
                FailureMode.of("shorted", Faults.metalFor(elements().get(0), ohms)));
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
