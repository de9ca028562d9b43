package stillturning.reliability.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.bench.Thorough;
import stillturning.parts.element.Cell;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.reliability.asbuilt.DischargeLog.LogSample;
import stillturning.reliability.asbuilt.FittedValue.BatteryValue;
import stillturning.reliability.asbuilt.FittedValue.Known;
import stillturning.reliability.asbuilt.FittedValue.Unknown;
import stillturning.reliability.asbuilt.SimulatedDischarge.Noise;

/** Discharges of known batteries, and what is concluded from what instruments showed of them. */
class DischargeFitTest {

    private static final int LOGS = 300;

    /** What the study says, which is not what the battery has. */
    private static Cell stated(RestVoltage chemistry) {
        return (Cell) SimulatedDischarge.battery(chemistry, 20, 0.010).elements().get(0);
    }

    /** Two loads in turn, as a builder switches a landing light on and off. */
    private static DoubleUnaryOperator inTurn(double less, double more) {
        return inTurn(less, more, 0);
    }

    /**
     * @param late when the first load is switched on (s): between two readings, since nobody
     *     switches at the instant of one
     */
    private static DoubleUnaryOperator inTurn(double less, double more, double late) {
        return seconds -> (int) ((seconds + 900 - late) / 300) % 3 == 1 ? more : less;
    }

    private static int holds(Known known, double truth) {
        return known.low() <= truth && truth <= known.high() ? 1 : 0;
    }

    /**
     * Whether the ellipse of 95 % of both at once, in logarithms, holds the truth: its square
     * radius is that of chi-square with two degrees of freedom, -2 ln 0.05.
     */
    private static int hold(FittedBattery fitted, double lnCoulombs, double lnOhms) {
        Known capacity = fitted.capacity().known().orElseThrow();
        Known ohms = fitted.ohms().known().orElseThrow();
        double x =
                (lnCoulombs - Math.log(capacity.value()))
                        / (capacity.standardError() / capacity.value());
        double y = (lnOhms - Math.log(ohms.value())) / (ohms.standardError() / ohms.value());
        double r = fitted.quality().together();
        return (x * x - 2 * r * x * y + y * y) / (1 - r * r) <= -2 * Math.log(0.05) ? 1 : 0;
    }

    /**
     * 300 logs of each chemistry, 600 in all. With 300 logs the share that holds the truth is off
     * 95 % by chance by 1.26 points (binomial), so 91 % to 99 % is more than three of that to
     * either side.
     */
    @Thorough
    @ParameterizedTest
    @EnumSource(RestVoltage.class)
    void intervalsHoldTheTruthAsOftenAsTheySay(RestVoltage chemistry) throws UntellingLog {
        Random random = new Random(20_260_501);
        int capacity = 0;
        int ohms = 0;
        int charge = 0;
        int both = 0;
        for (int i = 0; i < LOGS; i++) {
            double ampHours = 12 + 14 * random.nextDouble();
            double milliohms = 6 + 16 * random.nextDouble();
            double from = 0.85 + 0.15 * random.nextDouble();
            double celsius = 5 + 25 * random.nextDouble();
            SimulatedDischarge bench =
                    new SimulatedDischarge(
                            SimulatedDischarge.battery(chemistry, ampHours, milliohms / 1000),
                            from,
                            celsius);
            DischargeLog log =
                    bench.log(
                            inTurn(6, 14, random.nextInt(300)),
                            10,
                            360,
                            Noise.white(random, 0.020));
            FittedBattery fitted =
                    DischargeFit.of(stated(chemistry), celsius, log, OptionalDouble.empty());
            assertTrue(fitted.quality().fits(), () -> "left over: " + fitted.quality());
            capacity += holds(fitted.capacity().known().orElseThrow(), 3600 * ampHours);
            ohms += holds(fitted.ohms().known().orElseThrow(), milliohms / 1000);
            charge += holds(fitted.charge().known().orElseThrow(), from);
            both += hold(fitted, Math.log(3600 * ampHours), Math.log(milliohms / 1000));
        }
        String told =
                chemistry + ": " + capacity + " " + ohms + " " + charge + " " + both + " of "
                        + LOGS;
        for (int held : new int[] {capacity, ohms, charge, both}) {
            assertTrue(held >= 0.91 * LOGS && held <= 0.99 * LOGS, told);
        }
    }

