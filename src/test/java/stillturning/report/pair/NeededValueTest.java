package stillturning.report.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Sense;

/** A fifth of all weights on a scale from 30 kg to 15 kg with half of its worth at 20 kg. */
class NeededValueTest {

    private static final AppliedScale WEIGHT =
            new AppliedScale("weight", Sense.LESS_IS_BETTER, 0.2, new Scale(30, 20, 15));

    private static Optional<Double> needed(double kilograms, double gap) {
        double worth = WEIGHT.scale().worthOf(kilograms);
        return NeededValue.needed(
                WEIGHT, new Contribution("weight", kilograms, worth, 0.2 * worth), gap);
    }

    // 22 kg are worth 0.4; 0.08 points are 0.4 more: 0.8, which is 17 kg
    @Test
    void theValueMakesUpForWhatIsMissing() {
        assertEquals(17, needed(22, 0.08).orElseThrow(), 1e-9);
    }

    @Test
    void noValueMakesUpForMoreThanTheScaleHas() {
        assertEquals(Optional.empty(), needed(22, 0.121));
    }

    @Test
    void whatIsWorseThanTheWorstEndHasToComeBackFirst() {
        assertEquals(28, needed(45, 0.02).orElseThrow(), 1e-9);
    }
}
