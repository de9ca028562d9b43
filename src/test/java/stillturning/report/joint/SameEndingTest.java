package stillturning.report.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.report.ReportSamples;
import stillturning.report.joint.SameEnding.By;

class SameEndingTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();

    private static Appraisal oneBus() {
        return ASSESSMENT.of("one-bus").orElseThrow();
    }

    private static boolean stops(Verdict verdict) {
        return !verdict.engineOwn()
                && (verdict.outcome() == Outcome.ENGINE_LOST || verdict.outcome().needsPilot());
    }

    private static Odds likely(double most, String part) {
        Map<Mode, Rate> rates = new HashMap<>();
        for (Verdict verdict : oneBus().singles()) {
            Mode mode = Mode.of(verdict.failure().hits().get(0));
            double median = mode.part().equals(part) ? most : 1e-9;
            rates.put(mode, new Rate(median, 3, Per.SECOND, "invented"));
        }
        return new Odds(rates, List.of(), Map.of());
    }

    @Test
    void everyFailureThatStopsTheEngineStandsInOneLineOnly() {
        for (Appraisal appraisal : ASSESSMENT.appraisals()) {
            List<Verdict> grouped =
                    SameEnding.of(appraisal, Odds.UNKNOWN).stream()
                            .flatMap(e -> e.failures().stream())
                            .toList();
            Set<Verdict> wanted = new HashSet<>(appraisal.singles());
            wanted.removeIf(v -> !stops(v));
            assertEquals(wanted, new HashSet<>(grouped));
            assertEquals(wanted.size(), grouped.size());
        }
    }

    @Test
    void failuresOfALineTakeTheSameAway() {
        for (SameEnding ending : SameEnding.of(oneBus(), Odds.UNKNOWN)) {
            for (Verdict verdict : ending.failures()) {
                assertEquals(ending.outcome(), verdict.outcome());
                assertEquals(
                        Set.copyOf(ending.loads()), Set.copyOf(verdict.losses().engineLoads()));
            }
            assertEquals(ending.by() == By.STORE, ending.loads().isEmpty());
        }
    }

    @Test
    void theMostFrequentOfTheWorstComesFirst() {
        List<SameEnding> even = SameEnding.of(oneBus(), likely(1e-9, "nothing"));
        List<SameEnding> lost =
                even.stream()
                        .filter(e -> e.outcome() == Outcome.ENGINE_LOST && e.by() == By.SUPPLY)
                        .toList();
        assertTrue(lost.size() > 1, even::toString);
        for (SameEnding ending : lost) {
            double perHour = 3600e-9 * ending.failures().size();
            assertEquals(perHour, ending.perHour(), 1e-12);
        }
        SameEnding last = lost.get(lost.size() - 1);
        SameEnding first = SameEnding.of(oneBus(), likely(1e-3, last.parts().get(0))).get(0);
        assertEquals(last.loads(), first.loads());
        assertEquals(last.parts().get(0), first.parts().get(0));
        for (int n = 1; n < even.size(); n++) {
            assertTrue(even.get(n - 1).outcome().compareTo(even.get(n).outcome()) <= 0);
        }
    }
}
