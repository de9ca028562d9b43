package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pairs of parts of which the wrong one may give way first, within the tolerance of both.
 *
 * @param pairs each pair once, the worst outcome first
 */
public record Selectivity(List<ProtectorPair> pairs) {

    /**
     * One pair.
     *
     * @param upstream the part that may give way too soon
     * @param downstream the one that is meant to
     * @param failures how many single failures this concerns
     * @param worst what may come of the worst of them
     */
    public record ProtectorPair(
            String upstream, String downstream, int failures, FailureExample worst) {}

    /**
     * One failure of a pair.
     *
     * @param fastSeconds when the upstream part may give way (s)
     * @param slowSeconds how long the downstream one may take (s); infinite if it might never open
     * @param typically what comes of the failure where the downstream one wins
     */
    public record FailureExample(
            String failure,
            double fastSeconds,
            double slowSeconds,
            Outcome outcome,
            Outcome typically) {}

    private record Names(String upstream, String downstream) {}

    public Selectivity {
        pairs = List.copyOf(pairs);
    }

    public static Selectivity of(List<Verdict> verdicts) {
        Map<Names, List<FailureExample>> examples = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            verdict.inBand()
                    .filter(ToleranceOutcome::unselective)
                    .ifPresent(
                            band ->
                                    examples.computeIfAbsent(
                                                    new Names(band.instead(), band.expected()),
                                                    names -> new ArrayList<>())
                                            .add(example(verdict, band)));
        }
        return new Selectivity(
                examples.entrySet().stream()
                        .map(e -> pair(e.getKey(), e.getValue()))
                        .sorted(Comparator.comparing(pair -> pair.worst().outcome()))
                        .toList());
    }

    private static FailureExample example(Verdict verdict, ToleranceOutcome band) {
        return new FailureExample(
                verdict.failure().name(),
                band.fastSeconds(),
                band.slowSeconds(),
                band.then().outcome(),
                verdict.outcome());
    }

    private static ProtectorPair pair(Names names, List<FailureExample> examples) {
        FailureExample worst =
                examples.stream().min(Comparator.comparing(FailureExample::outcome)).orElseThrow();
        return new ProtectorPair(names.upstream, names.downstream, examples.size(), worst);
    }
}
