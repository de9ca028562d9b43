package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
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
