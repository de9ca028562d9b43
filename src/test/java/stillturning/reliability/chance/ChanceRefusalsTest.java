package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChanceRefusalsTest {
    private static final CutUnion PAIR = CutUnion.of(2, List.of(List.of(0, 1)));

    private static void refused(String words, Executable asked) {
        String message = assertThrows(IllegalArgumentException.class, asked).getMessage();
        assertTrue(String.valueOf(message).contains(words), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0000001, 2, -1e-9, Double.NaN})
    void probabilityOutsideIsRefused(double chance) {
        assertThrows(IllegalArgumentException.class, () -> Cases.fixed(chance));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void timeThatIsNoneIsRefused(double seconds) {
        assertThrows(IllegalArgumentException.class, () -> Cases.latent(1e-6, seconds));
        assertThrows(IllegalArgumentException.class, () -> Exposure.of(seconds, List.of()));
    }

    @Test
    void setsThatMakeNoSenseAreRefused() {
        refused("cut set 1 is empty", () -> CutUnion.of(3, List.of(List.of(0), List.of())));
        refused("outside 0 to 2", () -> CutUnion.of(3, List.of(List.of(3))));
        refused("outside 0 to 2", () -> CutUnion.of(3, List.of(List.of(-1, 2))));
        refused("-1 events", () -> CutUnion.of(-1, List.of()));
        refused("2000000 events", () -> CutUnion.of(2_000_000, List.of()));
        refused("limit of -1", () -> CutUnion.of(1, List.of(), -1));
    }

    @Test
    void eventsWithoutOccurrenceAreRefused() {
        Exposure three = Cases.even(3, .1);
        refused("3 occurrences for 2 events", () -> Chance.of(PAIR, three));
        refused("3 occurrences for 2 events", () -> Chance.ranges(PAIR, three, 100, 1));
        refused("3 occurrences for 2 events", () -> Chance.importances(PAIR, three));
        refused(
                "1 sources for 2 events",
                () -> new Exposure(1, Cases.even(2, .1).occurrences(), List.of(0)));
    }

    @Test
    void groupsThatMakeNoSenseAreRefused() {
        refused("group", () -> Chance.importance(PAIR, Cases.even(2, .1), Set.of()));
        refused("group", () -> Chance.importance(PAIR, Cases.even(2, .1), Set.of(0, 2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-.1, 1.1, Double.NaN})
    void betaOutsideIsRefused(double beta) {
        refused("beta", () -> Chance.split(Cases.fixed(.1), beta));
    }

    @Test
    void fourIntervalsAreRefused() {
        CutUnion four = CutUnion.of(4, List.of(List.of(0, 1, 2, 3)));
        Exposure exposure =
                Exposure.of(
                        1,
                        IntStream.rangeClosed(1, 4)
                                .mapToObj(hours -> (Occurrence) Cases.latent(1, hours))
                                .toList());
        refused("4 different inspection intervals", () -> Chance.of(four, exposure));
    }

    @Test
    void noSetsNeverComeTrue() {
        CutUnion none = CutUnion.of(2, List.of());
        Exposure exposure = Cases.even(2, .3);
        TopChance top = Chance.of(none, exposure);
        assertEquals(new Estimate(Basis.EXACT, 0, 0, 0, 0, 0), top.average());
        assertTrue(top.cutSetsByOrder().isEmpty());
        Importance importance = Chance.importances(none, exposure).get(1);
        assertEquals(0, importance.fussellVeselySum());
        assertEquals(0, importance.criticality());
        assertEquals(1, importance.riskAchievement());
        assertEquals(1, importance.riskReduction());
        assertTrue(InclusionExclusion.of(none, exposure, 3).complete());
        assertEquals(0, Chance.ranges(none, exposure, 20, 1).average().high95());
        assertEquals(
                0,
                Chance.of(CutUnion.of(0, List.of(), 0), Exposure.of(1, List.of())).last().value());
    }

    @Test
    void certainAndImpossibleEventsAreAnswered() {
        TopChance top = Chance.of(PAIR, Cases.perFlight(1, 0));
        assertEquals(0, top.average().value());
        Importance one = Chance.importances(PAIR, Cases.perFlight(1, 0)).get(1);
        assertEquals(Double.POSITIVE_INFINITY, one.riskAchievement());
        assertEquals(1, Chance.of(PAIR, Cases.perFlight(1, 1)).average().value());
        assertEquals(1, Cases.average(PAIR, Cases.latent(1e300, 1e300), Cases.active(1e300)), 1e-5);
    }

    @Test
    void whatIsTooLargeIsBoundedAndSaysSo() {
        SplittableRandom random = new SplittableRandom(4);
        List<List<Integer>> sets =
                IntStream.range(0, 3000)
                        .mapToObj(n -> random.ints(3, 0, 300).boxed().toList())
                        .toList();
        CutUnion large = CutUnion.of(300, sets);
        assertEquals(Basis.BOUNDED, large.basis());
        assertEquals(0, large.nodes());
        Exposure exposure = Cases.even(300, 1e-3);
        Estimate top = Chance.of(large, exposure).average();
        assertEquals(Basis.BOUNDED, top.basis());
        assertEquals(top.high(), top.value());
        assertTrue(top.low() < top.value() && top.low() > .98 * top.value(), top::toString);
        List<Double> partial = InclusionExclusion.of(large, exposure, 9).partialSums();
        assertEquals(2, partial.size());
        assertTrue(partial.get(1) <= top.value() && partial.get(0) >= top.value());
        Importance first = Chance.importance(large, exposure, List.of(0));
        assertTrue(first.fussellVeselyUnion().isEmpty());
        assertEquals(Basis.BOUNDED, first.basis());
        assertTrue(first.never() < first.top() && first.top() < first.always());
    }
}