    /** An instrument that drifts: its errors are wider, and hold the truth all the same. */
    @Test
    void readingsThatAreOffTogetherWidenTheInterval() throws UntellingLog {
        Random random = new Random(7);
        int capacity = 0;
        int ohms = 0;
        for (int i = 0; i < 200; i++) {
            SimulatedDischarge bench =
                    new SimulatedDischarge(
                            SimulatedDischarge.battery(RestVoltage.LEAD_ACID, 17, 0.012), 0.97, 20);
            DischargeLog log =
                    bench.log(inTurn(6, 14), 30, 120, Noise.drifting(random, 0.010, 0.8));
            FittedBattery fitted =
                    DischargeFit.of(stated(RestVoltage.LEAD_ACID), 20, log, OptionalDouble.empty());
            assertTrue(fitted.quality().widened() > 1.5, () -> "" + fitted.quality());
            capacity += holds(fitted.capacity().known().orElseThrow(), 3600 * 17.0);
            ohms += holds(fitted.ohms().known().orElseThrow(), 0.012);
        }
        int held = capacity;
        assertTrue(held >= 0.85 * 200, () -> "capacity held " + held);
        assertTrue(ohms >= 0.85 * 200, "resistance");
    }

    /** One current, and no joint of the curve is crossed: nothing parts resistance from charge. */
    @Test
    void oneShortSpellAtOneCurrentTellsNothingApart() throws UntellingLog {
        DischargeLog log =
                new SimulatedDischarge(
                                SimulatedDischarge.battery(RestVoltage.LEAD_ACID, 17, 0.012),
                                0.95,
                                25)
                        .log(s -> 5, 10, 60, Noise.white(new Random(1), 0.005));
        FittedBattery fitted =
                DischargeFit.of(stated(RestVoltage.LEAD_ACID), 25, log, OptionalDouble.empty());
        assertEquals(new Unknown(Optional.of(BatteryValue.CHARGE)), fitted.ohms());
        assertEquals(Optional.empty(), fitted.capacity().known());
    }

    /** A charge that is known parts what a log alone leaves together. */
    @Test
    void aKnownFirstChargeTellsTheResistance() throws UntellingLog {
        DischargeLog log =
                new SimulatedDischarge(
                                SimulatedDischarge.battery(RestVoltage.LEAD_ACID, 17, 0.012),
                                0.95,
                                25)
                        .log(s -> 12, 30, 60, Noise.white(new Random(2), 0.005));
        FittedBattery fitted =
                DischargeFit.of(stated(RestVoltage.LEAD_ACID), 25, log, OptionalDouble.of(0.95));
        Known ohms = fitted.ohms().known().orElseThrow();
        assertEquals(0.012, ohms.value(), 2 * ohms.standardError());
        assertTrue(ohms.half() < 0.001, () -> "" + ohms);
    }

    @Test
    void anotherChemistryDoesNotFit() throws UntellingLog {
        DischargeLog log =
                new SimulatedDischarge(
                                SimulatedDischarge.battery(
                                        RestVoltage.LITHIUM_IRON_PHOSPHATE, 17, 0.012),
                                0.95,
                                25)
                        .log(inTurn(6, 14), 30, 200, Noise.white(new Random(3), 0.005));
        FittedBattery fitted =
                DischargeFit.of(stated(RestVoltage.LEAD_ACID), 25, log, OptionalDouble.empty());
        assertFalse(fitted.quality().fits(), () -> "" + fitted);
    }

    @Test
    void logsThatTellNothingAreRefused() {
        Cell battery = stated(RestVoltage.LEAD_ACID);
        List<LogSample> one = List.of(new LogSample(0, 12.5, 5));
        assertTrue(refusal(battery, one).contains("1 reading is too few"));
        List<LogSample> idle = samples(i -> 0);
        assertTrue(refusal(battery, idle).contains("no charge leaves"));
        List<LogSample> charging = samples(i -> i < 5 ? -4 : 10);
        assertTrue(refusal(battery, charging).contains("takes in 4.00 A"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new DischargeLog(List.of(new LogSample(1, 12, 1), new LogSample(1, 12, 1))));
        assertThrows(IllegalArgumentException.class, () -> new LogSample(0, Double.NaN, 1));
    }

    private static List<LogSample> samples(DoubleUnaryOperator amps) {
        return IntStream.range(0, 20)
                .mapToObj(i -> new LogSample(i, 12.4, amps.applyAsDouble(i)))
                .toList();
    }

    private static String refusal(Cell battery, List<LogSample> samples) {
        DischargeLog log = new DischargeLog(samples);
        return assertThrows(
                        UntellingLog.class,
                        () -> DischargeFit.of(battery, 25, log, OptionalDouble.empty()))
                .why();
    }
}
