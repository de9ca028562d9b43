package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.network.Laws.branch;
import static stillturning.network.Laws.network;
import static stillturning.network.Laws.solved;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/**
 * A converter whose minus lead is torn off hangs between the feed at its input and the load at its
 * output: whatever it takes in must leave through its output, so both currents are equal.
 */
class FloatingConverterTest {
    private static final BranchLaw DIODE = new DiodeDrop(2e-5, 0.0275, 0.01);
    private static final double FEED_OHMS = 0.011562992125984252;
    private static final int PLUS = 1;
    private static final int IN = 2;
    private static final int MINUS = 3;
    private static final int OUT = 4;
    private static final int SECOND = 5;
    private static final int INSIDE = 6;

    /** One load of 15 A behind two diodes: one fed by the converter, one by a wire. */
    private static Network hanging(double limitAmps, double idleWatts, double floorVolts) {
        return network(
                7,
                branch(PLUS, 0, new SourceBehindOhms(13.2906725, 1e-6)),
                branch(PLUS, IN, new Resistive(FEED_OHMS)),
                branch(OUT, MINUS, new LimitedSource(13.3, 0.0378, limitAmps)),
                branch(IN, MINUS, new ConverterInput(2, 1.0, idleWatts, floorVolts)),
                branch(OUT, INSIDE, DIODE),
                branch(PLUS, SECOND, new Resistive(0.0424146981627297)),
                branch(SECOND, INSIDE, DIODE),
                branch(INSIDE, 0, new ConstantCurrent(15.0, 9.9)));
    }

    /**
     * The converter at its limit: with a volts across its output and d between input and output,
     * (idle + limit a)(a + d) / floor² = limit, a quadratic equation.
     */
    @ParameterizedTest
    @CsvSource({"10, 3, 8.8", "8, 3, 8.8", "10, 4, 9.5"})
    void atItsLimitItsMinusSettlesWhereBothCurrentsAreEqual(double limit, double idle, double floor)
            throws NoOperatingPoint {
        OperatingPoint point = solved(hanging(limit, idle, floor));
        double d = point.volts(IN) - point.volts(OUT);
        double linear = idle + limit * d;
        double rest = limit * floor * floor - idle * d;
        double a = (Math.sqrt(linear * linear + 4 * limit * rest) - linear) / (2 * limit);
        assertEquals(limit, point.amps(3), 1e-6);
        assertEquals(a, point.volts(OUT) - point.volts(MINUS), 1e-6);
        assertTrue(point.worstKclAmps() <= 1e-6);
    }

    /** Above its floor all that it loses is its idle power, by the fall from input to output. */
    @ParameterizedTest
    @CsvSource({"10, 1, 8.0", "5, 0.5, 9.5"})
    void aboveItsFloorItLosesItsIdlePower(double limit, double idle, double floor)
            throws NoOperatingPoint {
        OperatingPoint point = solved(hanging(limit, idle, floor));
        assertTrue(point.volts(IN) - point.volts(MINUS) >= floor);
        assertEquals(idle, (point.volts(IN) - point.volts(OUT)) * point.amps(3), 1e-5);
    }

    /** The voltages that an independent solution of the state found, in which this was refused. */
    @Test
    void theOnePointOfTheStateThatWasRefused() throws NoOperatingPoint {
        OperatingPoint point = solved(hanging(10.0, 3.0, 8.8));
        assertEquals(4.510, point.volts(MINUS), 0.025);
        assertEquals(12.687 - 0.0017, point.volts(INSIDE), 0.025);
    }
}
