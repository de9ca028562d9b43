package stillturning.parts;

import java.util.List;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.curve.OutputBySpeed;

/**
 * Alternator with its regulator: {@code output}, {@code field} (supply of the field winding) and
 * {@code case}.
 *
 * @param fieldOhms resistance of the field circuit (ohm)
 * @param fullFieldVolts voltage at {@code field} from which it gives all of its output (V); 0 if
 *     magnets make its field, and {@code field} only feeds its regulator
 * @param alone how it fares without a battery
 */
public record Alternator(
        Tag tag,
        Regulation regulation,
        OutputBySpeed output,
        double fieldOhms,
        double fullFieldVolts,
        Alone alone)
        implements Part {

    /** A regulator stuck at full field, against its set point. Common practice, no source. */
    private static final double RUNAWAY = 1.35;

    /** One phase of three lost. Common practice, no published source. */
    private static final double PART_OUTPUT = 0.5;

    /** The field builds up above the first and collapses below the second voltage. Guess. */
    private static final double EXCITES_VOLTS = 5;

    private static final double COLLAPSES_VOLTS = 3;

    @Override
    public List<String> terminals() {
        return List.of("output", "field", "case");
    }

    @Override
    public List<Element> elements() {
        return List.of(
                generator(output),
                new Coil(
                        "field", "field", "case", fieldOhms, EXCITES_VOLTS, COLLAPSES_VOLTS, 0, 0));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("no output", Faults.open("generator")),
                FailureMode.of("part output", new Put(generator(output.scaled(PART_OUTPUT)))),
                FailureMode.of(
                        "over-voltage",
                        new Put(generator(output).regulatingAt(regulation.setVolts() * RUNAWAY))),
                FailureMode.of("field open", Faults.open("field")),
                FailureMode.of(
                        "output short",
                        Faults.open("generator"),
                        Faults.shortBetween("output", "case")));
    }

    @Override
    public String entry() {
        return "field";
    }

    @Override
    public String exit() {
        return "output";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    private Generator generator(OutputBySpeed amps) {
        return new Generator(
                "generator", "output", "case", regulation, amps, "field", fullFieldVolts, alone);
    }
}
