package stillturning.story.timeline.stride;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.story.timeline.stride.RungeKuttaPair.BOGACKI_SHAMPINE;
import static stillturning.story.timeline.stride.RungeKuttaPair.DORMAND_PRINCE;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import stillturning.network.NoOperatingPoint;
import stillturning.story.device.Stateful;

class IntegratorTest {

    /** A quantity whose rate depends on nothing but itself. */
    private static final class Quantity implements Stateful {
        private final DoubleUnaryOperator rate;
        private double value;

        Quantity(double value, DoubleUnaryOperator rate) {
            this.value = value;
            this.rate = rate;
        }

        @Override
        public double value() {
            return value;
        }

        @Override
        public void value(double next) {
            value = next;
        }

        @Override
        public double perSecond() {
            return rate.applyAsDouble(value);
        }

        @Override
        public double way() {
            return 1;
        }

        @Override
        public boolean quick() {
            return false;
        }
    }

    private static double error(
            RungeKuttaPair pair, DoubleUnaryOperator rate, double exact, double seconds)
            throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, rate);
        Integrator integrator = new Integrator(pair, 1, 0, () -> {}, new Heedless());
        integrator.begin(List.of(quantity), List.of());
        integrator.attempt(seconds);
        return Math.abs(quantity.value() - exact);
    }

    /** An error of one step of order 5 shrinks by 2 to the sixth when the step is halved. */
    @Test
    void oneStepIsOfTheFifthOrderAtLeast() throws NoOperatingPoint {
        for (double seconds = 0.4; seconds > 0.1; seconds /= 2) {
            double decay =
                    error(DORMAND_PRINCE, y -> -y, Math.exp(-seconds), seconds)
                            / error(DORMAND_PRINCE, y -> -y, Math.exp(-seconds / 2), seconds / 2);
            assertTrue(Math.log(decay) / Math.log(2) > 5.7, "decay at " + seconds);
            double half = seconds / 2;
            double curved =
                    error(DORMAND_PRINCE, y -> -y * y, 1 / (1 + seconds), seconds)
                            / error(DORMAND_PRINCE, y -> -y * y, 1 / (1 + half), half);
            assertTrue(Math.log(curved) / Math.log(2) > 5.7, "curved at " + seconds);
        }
    }

    /** An error of one step of order 3 shrinks by 2 to the fourth when the step is halved. */
    @Test
    void oneQuickStepIsOfTheThirdOrder() throws NoOperatingPoint {
        for (double seconds = 0.2; seconds > 0.01; seconds /= 2) {
            double half = seconds / 2;
            double shrinks =
                    error(BOGACKI_SHAMPINE, y -> -y * y, 1 / (1 + seconds), seconds)
                            / error(BOGACKI_SHAMPINE, y -> -y * y, 1 / (1 + half), half);
            assertEquals(4, Math.log(shrinks) / Math.log(2), 0.3, "at " + seconds);
        }
    }

    private static double estimate(RungeKuttaPair pair, DoubleUnaryOperator rate, double seconds)
            throws NoOperatingPoint {
        Integrator integrator = new Integrator(pair, 1, 0, () -> {}, new Heedless());
        integrator.begin(List.of(new Quantity(1, rate)), List.of());
        return integrator.attempt(seconds);
    }

    @Test
    void theEstimateIsOfTheFourthOrdersErrorAndAboveWhatIsMade() throws NoOperatingPoint {
        for (double seconds = 0.1; seconds > 0.02; seconds /= 2) {
            double estimate = estimate(DORMAND_PRINCE, y -> -y, seconds);
            assertTrue(estimate > error(DORMAND_PRINCE, y -> -y, Math.exp(-seconds), seconds));
            assertEquals(
                    5,
                    Math.log(estimate / estimate(DORMAND_PRINCE, y -> -y, seconds / 2))
                            / Math.log(2),
                    0.2);
            assertTrue(
                    estimate(DORMAND_PRINCE, y -> -y * y, seconds)
                            > error(DORMAND_PRINCE, y -> -y * y, 1 / (1 + seconds), seconds));
        }
    }

    @Test
    void theQuickEstimateIsOfTheSecondOrdersErrorAndAboveWhatIsMade() throws NoOperatingPoint {
        for (double seconds = 0.1; seconds > 0.02; seconds /= 2) {
            double estimate = estimate(BOGACKI_SHAMPINE, y -> -y, seconds);
            assertTrue(estimate > error(BOGACKI_SHAMPINE, y -> -y, Math.exp(-seconds), seconds));
            double half = estimate(BOGACKI_SHAMPINE, y -> -y, seconds / 2);
            assertEquals(3, Math.log(estimate / half) / Math.log(2), 0.2);
        }
    }

    @Test
    void aTrialStartsWhereTheLastBeganNotWhereItEnded() throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, y -> -y);
        Integrator integrator = new Integrator(DORMAND_PRINCE, 2, 0, () -> {}, new Heedless());
        integrator.begin(List.of(quantity), List.of());
        integrator.attempt(0.3);
        integrator.attempt(0.1);
        assertEquals(Math.exp(-0.1), quantity.value(), 1e-9);
    }

    @Test
    void whatStandsBeginsToMoveWithinAStepAndWhatCreepsStands() throws NoOperatingPoint {
        Quantity driver = new Quantity(1, y -> -1);
        Quantity behind = new Quantity(1, y -> driver.value() > 0.9 ? 0 : -1);
        Quantity creeping = new Quantity(1, y -> -1e-10);
        Integrator integrator = new Integrator(DORMAND_PRINCE, 3, 1e-9, () -> {}, new Heedless());
        integrator.begin(List.of(driver), List.of(behind, creeping));
        double error = integrator.attempt(0.2);
        assertEquals(0.8, driver.value(), 1e-12);
        assertEquals(0.9, behind.value(), 0.03);
        assertTrue(error > StepLimits.QUICK.tolerance(), "taken over a kink: " + error);
        assertEquals(1, creeping.value());
    }

    private static double errorHalfway(RungeKuttaPair pair, double seconds)
            throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, y -> -y * y);
        Integrator integrator = new Integrator(pair, 1, 0, () -> {}, new Heedless());
        integrator.begin(List.of(quantity), List.of());
        integrator.attempt(seconds);
        integrator.look(0.4 * seconds);
        return Math.abs(quantity.value() - 1 / (1 + 0.4 * seconds));
    }

    /** An error of order 4 between the ends shrinks by 2 to the fifth when the step is halved. */
    @Test
    void theWayBetweenTheEndsOfAStepIsOfTheFourthOrder() throws NoOperatingPoint {
        for (double seconds = 0.2; seconds > 0.02; seconds /= 2) {
            double shrinks =
                    errorHalfway(DORMAND_PRINCE, seconds)
                            / errorHalfway(DORMAND_PRINCE, seconds / 2);
            assertEquals(5, Math.log(shrinks) / Math.log(2), 0.4, "at " + seconds);
        }
    }

    @Test
    void theWayBetweenTheEndsOfAQuickStepIsOfTheThirdOrder() throws NoOperatingPoint {
        for (double seconds = 0.1; seconds > 0.01; seconds /= 2) {
            double shrinks =
                    errorHalfway(BOGACKI_SHAMPINE, seconds)
                            / errorHalfway(BOGACKI_SHAMPINE, seconds / 2);
            assertEquals(4, Math.log(shrinks) / Math.log(2), 0.4, "at " + seconds);
        }
    }

    @Test
    void aLookAtTheEndsOfAStepFindsItsEnds() throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, y -> -y);
        Integrator integrator = new Integrator(DORMAND_PRINCE, 1, 0, () -> {}, new Heedless());
        integrator.begin(List.of(quantity), List.of());
        integrator.attempt(0.3);
        double end = quantity.value();
        integrator.look(0);
        assertEquals(1, quantity.value(), 1e-15);
        integrator.look(0.3);
        assertEquals(end, quantity.value(), 1e-15);
    }

    @Test
    void aGlanceSaysHowFarTheWayBendsOffItsTangent() throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, y -> -y);
        Integrator integrator = new Integrator(DORMAND_PRINCE, 1, 0, () -> {}, new Heedless());
        integrator.begin(List.of(quantity), List.of());
        assertEquals(1e-4 / 2, integrator.glance(1e-2), 1e-15);
        assertEquals(0.99, quantity.value(), 1e-15);
        integrator.straighten(1e-2);
        assertEquals(Math.exp(-1e-2), quantity.value(), 2e-7);
    }
}
