package stillturning.cli;

import java.util.List;
import stillturning.cli.Stories.Untold;
import stillturning.report.Cautions;
import stillturning.report.json.JsonReport;
import stillturning.story.Moment.Span;
import tools.jackson.databind.JsonNode;

/**
 * Stories for other programs: each {@code story} is a document of {@code story.schema.json}, which
 * tells it with every kind of pilot.
 */
record StoriesJson(
        int schemaVersion,
        String caution,
        String study,
        String phase,
        boolean flown,
        List<Entry> stories,
        List<Untold> untold) {

    /** A story of a candidate. */
    record Entry(String candidate, JsonNode story) {}

    static String of(Stories stories) {
        return Json.text(
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
                                                        Json.tree(JsonReport.story(t.verdict()))))
                                .toList(),
                        stories.untold()));
    }
}
