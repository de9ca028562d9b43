package stillturning.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.element.Demand;
import stillturning.element.RestVoltage;
import stillturning.failure.Failure;
import stillturning.model.EngineLogic;
import stillturning.story.Happening.Kind;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/**
 * One battery, straight open-circuit voltage between points, one load: the time to empty in closed
 * form, computed here. The open-circuit points are those of electrical.md 7.3 (read in a second
 * source).
 */
class ClosedFormsTest {

    private static final double COULOMBS = 20 * 3600;
    private static final double OHMS = 0.05;

    private static double emptyAt(Demand.Kind kind, double amps) throws UntoldStory {
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

    /**
     * Sums over the straight pieces.
     *
     * @param seconds for one piece from a higher to a lower open-circuit voltage (V), times the
     *     slope (V for a full charge) over the charge
     */
    private static double overPieces(DoubleBinaryOperator seconds) {
        RestVoltage curve = RestVoltage.LEAD_ACID;
        double sum = 0;
        for (int piece = 0; piece < curve.pieces(); piece++) {
            double low = curve.voltsOn(piece, curve.pieceStart(piece));
            double high = curve.voltsOn(piece, curve.pieceEnd(piece));
            double slope = (high - low) / (curve.pieceEnd(piece) - curve.pieceStart(piece));
            sum += COULOMBS / slope * seconds.applyAsDouble(high, low);
        }
        return sum;
    }

    /** dE/dt = -slope E / (C R), so E falls as an exponential, as of a capacitor. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 7.5, 15, 40})
    void aConstantResistanceEmptiesItExponentially(double amps) throws UntoldStory {
        double ohms = 12 / amps + OHMS;
        double expected = overPieces((high, low) -> ohms * Math.log(high / low));
        assertEquals(expected, emptyAt(Demand.Kind.CONSTANT_RESISTANCE, amps), 1e-6 * expected);
    }

    /**
     * P = I (E - I R), so 1 / I = (E + s) / 2 P with s = sqrt(E^2 - 4 R P), and the integral of s
     * is E s / 2 - 2 R P ln(E + s).
     */
    @ParameterizedTest
    @ValueSource(doubles = {2, 7.5, 15, 40})
    void aConstantPowerEmptiesItByTheLogarithm(double amps) throws UntoldStory {
        double watts = 12 * amps;
        double expected =
                overPieces(
                        (high, low) ->
                                (primitive(high, watts) - primitive(low, watts)) / 2 / watts);
        assertEquals(expected, emptyAt(Demand.Kind.CONSTANT_POWER, amps), 1e-6 * expected);
    }

    private static double primitive(double volts, double watts) {
        double root = Math.sqrt(volts * volts - 4 * OHMS * watts);
        return volts * volts / 2 + volts * root / 2 - 2 * OHMS * watts * Math.log(volts + root);
    }
}
