package stillturning.cli.breaking;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.cli.breaking.Stories.Untold;
import stillturning.cli.terminal.JsonWriter;
import stillturning.report.Cautions;
import stillturning.report.json.JsonReport;
import stillturning.story.Moment.Span;
import tools.jackson.databind.JsonNode;

/**
 * Stories for other programs: each {@code story} is a document of {@code story.schema.json}, which
 * tells it with every kind of pilot. Each of the {@code ranges}, if they were asked for, is a
 * document of {@code range.schema.json}.
 */
record StoriesJson(
        int schemaVersion,
        String caution,
        String study,
        String phase,
        boolean flown,
        List<Entry> stories,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<JsonNode> ranges,
        List<Untold> untold) {

    /** A story of a candidate. */
    record Entry(String candidate, JsonNode story) {}

    /**
     * @param ranges one a told story, or none
     */
    static String of(Stories stories, List<EnduranceRange> ranges) {
        return JsonWriter.text(
                new StoriesJson(
                        JsonReport.SCHEMA_VERSION,
                        Cautions.SHORT,
                        stories.study().id(),
                        stories.moment().phase(),
                        stories.moment().span() == Span.FLOWN,
                        stories.told().stream()
                                .map(
                                        t ->
                                                new Entry(
                                                        t.candidate().id(),
                                                        JsonWriter.tree(
                                                                JsonReport.story(t.verdict()))))
                                .toList(),
                        ranges.stream().map(r -> JsonWriter.tree(JsonReport.range(r))).toList(),
                        stories.untold()));
    }
}
