package stillturning.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.device.Stateful;
import stillturning.network.NoOperatingPoint;

/** Steps through a change whose exact way is known. */
class AdvanceTest {

    /** A charge that runs down at one speed above a half, at another below. */
    private static final class Kinked implements Stateful {
        private final double perSecondBelow;
        private double value = 1;

        Kinked(double perSecondBelow) {
            this.perSecondBelow = perSecondBelow;
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
            return value > 0.5 ? -0.01 : perSecondBelow;
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

    private static Advance advance(Kinked charge, double eventAt) {
        Dips dips = new Dips(1, Integrator.STAGES, into -> into[0] = charge.value() - eventAt);
        Integrator.Follower reading =
                new Integrator.Follower() {
                    @Override
                    public void read(int stage) {
                        dips.read(stage);
                    }

                    @Override
                    public void taken(double seconds, double[] weights) {}
                };
        return new Advance(
                new Integrator(1, () -> {}, reading),
                () -> charge.value() - eventAt,
                dips,
                Double.MAX_VALUE);
    }

    @Test
    void anEventIsFoundToANanosecond() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        double reached = advance(charge, 0.25).from(0, 1000, List.of(charge));
        assertEquals(75, reached, 1.1e-9);
        assertTrue(charge.value() < 0.25);
    }

    @Test
    void aLimitIsMetExactly() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        assertEquals(30, advance(charge, 0.25).from(0, 30, List.of(charge)));
        assertEquals(0.7, charge.value(), 1e-12);
    }

    @Test
    void stepsGrowLongAgainBehindAKink() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.001);
        Advance advance = advance(charge, 0.25);
        double seconds = 0;
        int steps = 0;
        while (charge.value() >= 0.25 && steps < 100) {
            seconds = advance.from(seconds, 1000, List.of(charge));
            steps++;
        }
        assertTrue(steps < 40, steps + " steps");
        // the estimate of an embedded pair sees only a part of what a jump of the slope does
        assertEquals(50 + 250, seconds, 1e-7 / 0.001);
    }
}
