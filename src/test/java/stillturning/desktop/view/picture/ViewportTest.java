package stillturning.desktop.view.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

class ViewportTest {

    private static final Box PICTURE = new Box(0, 0, 2000, 1000);

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatLiesUnderThePointerStaysThere(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Viewport before =
                new Viewport(
                        random.nextDouble(0.1, 4),
                        random.nextDouble(-900, 900),
                        random.nextDouble(-900, 900));
        double x = random.nextDouble(0, 1280);
        double y = random.nextDouble(0, 800);
        Viewport after = before.zoomed(random.nextDouble(0.3, 3), x, y);
        Point there = after.onWindow(before.onPicture(x, y));
        assertEquals(x, there.x(), 1e-6);
        assertEquals(y, there.y(), 1e-6);
        assertTrue(after.scale() >= Viewport.SMALLEST && after.scale() <= Viewport.LARGEST);
    }

    @Test
    void aFittedPictureLiesInTheMiddleAndIsSeenWhole() {
        Viewport fitted = Viewport.fitting(PICTURE, 800, 600, 1.2);
        Box seen = fitted.seen(800, 600);
        assertEquals(seen, seen.joined(PICTURE));
        assertEquals(400, fitted.onWindow(new Point(1000, 500)).x(), 1e-9);
        assertEquals(300, fitted.onWindow(new Point(1000, 500)).y(), 1e-9);
        assertEquals(1.2, Viewport.fitting(new Box(0, 0, 50, 50), 800, 600, 1.2).scale());
    }

    @Test
    void thePictureNeverLeavesTheWindow() {
        for (double far : new double[] {-1e6, 1e6}) {
            Viewport kept = new Viewport(1, far, far).within(PICTURE, 800, 600);
            Point middle = kept.onWindow(new Point(1000, 500));
            assertTrue(Math.abs(middle.x() - 400) <= 1400 && Math.abs(middle.y() - 300) <= 800);
            Box seen = kept.seen(800, 600);
            assertTrue(seen.right() > 0 && seen.x() < 2000 && seen.bottom() > 0 && seen.y() < 1000);
        }
        Viewport fine = new Viewport(1, -100, -50);
        assertEquals(fine, fine.within(PICTURE, 800, 600));
    }

    @Test
    void aBoxIsBroughtIntoSightByTheLeastMovement() {
        Viewport start = new Viewport(1, 0, 0);
        Box right = new Box(900, 100, 50, 20);
        Viewport shown = start.showing(right, 800, 600);
        assertEquals(0, shown.y());
        assertTrue(shown.onWindow(new Point(950, 100)).x() <= 800);
        assertEquals(shown, shown.showing(right, 800, 600));
        assertEquals(start, start.showing(new Box(100, 100, 10, 10), 800, 600));
    }

    @Test
    void aGlideBeginsAndEndsWhereItShould() {
        Viewport from = new Viewport(0.5, 10, 20);
        Viewport to = new Viewport(2, -300, -80);
        assertEquals(from, from.towards(to, 0));
        Viewport end = from.towards(to, 1);
        assertEquals(to.scale(), end.scale(), 1e-9);
        assertEquals(to.x(), end.x(), 1e-6);
        assertEquals(1, from.towards(to, 0.5).scale(), 1e-9);
    }

    @Test
    void whatCannotBeReadWholeIsReadFromItsEdgeOn() {
        Viewport whole = Viewport.fitting(PICTURE, 800, 600, 1.2);

        assertEquals(whole, Viewport.readable(PICTURE, 800, 600, whole.scale() / 2, 1.2));

        Viewport read = Viewport.readable(PICTURE, 800, 600, 1, 1.2);
        assertEquals(1, read.scale());
        assertEquals(12, read.onWindow(new Point(PICTURE.x(), PICTURE.y())).x(), 1e-9);
        assertEquals(300, read.level(PICTURE, 500, 600).onWindow(new Point(0, 500)).y(), 1e-9);
        assertEquals(588, read.level(PICTURE, 990, 600).onWindow(new Point(0, 1000)).y(), 1e-9);
        assertEquals(12, read.level(PICTURE, 10, 600).onWindow(new Point(0, 0)).y(), 1e-9);
    }
}
