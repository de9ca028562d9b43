package stillturning.parts.source;

import com.google.auto.service.AutoService;
import java.util.List;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

/**
 * DC–DC converter: {@code in} and {@code out} over a shared {@code minus}.
 *
 * @param efficiency power out over power in, above 0 to 1
 */
public record DcConverter(Tag tag, Rating rating, double efficiency, Conversion.InputSide input)
        implements Part {

    static final PartKind KIND =
            new PartKind(
                    "converter",
                    "converter",
                    "converters",
                    30,
                    Values.class,
                    "measure its voltage and its output under full load");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a converter. */
    @Describes("Makes a steady voltage of another one.")
    public record Values(
            @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("the voltage at its output, unloaded")
                    double output,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy(
                            "two loads on its output: the difference of the voltages over that of"
                                    + " the currents")
                    double droop,
            @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    @MeasuredBy("load its output until the voltage falls")
                    double limit,
            @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    @MeasuredBy("volts and amps at its input and at its output, loaded")
                    double efficiency,
            @OfDimension(value = Dimension.POWER, least = "0 W")
                    @MeasuredBy("the current at its input with nothing at its output")
                    double idle,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("lower a bench supply at its input until it stops")
                    double minimum,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("raise a bench supply at its input until it comes back")
                    double restart)
            implements PartValues {

        @Override
        public DcConverter part(Tag tag, PartSurroundings site) {
            return new DcConverter(
                    tag,
                    new Rating(output, droop, limit),
                    efficiency,
                    new Conversion.InputSide(idle, minimum, restart));
        }
    }

    /** Output voltage (V), droop (ohm), current limit (A). */
    public record Rating(double setVolts, double droopOhms, double limitAmps) {}

    /** Output with its regulator gone, against its set point. Guess. */
    private static final double RUNAWAY = 1.35;

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
        return List.of(conversion(rating.setVolts));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("no-output", Faults.open("converter"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.of(
                        "over-voltage",
                        "over-voltage",
                        List.of(new Put(conversion(rating.setVolts * RUNAWAY)))));
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
        Conversion.OutputSide output =
                new Conversion.OutputSide(
                        "out", "minus", setVolts, rating.droopOhms, rating.limitAmps);
        return new Conversion("converter", "in", "minus", output, efficiency, input);
    }

    @Override
    public List<Symbol> symbols() {
        String volts = Detail.written(rating.setVolts, "V");
        return List.of(Symbol.around(this, Figure.CONVERTER, volts));
    }
}
