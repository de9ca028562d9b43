package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.ranges.EnduranceRange.Contributor;
import stillturning.report.Cautions;
import stillturning.story.Endurance;

/** The shape of an endurance's range in JSON. */
record RangeJson(
        int schemaVersion,
        String caution,
        String failure,
        int samples,
        int inputs,
        Values low,
        Values median,
        Values high,
        Map<String, Integer> outcomes,
        int notLimited,
        List<Part> contributors,
        List<String> untold) {

    /** One endurance. */
    record Values(@Nullable Double seconds, boolean limited, boolean isAtLeast) {}

    /** An input and its share. */
    record Part(
            String file, String path, String value, @Nullable Double share, boolean lengthens) {}

    static RangeJson of(EnduranceRange range) {
        Map<String, Integer> outcomes = new LinkedHashMap<>();
        range.outcomes().forEach((o, count) -> outcomes.put(JsonNumbers.kebab(o), count));
        return new RangeJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                range.failure(),
                range.told(),
                range.inputs(),
                values(range.quantiles().low()),
                values(range.quantiles().median()),
                values(range.quantiles().high()),
                outcomes,
                range.notLimited(),
                range.contributors().stream().map(RangeJson::part).toList(),
                range.untold());
    }

    private static Values values(Endurance endurance) {
        return new Values(
                JsonNumbers.seconds(endurance),
                JsonNumbers.limited(endurance),
                endurance instanceof Endurance.AtLeast);
    }

    private static Part part(Contributor contributor) {
        return new Part(
                contributor.input().file(),
                contributor.input().name(),
                contributor.input().text(),
                JsonNumbers.number(contributor.share()),
                contributor.lengthens());
    }
}
