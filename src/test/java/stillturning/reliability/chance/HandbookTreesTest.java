package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Trees of NUREG-0492 (Fault Tree Handbook, 1981) and its followers. Structures: read in a second
 * source. Probabilities of the pressure tank: from memory, unverified (one variant has K1 = 5e-6;
 * here 3e-5). Results: computed from them by full enumeration. The handbook's printed top, 3.4e-5
 * or 3.5e-5, is in conflict with its own table and is not tested.
 */
class HandbookTreesTest {
    private static final int T = 0;
    private static final int K2 = 1;
    private static final int S = 2;
    private static final int S1 = 3;
    private static final int K1 = 4;
    private static final int R = 5;

    private static final CutUnion TANK =
            CutUnion.of(
                    6,
                    List.of(
                            List.of(T),
                            List.of(K2),
                            List.of(S, S1),
                            List.of(S, K1),
                            List.of(S, R)));

    private static final Exposure RARE = Cases.perFlight(5e-6, 3e-5, 1e-4, 3e-5, 3e-5, 1e-4);

    /** A thousand times as likely (ours), so that the measures differ visibly. */
    private static final Exposure SCALED = Cases.perFlight(.005, .03, .1, .03, .03, .1);

    @Test
    void pressureTankHasItsSumItsBoundAndItsExactTop() {
        TopChance top = Chance.of(TANK, RARE);
        assertEquals(Map.of(1, 2, 2, 3), top.cutSetsByOrder());
        Estimate average = top.average();
        assertEquals(Basis.EXACT, average.basis());
        assertEquals(3.501600e-5, average.rareEventSum(), 5e-15);
        assertEquals(3.501584944e-5, average.minCutUpperBound(), 5e-15);
        assertEquals(3.501584875e-5, average.value(), 5e-15);
        assertEquals(average, top.last());
    }

    @Test
    void sharesOfThePressureTankAreThoseOfTheHandbook() {
        List<Importance> all = Chance.importances(TANK, RARE);
        // handbook: T about 14 %, K2 about 86 %, double sets below 0.1 % (from memory, unverified)
        assertEquals(.1428, all.get(T).fussellVeselySum(), 5e-5);
        assertEquals(.8568, all.get(K2).fussellVeselySum(), 5e-5);
        assertEquals(.000457, all.get(S).fussellVeselySum(), 5e-7);
        // order-1 sets (computed)
        assertEquals(.99997, all.get(T).birnbaum(), 5e-6);
        assertEquals(.999995, all.get(K2).birnbaum(), 5e-7);
    }

    @Test
    void anotherRelayMakesTheOtherTop() {
        Exposure other = Cases.perFlight(5e-6, 3e-5, 1e-4, 3e-5, 5e-6, 1e-4);
        assertEquals(3.501335e-5, Cases.average(TANK, other), 5e-12);
    }

    @Test
    void fullTreeOfThePressureTankHas29Sets() {
        int p3 = 5;
        int p4 = 8;
        List<List<Integer>> sets = new ArrayList<>();
        for (int single = 0; single < 5; single++) {
            sets.add(List.of(single));
        }
        for (int one = p3; one < p3 + 3; one++) {
            for (int other = p4; other < p4 + 8; other++) {
                sets.add(List.of(one, other));
            }
        }
        CutUnion full = CutUnion.of(16, sets);
        assertEquals(29, full.sets().size());
        Estimate top = Chance.of(full, Cases.even(16, .01)).average();
        assertEquals(.0511920537, top.value(), 5e-11);
        assertEquals(.0524, top.rareEventSum(), 1e-12);
        assertEquals(.0512897034, top.minCutUpperBound(), 5e-11);
    }

    @Test
    void scaledPressureTankHasTheImportancesComputedFromIt() {
        Estimate top = Chance.of(TANK, SCALED).average();
        assertEquals(.04963513285, top.value(), 5e-12);
        assertEquals(.0510, top.rareEventSum(), 1e-12);
        assertEquals(.0502258915, top.minCutUpperBound(), 5e-11);
        // by event: Birnbaum, criticality, Fussell-Vesely as a sum, achievement, reduction worth
        double[][] expected = {
            {.95514057, .0962162, .0980392, 20.147, 1.10646},
            {.979757595, .592176, .588235, 20.147, 2.45204},
            {.147851328, .297876, .313725, 3.68089, 1.42425},
            {.084257595, .0509262, .0588235, 2.64661, 1.05366},
            {.084257595, .0509262, .0588235, 2.64661, 1.05366},
            {.0908109635, .182957, .196078, 2.64661, 1.22393}
        };
        List<Importance> all = Chance.importances(TANK, SCALED);
        for (int event = T; event <= R; event++) {
            Importance found = all.get(event);
            double[] row = expected[event];
            assertEquals(List.of(event), found.events());
            assertEquals(row[0], found.birnbaum(), 5e-9);
            assertEquals(row[1], found.criticality(), 5e-7);
            assertEquals(row[2], found.fussellVeselySum(), 5e-7);
            assertEquals(row[3], found.riskAchievement(), 5e-4);
            assertEquals(row[4], found.riskReduction(), 5e-6);
        }
    }

