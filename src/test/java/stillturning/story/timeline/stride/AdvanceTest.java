package stillturning.story.timeline.stride;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.NoOperatingPoint;
import stillturning.network.NodalSolver;
import stillturning.network.Topology;
import stillturning.network.law.BranchLaw;
import stillturning.story.device.Device;
import stillturning.story.device.Stateful;

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

    /** A charge at the end of its way, so slow that a nanosecond does not move its last digit. */
    private static final class Creeping implements Stateful {
        private double value = 0.9;

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
            return -1.1e-9;
        }

        @Override
        public double way() {
            return Math.max(0, value - 0.9);
        }

        @Override
        public boolean quick() {
            return false;
        }
    }

    /** Watches a charge fall below a limit. */
    private record Watch(Stateful charge, double limit) implements Device {
        @Override
        public double margin() {
            return charge.value() - limit;
        }

        @Override
        public void cross() {}

        @Override
        public void adopt(Device healthy) {}
    }

    /** Watches a charge come near a value from either side. */
    private record Nearby(Kinked charge, double value, double near) implements Device {
        @Override
        public double margin() {
            return Math.pow(charge.value() - value, 2) - near * near;
        }

        @Override
        public void cross() {}

        @Override
        public void adopt(Device healthy) {}
    }

    private static NodalSolver noNetwork() {
        int[] none = {};
        return new NodalSolver(Topology.of(1, none, none), none, none, new BranchLaw[0]);
    }

    private static Advance advance(Kinked charge, double eventAt) {
        return advance(new Watch(charge, eventAt));
    }

    private static Advance advance(Device watching) {
        return advance(watching, StepLimits.upTo(Double.MAX_VALUE));
    }

    private static Advance advance(Device watching, StepLimits stride) {
        RungeKuttaPair pair = stride.pair();
        MarginTable margins = new MarginTable(new Device[] {watching}, AdvanceTest::noNetwork);
        margins.renew();
        DipCheck dips = new DipCheck(margins, pair);
        return new Advance(new Integrator(pair, 1, 0, () -> {}, dips), dips, stride);
    }

    @Test
    void anEventIsFoundToANanosecond() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        double reached = advance(charge, 0.25).from(0, 1000, List.of(charge), List.of());
        assertEquals(75, reached, 1.1e-9);
        assertTrue(charge.value() < 0.25);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.55, 0.5, 0.43, 0.35, 0.3})
    void aMarginThatFallsBelowNaughtAndComesBackWithinAStepIsSeen(double value)
            throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        // 12 s below 0 of an uninterrupted way of 80 s; at both its ends far above
        double reached =
                advance(new Nearby(charge, value, 0.06)).from(0, 80, List.of(charge), List.of());
        assertEquals((1 - value - 0.06) / 0.01, reached, 1.1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.55, 0.5, 0.43, 0.35, 0.3})
    void aQuickStepSeesADipToo(double value) throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        Nearby dip = new Nearby(charge, value, 0.06);
        double reached = advance(dip, StepLimits.QUICK).from(0, 80, List.of(charge), List.of());
        assertEquals((1 - value - 0.06) / 0.01, reached, 2 * 80e-6);
    }

    @Test
    void aQuickStepFindsAnEventToAMillionthOfItself() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        Watch watch = new Watch(charge, 0.25);
        double reached = advance(watch, StepLimits.QUICK).from(0, 1000, List.of(charge), List.of());
        assertEquals(75, reached, 1.1 * 100e-6);
        assertTrue(charge.value() < 0.25);
    }

    @Test
    void aLimitIsMetExactly() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.01);
        assertEquals(30, advance(charge, 0.25).from(0, 30, List.of(charge), List.of()));
        assertEquals(0.7, charge.value(), 1e-12);
    }

    @Test
    void stepsGrowLongAgainBehindAKink() throws NoOperatingPoint {
        Kinked charge = new Kinked(-0.001);
        Advance advance = advance(charge, 0.25);
        double seconds = 0;
        int steps = 0;
        while (charge.value() >= 0.25 && steps < 100) {
            seconds = advance.from(seconds, 1000, List.of(charge), List.of());
            steps++;
        }
        assertTrue(steps < 40, steps + " steps");
        // the estimate of an embedded pair sees only a part of what a jump of the slope does
        assertEquals(50 + 250, seconds, 1e-7 / 0.001);
    }

    @Test
    void whatCreepsOverAnEdgeGetsOverIt() throws NoOperatingPoint {
        Creeping charge = new Creeping();
        double seconds = advance(new Watch(charge, 0.9)).from(0, 1000, List.of(charge), List.of());
        assertTrue(charge.value() < 0.9, "still at the edge after " + seconds + " s");
        assertTrue(seconds < 1e-5, seconds + " s");
    }
}
