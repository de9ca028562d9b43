package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Selectivity;
import stillturning.assess.ToleranceOutcome;

/** The shape of what the tolerance of protectors leaves open after one failure in JSON. */
record InBandJson(
        String expected,
        @Nullable String instead,
        @Nullable Double fastSeconds,
        @Nullable Double slowSeconds,
        String outcome) {

    /** Two parts of which the wrong one may give way first. */
    record Pair(
            String upstream,
            String downstream,
            int failures,
            String example,
            @Nullable Double fastSeconds,
            @Nullable Double slowSeconds,
            String outcome,
            String typically) {}

    static InBandJson of(ToleranceOutcome band) {
        return new InBandJson(
                band.expected(),
                band.unselective() ? band.instead() : null,
                JsonNumbers.number(band.fastSeconds()),
                JsonNumbers.number(band.slowSeconds()),
                JsonNumbers.kebab(band.then().outcome()));
    }

    static List<Pair> pairs(Selectivity selectivity) {
        return selectivity.pairs().stream().map(InBandJson::pair).toList();
    }

    private static Pair pair(Selectivity.Pair pair) {
        return new Pair(
                pair.upstream(),
                pair.downstream(),
                pair.failures(),
                pair.worst().failure(),
                JsonNumbers.number(pair.worst().fastSeconds()),
                JsonNumbers.number(pair.worst().slowSeconds()),
                JsonNumbers.kebab(pair.worst().outcome()),
                JsonNumbers.kebab(pair.worst().typically()));
    }
}