    @Test
    void bothFormsOfFussellVeselyDifferWhereProbabilitiesAreLarge() {
        Importance s = Chance.importance(TANK, SCALED, Set.of(S));
        // P(S and any of S1, K1, R) over the top, computed here
        assertEquals(
                .1 * (1 - .97 * .97 * .9) / .04963513285,
                s.fussellVeselyUnion().orElseThrow(),
                1e-8);
        assertTrue(s.fussellVeselyUnion().orElseThrow() < s.fussellVeselySum());
    }

    @Test
    void groupIsWeighedAsOne() {
        Importance relays = Chance.importance(TANK, SCALED, Set.of(K2, K1));
        // sums .03 + .003 of .051; without both: T or S(S1 or R), computed here
        assertEquals(.033 / .051, relays.fussellVeselySum(), 1e-12);
        assertEquals(1 - .995 * (1 - .1 * (1 - .97 * .9)), relays.never(), 1e-12);
        assertEquals(1, relays.always(), 1e-12);
        assertEquals(List.of(K2, K1), relays.events());
    }

    @Test
    void sumsOfIntersectionsOfTheScaledTankCloseInOnTheTop() {
        InclusionExclusion found = InclusionExclusion.of(TANK, SCALED, 10);
        assertTrue(found.complete());
        double[] sums = {.051, .0014, 3.555e-5, 4.185e-7, 1.35e-9};
        double[] partial = {.051, .0496, .04963555, .0496351315, .04963513285};
        for (int k = 0; k < 5; k++) {
            assertEquals(sums[k], found.sums().get(k), 1e-12);
            assertEquals(partial[k], found.partialSums().get(k), 1e-12);
        }
    }

    @Test
    void smallTreesHaveTheirTops() {
        // landing gear does not deploy; the same sets in NUREG-0492 chapter VII (from memory)
        CutUnion gear = CutUnion.of(3, List.of(List.of(2), List.of(0, 1)));
        assertEquals(.109, Cases.average(gear, Cases.even(3, .1)), 1e-12);
        Estimate disjoint = Chance.of(gear, Cases.even(3, .1)).average();
        assertEquals(.110, disjoint.rareEventSum(), 1e-12);
        assertEquals(.109, disjoint.minCutUpperBound(), 1e-12);
        // no flow to deluge nozzles (course exercise, read in a second source; value computed)
        CutUnion deluge = CutUnion.of(4, List.of(List.of(0, 3), List.of(1, 2)));
        assertEquals(.0199, Cases.average(deluge, Cases.even(4, .1)), 1e-12);
        // loss of power (lecture notes on fault trees, read; printed .010)
        CutUnion power = CutUnion.of(3, List.of(List.of(0, 1), List.of(2)));
        assertEquals(.009999875, Cases.average(power, Cases.perFlight(.067, .075, .005)), 1e-12);
    }

    @Test
    void setsThatContainAnotherAreAbsorbed() {
        // lecture notes on fault trees (read): E1E3E4 + E2 + E5 + E3 leaves three singles
        CutUnion notes =
                CutUnion.of(5, List.of(List.of(0, 2, 3), List.of(1), List.of(4), List.of(2)));
        assertEquals(List.of(List.of(1), List.of(2), List.of(4)), notes.sets());
        assertEquals(1, notes.absorbed());
        // exercise adapted from Rausand & Hoyland (read in a second source): 6 sets are left
        CutUnion exercise =
                CutUnion.of(
                        8,
                        List.of(
                                List.of(0),
                                List.of(1),
                                List.of(3, 4, 5),
                                List.of(3, 4, 6),
                                List.of(2),
                                List.of(5),
                                List.of(7)));
        assertEquals(6, exercise.sets().size());
        assertEquals(1, exercise.absorbed());
    }

    @Test
    void eitherOfThreeIsTheComplementOfNone() {
        // handbook chapter VI (from memory, unverified): .1, .2, .3 give .496, rare-event .6
        CutUnion or = CutUnion.of(3, List.of(List.of(0), List.of(1), List.of(2)));
        Estimate top = Chance.of(or, Cases.perFlight(.1, .2, .3)).average();
        assertEquals(.496, top.value(), 1e-12);
        assertEquals(.6, top.rareEventSum(), 1e-12);
    }

    @Test
    void activeEventTakesPartInAFlightByItsRate() {
        // 1 - exp(-x) against x: .050, .50 and 5.08 % (formula from memory, values computed)
        CutUnion one = CutUnion.of(1, List.of(List.of(0)));
        assertEquals(.00050, .001 / Cases.average(one, Cases.active(.001)) - 1, 5e-6);
        assertEquals(.0050, .01 / Cases.average(one, Cases.active(.01)) - 1, 5e-5);
        assertEquals(.0508, .1 / Cases.average(one, Cases.active(.1)) - 1, 5e-5);
    }
}
