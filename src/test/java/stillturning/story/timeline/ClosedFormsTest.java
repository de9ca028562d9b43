package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;

/**
 * One battery, open-circuit voltage and resistance straight between points, one load: the time to
 * empty without stepping through it, computed here. The open-circuit points are those of
 * electrical.md 7.3 (read in a second source).
 */
class ClosedFormsTest {

    private static final double COULOMBS = 20 * 3600;
    private static final double OHMS = 0.05;

    private static double emptyAt(Demand.DemandKind kind, double amps) throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, OHMS, 1)
                        .bus("bus")
                        .load("ecu", kind, amps, Bench.HARDY)
                        .join("battery", "plus", "bus", "bar")
                        .join("bus", "bar", "ecu", "plus")
                        .engine(new EngineLogic.One("ecu"), false);
        Story story = bench.timeline().tell(Failure.levers("nothing", Map.of()), Pilot.NEVER);
        return Telling.when(story, Kind.BATTERY_EMPTY, "battery");
    }

    /** What one straight piece takes, from its ends at high and at low charge (s). */
    private interface Piece {
        double seconds(double highVolts, double lowVolts, double highOhms, double lowOhms);
    }

    private static double overPieces(Piece each) {
        RestVoltage curve = RestVoltage.LEAD_ACID;
        double sum = 0;
        for (int n = 0; n < curve.pieces(); n++) {
            double from = curve.pieceStart(n);
            double to = curve.pieceEnd(n);
            sum +=
                    COULOMBS
                            * (to - from)
                            * each.seconds(
                                    curve.voltsOn(n, to),
                                    curve.voltsOn(n, from),
                                    OHMS * curve.resistanceOn(n, to),
                                    OHMS * curve.resistanceOn(n, from));
        }
        return sum;
    }

    /**
     * dE/dt = -b E / (C (R + r)) with the slope b, and r straight in E: an exponential where r
     * stays the same, as of a capacitor.
     */
    @ParameterizedTest
    @ValueSource(doubles = {2, 7.5, 15, 40})
    void aConstantResistanceEmptiesItByTheLogarithm(double amps) throws UntoldStory {
        double load = 12 / amps;
        double expected =
                overPieces(
                        (high, low, highOhms, lowOhms) -> {
                            double slope = (highOhms - lowOhms) / (high - low);
                            double level = load + lowOhms - slope * low;
                            return (level * Math.log(high / low) + slope * (high - low))
                                    / (high - low);
                        });
        assertEquals(
                expected, emptyAt(Demand.DemandKind.CONSTANT_RESISTANCE, amps), 1e-6 * expected);
    }

    /**
     * P = I (E - I r), so 1 / I = (E + sqrt(E^2 - 4 r P)) / 2 P, integrated over the charge by
     * Simpson's rule, whose steps are so many that twice as many change nothing.
     */
    @ParameterizedTest
    @ValueSource(doubles = {2, 7.5, 15})
    void aConstantPowerEmptiesItByTheAreaUnderOneOverItsCurrent(double amps) throws UntoldStory {
        double watts = 12 * amps;
        double expected =
                overPieces(
                        (high, low, highOhms, lowOhms) -> {
                            double sum = 0;
                            for (int n = 0; n <= 2000; n++) {
                                double share = n / 2000.0;
                                double volts = low + share * (high - low);
                                double ohms = lowOhms + share * (highOhms - lowOhms);
                                double weight = n == 0 || n == 2000 ? 1 : n % 2 == 0 ? 2 : 4;
                                double root = Math.sqrt(volts * volts - 4 * ohms * watts);
                                sum += weight * (volts + root) / 2 / watts;
                            }
                            return sum / 6000;
                        });
        assertEquals(expected, emptyAt(Demand.DemandKind.CONSTANT_POWER, amps), 1e-6 * expected);
    }
}
