package stillturning.parts.source;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import stillturning.parts.Symbol.Pin;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.Symbol.When;
import stillturning.parts.Tag;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

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

    static final PartKind KIND =
            new PartKind(
                    "alternator",
                    "alternator",
                    "alternators",
                    20,
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

    /** Where its magnetism comes from. */
    public enum Excitation {
        FIELD,
        MAGNETS
    }

    /** A point of its output curve. */
    public record SpeedPoint(
            @OfDimension(value = Dimension.ROTATION, least = "0 rpm") double at,
            @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %") double share) {}

    /** What is known of an alternator. */
    @Describes("Makes current while the engine turns it, with its regulator.")
    public record Values(
            @Describes("Current at full speed.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    @MeasuredBy(
                            "load it at flying speed until its voltage falls, with a clamp meter on"
                                    + " its lead")
                    double rating,
            @Describes("Share of its rating by speed.") List<SpeedPoint> output,
            @Describes("Voltage that its regulator holds without load.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy(
                            "the voltage at its terminals at flying speed, all loads off, battery"
                                    + " full")
                    double setPoint,
            @Describes("Fall of its voltage with current.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy(
                            "two loads at flying speed: the difference of its voltages over that of"
                                    + " its currents")
                    double droop,
            @GrowsWithVolts(power = 2)
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy("an ohmmeter across its field, cold, leads off")
                    double fieldResistance,
            @Describes("Where its magnetism comes from: field (a fed winding) or magnets.")
                    Excitation excitation,
            @Describes("What becomes of it when no battery is joined to it.")
                    WithoutBattery withoutBattery,
            @Describes(
                            "Largest resistance that a battery may be behind and still steady it,"
                                    + " as a share of its set point over its rating.")
                    @OfDimension(value = Dimension.RATIO, above = "0 %")
                    double steadying,
            @Describes("Highest voltage when it loses its battery while it charges it.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("its maker's sheet: do not try it on the aircraft")
                    double dumpClamp,
            @Describes("... and how long that lasts.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    @MeasuredBy("its maker's sheet: do not try it on the aircraft")
                    double dumpLasts)
            implements PartValues {

        @Override
        public Alternator part(Tag tag, PartSurroundings site) {
            if (dumpClamp < setPoint) {
                throw new IllegalArgumentException(
                        "alternator: dump-clamp "
                                + dumpClamp
                                + " V is below its set-point "
                                + setPoint
                                + " V");
            }
            List<OutputBySpeed.OutputPoint> points =
                    output.stream()
                            .map(
                                    p ->
                                            new OutputBySpeed.OutputPoint(
                                                    p.at / SECONDS_PER_MINUTE, p.share * rating))
                            .toList();
            return new Alternator(
                    tag,
                    new Regulation(setPoint, droop),
                    new OutputBySpeed(points),
                    fieldResistance,
                    excitation == Excitation.FIELD ? setPoint : 0,
                    new Alone(withoutBattery, steadying, dumpClamp, dumpLasts));
        }
    }

    private static final double SECONDS_PER_MINUTE = 60;

    /** A regulator stuck at full field, against its set point. Common practice, no source. */
    private static final double RUNAWAY = 1.35;

    /**
     * A regulator whose ground or sense lead has some resistance, against its set point: it sees
     * less than the bus has. 15.5 V where 13 V were usual were seen in flight.
     *
     * @see "NTSB report WPR18LA021, read in a second source; the ratio is a guess within it"
     */
    private static final double REGULATES_HIGH = 1.1;

    /** One phase of three lost. Common practice, no published source. */
    private static final double PART_OUTPUT = 0.5;

    /** The field builds up above the first and collapses below the second voltage. Guess. */
    private static final double EXCITES_VOLTS = 5;

    private static final double COLLAPSES_VOLTS = 3;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("output", "field", "case");
    }

    @Override
    public List<Element> elements() {
        return List.of(generator(output), field());
    }

    private Coil field() {
        return new Coil("field", "field", "case", fieldOhms, EXCITES_VOLTS, COLLAPSES_VOLTS, 0, 0);
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("no-output", Faults.open("generator"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.of("part-output", new Put(generator(output.scaled(PART_OUTPUT)))),
                FailureMode.of("over-voltage", "over-voltage", List.of(new Put(runaway()))),
                FailureMode.of(
                        "regulates-high",
                        new Put(
                                generator(output)
                                        .regulatingAt(regulation.setVolts() * REGULATES_HIGH))),
                FailureMode.of(fed() + "-open", Faults.open("field")),
                FailureMode.shorted(fed() + "-shorted", field()),
                FailureMode.of(
                        "output-short",
                        Faults.open("generator"),
                        Faults.shortBetween("output", "case")));
    }

    /**
     * What its terminal for exciting it feeds: magnets need no field, but their regulator a supply.
     */
    private String fed() {
        return generator(output).hasMagnets() ? "regulator" : "field";
    }

    /**
     * Magnets and a regulator that passes all through need no supply, so no switch of the
     * regulator's supply stops them. Common practice, no published source.
     */
    private Generator runaway() {
        Generator high = generator(output).regulatingAt(regulation.setVolts() * RUNAWAY);
        return high.hasMagnets() ? high.unfed() : high;
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

    @Override
    public List<String> inputs() {
        return List.of("field");
    }

    @Override
    public List<String> sourceTerminals() {
        return List.of("output");
    }

    @Override
    public Optional<String> across(String terminal) {
        return Optional.empty();
    }

    @Override
    public OptionalDouble mostAmps(String terminal) {
        return terminal.equals("output")
                ? OptionalDouble.of(output.largestAmps())
                : OptionalDouble.empty();
    }

    @Override
    public String detail() {
        return Detail.amps(output.largestAmps());
    }

    /**
     * The field, or the regulator, is fed from the loads' side, so it gets a box of its own there.
     */
    @Override
    public List<Symbol> symbols() {
        return List.of(
                Symbol.of(
                        this,
                        Figure.ALTERNATOR,
                        Detail.written(output.largestAmps(), "A"),
                        List.of(Pin.at(PinEdge.RIGHT, "output"), Pin.at(PinEdge.LEFT, "case"))),
                Symbol.consumer(
                        this,
                        fed(),
                        List.of(Pin.at(PinEdge.LEFT, "field").as("plus")),
                        When.JOINED));
    }
}
