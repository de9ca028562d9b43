package stillturning.reliability.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stillturning.reliability.likelihood.HandMade.perFlight;
import static stillturning.reliability.likelihood.HandMade.perHour;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.reliability.chance.Basis;
import stillturning.reliability.chance.Estimate;
import stillturning.reliability.chance.Importance;

/** Worked examples of the handbooks, given as events of an aircraft. */
class PublishedChancesTest {

    private static final int T = 0;
    private static final int K2 = 1;
    private static final int S = 2;
    private static final int S1 = 3;
    private static final int K1 = 4;
    private static final int R = 5;

    private static final List<List<Integer>> TANK =
            List.of(List.of(T), List.of(K2), List.of(S, S1), List.of(S, K1), List.of(S, R));

    private static HandMade tank(double t, double relays, double others) {
        return new HandMade()
                .wire("t", perFlight(t))
                .wire("k2", perFlight(relays))
                .wire("s", perFlight(others))
                .wire("s1", perFlight(relays))
                .wire("k1", perFlight(relays))
                .wire("r", perFlight(others));
    }

    /**
     * NUREG-0492, simplified pressure tank. Structure: read in a second source. Probabilities: from
     * memory, unverified (one variant has K1 = 5e-6; here 3e-5). Results: computed from them.
     */
    @Test
    void pressureTankHasItsTopAndItsSetsTheirShares() {
        LikelihoodResult likely = tank(5e-6, 3e-5, 1e-4).likely(TANK);
        Estimate top = likely.checked().point().average();
        assertEquals(Basis.EXACT, top.basis());
        assertEquals(3.501600e-5, top.rareEventSum(), 5e-15);
        assertEquals(3.501584875e-5, top.value(), 5e-15);
        assertEquals(likely.checked(), likely.unchecked());
        assertEquals(
                List.of(List.of(K2), List.of(T), List.of(S, R), List.of(S, S1), List.of(S, K1)),
                likely.worst().stream().map(SetShare::events).toList());
        double[] each = {3e-5, 5e-6, 1e-8, 3e-9, 3e-9};
        for (int i = 0; i < each.length; i++) {
            assertEquals(each[i], likely.worst().get(i).perFlight(), 1e-9 * each[i]);
        }
        // handbook: K2 about 86 %, T about 14 % (from memory, unverified)
        assertEquals(.8568, likely.worst().get(0).share(), 5e-5);
        assertEquals(.1428, likely.worst().get(1).share(), 5e-5);
        assertEquals(1, likely.worst().stream().mapToDouble(SetShare::share).sum(), 1e-12);
    }

    /** The same a thousand times as likely (ours), so that the measures differ: computed. */
    @Test
    void partsOfThePressureTankStandInTheOrderOfTheirImportance() {
        LikelihoodResult likely = tank(.005, .03, .1).likely(TANK);
        assertEquals(
                List.of("k2", "s", "r", "t", "s1", "k1"),
                likely.parts().stream().map(Share::name).toList());
        Importance switches = likely.parts().get(1).importance();
        assertEquals(.297876, switches.criticality(), 5e-7);
        assertEquals(.313725, switches.fussellVeselySum(), 5e-7);
        assertEquals(3.68089, switches.riskAchievement(), 5e-6);
        assertEquals(1.42425, switches.riskReduction(), 5e-6);
    }

    /**
     * Redundant pair, .001 each, beta .1: computed; beta factor of NUREG/CR-4780, from memory,
     * unverified.
     */
    @Test
    void aCommonCauseBringsNearlyAllOfWhatARedundantPairCosts() {
        LikelihoodResult likely =
                new HandMade()
                        .wire("one", perFlight(.001))
                        .wire("other", perFlight(.001))
                        .cause(
                                CauseKind.ALIKE,
                                "alike pair: fails",
                                Optional.of(perFlight(1e-4)),
                                0,
                                1)
                        .likely(List.of(List.of(2), List.of(0, 1)));
        assertEquals(1.0081e-4, likely.checked().point().average().rareEventSum(), 1e-12);
        assertEquals(8.1e-7, likely.worst().get(1).perFlight(), 1e-15);
        assertEquals(.992, likely.worst().get(0).share(), 5e-5);
        assertEquals("alike pair: fails", likely.causes().get(0).name());
    }

    private static HandMade activeOnLatent(double active, double latent) {
        return new HandMade().wire("active", perHour(active)).wire("latent", perHour(latent));
    }

    /**
     * Active failure on top of a latent one: form of AC/AMC 25.1309 and ARP4761, from memory,
     * unverified; figures computed.
     */
    @Test
    void anActiveFailureOnTopOfALatentOneHasTheMeanAndTheLastFlightOfTheForm() {
        LikelihoodResult likely =
                activeOnLatent(1e-4, 1e-5).hidden(1, 0).likely(List.of(List.of(0, 1)));
        assertEquals(4.998084e-8, likely.checked().point().averagePerHour().value(), 5e-15);
        // 1e-7 by the form, which has no exponential
        assertEquals(1e-7, likely.checked().point().lastPerHour().value(), 1e-10);
        assertEquals(likely.checked(), likely.unchecked());
    }

    /** 2 L / (rate rate): 1e-6, 1e-4, 1e-5 give 2000 h; a tenth of each of the first two too. */
    @Test
    void theIntervalThatKeepsToAYardstickIsThatOfTheForm() {
        Inspection look =
                activeOnLatent(1e-5, 1e-5)
                        .flown(1, 2500)
                        .hidden(1, 0)
                        .likely(List.of(List.of(0, 1)))
                        .inspections()
                        .get(0);
        assertEquals(1, look.event());
        assertEquals(2000 * 3600, look.everySeconds().orElseThrow(), 1e-3);
        assertEquals("at least every 2000 h flown", look.words());
    }

    /** Two latent ones of one inspection, rate times interval .01: computed. */
    @Test
    void twoLatentFailuresGrowOldTogether() {
        LikelihoodResult likely =
                activeOnLatent(1e-4, 1e-4).hidden(0, 1).hidden(1, 0).likely(List.of(List.of(0, 1)));
        assertEquals(3.30845e-5, likely.unchecked().point().average().value(), 5e-11);
    }
}
