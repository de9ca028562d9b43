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
public record Selectivity(List<Pair> pairs) {

    /**
     * One pair.
     *
     * @param upstream the part that may give way too soon
     * @param downstream the one that is meant to
     * @param failures how many single failures this concerns
     * @param worst what may come of the worst of them
     */
    public record Pair(String upstream, String downstream, int failures, Example worst) {}

    /**
     * One failure of a pair.
     *
     * @param fastSeconds when the upstream part may give way (s)
     * @param slowSeconds how long the downstream one may take (s); infinite if it might never open
     * @param typically what comes of the failure where the downstream one wins
     */
    public record Example(
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
        Map<Names, List<Example>> examples = new LinkedHashMap<>();
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

    private static Example example(Verdict verdict, ToleranceOutcome band) {
        return new Example(
                verdict.failure().name(),
                band.fastSeconds(),
                band.slowSeconds(),
                band.then().outcome(),
                verdict.outcome());
    }

    private static Pair pair(Names names, List<Example> examples) {
        Example worst = examples.stream().min(Comparator.comparing(Example::outcome)).orElseThrow();
        return new Pair(names.upstream, names.downstream, examples.size(), worst);
    }
}
