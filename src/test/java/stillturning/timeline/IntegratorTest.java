package stillturning.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import stillturning.network.NoOperatingPoint;

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

    private static double error(DoubleUnaryOperator rate, double exact, double seconds)
            throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, rate);
        Integrator integrator = new Integrator(1, () -> {});
        integrator.begin(List.of(quantity));
        integrator.attempt(seconds);
        return Math.abs(quantity.value() - exact);
    }

    /** An error of one step of order 5 shrinks by 2 to the sixth when the step is halved. */
    @Test
    void oneStepIsOfTheFifthOrderAtLeast() throws NoOperatingPoint {
        for (double seconds = 0.4; seconds > 0.1; seconds /= 2) {
            double decay =
                    error(y -> -y, Math.exp(-seconds), seconds)
                            / error(y -> -y, Math.exp(-seconds / 2), seconds / 2);
            assertTrue(Math.log(decay) / Math.log(2) > 5.7, "decay at " + seconds);
            double half = seconds / 2;
            double curved =
                    error(y -> -y * y, 1 / (1 + seconds), seconds)
                            / error(y -> -y * y, 1 / (1 + half), half);
            assertTrue(Math.log(curved) / Math.log(2) > 5.7, "curved at " + seconds);
        }
    }

    private static double estimate(DoubleUnaryOperator rate, double seconds)
            throws NoOperatingPoint {
        Integrator integrator = new Integrator(1, () -> {});
        integrator.begin(List.of(new Quantity(1, rate)));
        return integrator.attempt(seconds);
    }

    @Test
    void theEstimateIsOfTheFourthOrdersErrorAndAboveWhatIsMade() throws NoOperatingPoint {
        for (double seconds = 0.1; seconds > 0.02; seconds /= 2) {
            double estimate = estimate(y -> -y, seconds);
            assertTrue(estimate > error(y -> -y, Math.exp(-seconds), seconds));
            assertEquals(5, Math.log(estimate / estimate(y -> -y, seconds / 2)) / Math.log(2), 0.2);
            assertTrue(
                    estimate(y -> -y * y, seconds)
                            > error(y -> -y * y, 1 / (1 + seconds), seconds));
        }
    }

    @Test
    void aTrialStartsWhereTheLastBeganNotWhereItEnded() throws NoOperatingPoint {
        Quantity quantity = new Quantity(1, y -> -y);
        Integrator integrator = new Integrator(2, () -> {});
        integrator.begin(List.of(quantity));
        integrator.attempt(0.3);
        integrator.attempt(0.1);
        assertEquals(Math.exp(-0.1), quantity.value(), 1e-9);
    }
}
