package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two criteria, A (1, 0) against B (0, x) with x anywhere from 0 to 1: A is first where its weight
 * is above x / (1 + x). So its share is ln 2; the mean weighting that puts it first gives the first
 * criterion (1 - (3/2 - 2 ln 2)) / 2 / ln 2; B's gives it (3/2 - 2 ln 2) / 2 / (1 - ln 2), with
 * which B is first where x is above that weight over the other.
 */
class AcceptabilityTest {

    private static final double LN_2 = Math.log(2);
    private static final double SQUARE = 1.5 - 2 * LN_2;

    private static final List<Criterion> CRITERIA =
            List.of(
                    new Criterion("one", Sense.MORE_IS_BETTER, 1, Scale.straight(0, 1)),
                    new Criterion("other", Sense.MORE_IS_BETTER, 1, Scale.straight(0, 1)));

    private static List<List<Alternative>> draws(int count) {
        List<List<Alternative>> draws = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            double x = (n + 0.5) / count;
            draws.add(
                    List.of(
                            new Alternative("A", List.of(1.0, 0.0), List.of()),
                            new Alternative("B", List.of(0.0, x), List.of())));
        }
        return draws;
    }

    private static Acceptability.Accepted of(String name, int count) {
        return Acceptability.of(CRITERIA, draws(count), List.of()).candidates().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** B is dominated in the only draw: no weighting puts it first. */
    @Test
    void whoIsNeverFirstHasNoCentralWeights() {
        List<List<Alternative>> draws =
                List.of(
                        List.of(
                                new Alternative("A", List.of(1.0, 1.0), List.of()),
                                new Alternative("B", List.of(0.0, 0.5), List.of())));
        List<Acceptability.Accepted> accepted =
                Acceptability.of(CRITERIA, draws, List.of()).candidates();
        assertEquals(List.of(), accepted.get(1).centralWeights());
        assertEquals(0, accepted.get(1).first());
        assertEquals(2, accepted.get(0).centralWeights().size());
    }

    /** B is never first in every second draw: those count for nothing among its weightings. */
    @Test
    void drawsInWhichItIsNeverFirstCountForNothing() {
        List<List<Alternative>> draws = new ArrayList<>();
        for (List<Alternative> draw : draws(64)) {
            draws.add(draw);
            draws.add(List.of(draw.get(0), new Alternative("B", List.of(0.0, -1.0), List.of())));
        }
        double alone = of("B", 64).centralWeights().get(0);
        double among =
                Acceptability.of(CRITERIA, draws, List.of())
                        .candidates()
                        .get(1)
                        .centralWeights()
                        .get(0);
        assertEquals(alone, among, 1e-3);
    }

    @Test
    void sharesCentralWeightsAndConfidenceAreThoseOfTheClosedForm() {
        Acceptability.Accepted a = of("A", 64);
        assertEquals(LN_2, a.first(), 1e-3);
        assertEquals((1 - SQUARE) / 2 / LN_2, a.centralWeights().get(0), 1e-3);
        assertEquals(1, a.confidence());
        // equal weights: A has 1/2, B x/2
        assertEquals(1, a.asWeighed());
        assertEquals(0, of("B", 64).asWeighed());
        Acceptability.Accepted b = of("B", 64);
        double weight = SQUARE / 2 / (1 - LN_2);
        assertEquals(1 - LN_2, b.first(), 1e-3);
        assertEquals(weight, b.centralWeights().get(0), 1e-3);
        // to the nearest of 64 draws
        assertEquals(1 - weight / (1 - weight), b.confidence(), 1.0 / 64);
    }

    @Test
    void theErrorCoversWhatFewDrawsMiss() {
        Acceptability.Accepted b = of("B", 5);
        double weight = SQUARE / 2 / (1 - LN_2);
        assertTrue(b.confidenceError() > 0.1 && b.firstError() > 0.01);
        assertEquals(1 - LN_2, b.first(), b.firstError());
        assertEquals(1 - weight / (1 - weight), b.confidence(), b.confidenceError());
    }

    // Two successes and two failures more: A. Agresti, B. Coull, The American Statistician 52
    // (1998)
    // 119-126 (from memory). The error of the mean is that of the sample's own spread. Both
    // computed here, by hand.
    @Test
    void theErrorsAreThoseOfAShareAndOfAMean() {
        Acceptability.Accepted always = of("A", 64);
        assertEquals(1.96 * Math.sqrt(66.0 / 68 * 2 / 68 / 68), always.confidenceError(), 1e-12);
        assertEquals(always.confidenceError(), always.asWeighedError(), 1e-12);
        // B is first with x / (1 + x) of the weightings: 1/11, 3/13, 5/15, 7/17, 9/19
        assertEquals(0.3081, of("B", 5).first(), 1e-3);
        assertEquals(1.96 * Math.sqrt(0.022988 / 5), of("B", 5).firstError(), 1e-3);
        assertEquals(0, of("B", 1).firstError());
    }

    @Test
    void withoutADrawThereIsNoAnswer() {
        List<List<Alternative>> none = List.of();
        assertThrows(
                IllegalArgumentException.class, () -> Acceptability.of(CRITERIA, none, List.of()));
    }
}
