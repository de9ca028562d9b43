package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.decide.LabelPlaces.PlacedName;
import stillturning.report.drawing.Box;

class LabelPlacesTest {

    private static final Box FRAME = new Box(0, 0, 600, 400);
    private static final double RADIUS = 7;

    @Test
    void aLonelyNameStandsBesideItsPoint() {
        List<Box> boxes =
                LabelPlaces.of(FRAME, RADIUS, List.of(new PlacedName(100, 100, 80, 15)), List.of());

        assertEquals(List.of(new Box(110, 92.5, 80, 15)), boxes);
    }

    @Test
    void aNameAtTheEdgeTurnsInwards() {
        Box box =
                LabelPlaces.of(FRAME, RADIUS, List.of(new PlacedName(590, 200, 80, 15)), List.of())
                        .get(0);

        assertTrue(box.x() + box.width() <= 600, box.toString());
    }

    @Test
    void aPointWithoutANameIsNotCoveredAndNeedsNoPlace() {
        PlacedName without = new PlacedName(140, 100, 0, 0);
        List<Box> boxes =
                LabelPlaces.of(
                        FRAME,
                        RADIUS,
                        List.of(new PlacedName(100, 100, 80, 15), without),
                        List.of());

        assertEquals(0, boxes.get(1).width());
        assertEquals(0, LabelPlaces.overlap(boxes.get(0), around(without)));
    }

    private static Box around(PlacedName name) {
        return new Box(name.x() - RADIUS, name.y() - RADIUS, 2 * RADIUS, 2 * RADIUS);
    }

    /** A fine line is drawn from a point to a name that is not beside it. */
    @Thorough
    @Test
    void theWayToANameOfACrowdSeldomGoesThroughAnother() {
        SplittableRandom random = new SplittableRandom(5);
        int through = 0;
        for (int trial = 0; trial < 40; trial++) {
            List<PlacedName> names = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                double x = 200 + 200 * random.nextDouble();
                names.add(new PlacedName(x, 140 + 120 * random.nextDouble(), 110, 30));
            }
            List<Box> boxes = LabelPlaces.of(FRAME, RADIUS, names, List.of());
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = 0; j < boxes.size(); j++) {
                    through += i != j && crosses(names.get(i), boxes.get(i), boxes.get(j)) ? 1 : 0;
                }
            }
        }
        assertTrue(through < 20, "" + through);
    }

    private static boolean crosses(PlacedName name, Box own, Box other) {
        double x = Math.max(own.x(), Math.min(name.x(), own.right()));
        double y = Math.max(own.y(), Math.min(name.y(), own.bottom()));
        return new Line2D.Double(name.x(), name.y(), x, y)
                .intersects(other.x(), other.y(), other.width(), other.height());
    }

    @Test
    void namesOfACrowdCoverNeitherEachOtherNorAPoint() {
        SplittableRandom random = new SplittableRandom(3);
        for (int trial = 0; trial < 40; trial++) {
            List<PlacedName> names = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                double x = 250 + 100 * random.nextDouble();
                double y = 150 + 100 * random.nextDouble();
                names.add(new PlacedName(x, y, 100 + random.nextInt(80), 15));
            }

            List<Box> boxes = LabelPlaces.of(FRAME, RADIUS, names, List.of());

            for (int i = 0; i < boxes.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertEquals(
                            0, LabelPlaces.overlap(boxes.get(i), boxes.get(j)), "trial " + trial);
                }
                assertEquals(
                        boxes.get(i).width() * 15, LabelPlaces.overlap(boxes.get(i), FRAME), 1e-9);
            }
        }
    }
}
