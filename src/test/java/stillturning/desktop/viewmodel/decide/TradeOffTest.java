package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.desktop.viewmodel.decide.TradeOff.Plotted;
import stillturning.desktop.viewmodel.decide.TradeOff.Valued;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.Point;

class TradeOffTest {

    /** Light is good, long is good: "a" and "c" are beaten by nobody, "b" by "a", "d" by all. */
    private static final List<Valued> FOUR =
            List.of(
                    new Valued("a", "A", 0, 10, 1800),
                    new Valued("b", "B", 0, 12, 1800),
                    new Valued("c", "C", 2, 20, 3600),
                    new Valued("d", "D", 0, 22, 1200));

    private static TradeOff picture(List<Valued> candidates) {
        return TradeOff.of(
                candidates,
                CriterionName.WEIGHT,
                CriterionName.ENDURANCE,
                "EUR",
                UnitSystem.METRIC);
    }

    private static List<String> efficient(TradeOff picture) {
        return picture.points().stream().filter(Plotted::efficient).map(Plotted::id).toList();
    }

    @Test
    void onlyWhoIsBeatenInBothIsBeaten() {
        assertEquals(List.of("a", "c"), efficient(picture(FOUR)));
    }

    @Test
    void alikeCandidatesDoNotBeatEachOther() {
        List<Valued> alike =
                List.of(new Valued("a", "A", 0, 10, 600), new Valued("b", "B", 0, 10, 600));

        assertEquals(List.of("a", "b"), efficient(picture(alike)));
    }

    @Test
    void theStepLineGoesThroughTheBestAndTurnsWhereBothAreWorse() {
        TradeOff picture = picture(FOUR);
        Plotted a = picture.points().get(0);
        Plotted c = picture.points().get(2);

        assertEquals(
                List.of(
                        new Point(1, c.y()),
                        new Point(c.x(), c.y()),
                        new Point(c.x(), a.y()),
                        new Point(a.x(), a.y()),
                        new Point(a.x(), 0)),
                picture.line());
    }

    @Test
    void whatIsNotLimitedStandsBeyondEverythingElse() {
        TradeOff picture =
                picture(
                        List.of(
                                new Valued("a", "A", 0, 10, 1800),
                                new Valued("b", "B", 0, 12, Double.POSITIVE_INFINITY)));

        assertTrue(picture.points().get(1).y() > picture.points().get(0).y());
        assertTrue(
                picture.upwards().ticks().stream().anyMatch(t -> t.words().equals("not limited")));
        assertEquals(List.of("a", "b"), efficient(picture));
    }

    @Test
    void everyPointStandsInsideThePicture() {
        for (Plotted point : picture(FOUR).points()) {
            assertTrue(point.x() > 0 && point.x() < 1, point.toString());
            assertTrue(point.y() > 0 && point.y() < 1, point.toString());
        }
    }

    @Test
    void axesSpeakTheChosenUnits() {
        TradeOff pounds =
                TradeOff.of(
                        FOUR, CriterionName.WEIGHT, CriterionName.ENDURANCE, "EUR", UnitSystem.US);

        assertEquals("weight (lb)", pounds.across().words());
        assertTrue(pounds.points().get(0).values().startsWith("22.05 lb"));
        assertEquals("less is better", pounds.across().better());
    }
}
