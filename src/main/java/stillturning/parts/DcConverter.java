package stillturning.parts;

import java.util.List;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;

/**
 * DC–DC converter: {@code in} and {@code out} over a shared {@code minus}.
 *
 * @param efficiency power out over power in, above 0 to 1
 */
public record DcConverter(Tag tag, Rating rating, double efficiency, Conversion.Input input)
        implements Part {

    /** Output voltage (V), droop (ohm), current limit (A). */
    public record Rating(double setVolts, double droopOhms, double limitAmps) {}

    /** Output with its regulator gone, against its set point. Guess. */
    private static final double RUNAWAY = 1.35;

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(conversion(rating.setVolts));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("no output", Faults.open("converter")),
                FailureMode.of("over-voltage", new Put(conversion(rating.setVolts * RUNAWAY))));
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

    private Conversion conversion(double setVolts) {
        Conversion.Output output =
                new Conversion.Output("out", "minus", setVolts, rating.droopOhms, rating.limitAmps);
        return new Conversion("converter", "in", "minus", output, efficiency, input);
    }
}
