package stillturning.cli.breaking;

import java.util.List;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.cli.breaking.Stories.Told;
import stillturning.cli.breaking.Stories.Untold;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonReport;
import stillturning.report.json.JsonShape;
import stillturning.story.Moment.Span;

/** Stories for other programs. */
public final class StoriesJson {

    /**
     * Stories, and how sure the endurance of each is.
     *
     * @param ranges one a told story, or none
     */
    record Ranged(Stories stories, List<EnduranceRange> ranges) {}

    private static final JsonShape<Told> STORY =
            JsonShape.<Told>named("story")
                    .text("candidate", t -> t.candidate().id())
                    .field("story", JsonReport.STORY_INSIDE, Told::verdict)
                    .says("A document of story.schema.json.");

    private static final JsonShape<Untold> UNTOLD =
            JsonShape.<Untold>named("untold")
                    .text("candidate", Untold::candidate)
                    .text("failure", Untold::failure)
                    .text("reason", Untold::reason);

    /** The document. */
    public static final JsonDocument<Ranged> STORIES =
            new JsonDocument<>(
                    "Failures told",
                    "One failure in one or several candidates; each story is a document of"
                            + " story.schema.json.",
                    JsonDocument.<Ranged>start()
                            .text("study", r -> r.stories.study().id())
                            .text("phase", r -> r.stories.moment().phase())
                            .says("The phase in which the failure comes.")
                            .flag("flown", r -> r.stories.moment().span() == Span.FLOWN)
                            .says(
                                    "Whether the rest of the flight is flown; if not, the phase lasts.")
                            .list("stories", STORY, r -> r.stories.told())
                            .list("ranges", JsonReport.RANGE_INSIDE, Ranged::ranges)
                            .says(
                                    "Documents of range.schema.json: how sure the endurance of each"
                                            + " story is, in the same order; only there if asked"
                                            + " for.")
                            .leftOutWhereEmpty()
                            .list("untold", UNTOLD, r -> r.stories.untold())
                            .says("Stories that could not be computed."));

    private StoriesJson() {}

    static String of(Stories stories, List<EnduranceRange> ranges) {
        return STORIES.longText(new Ranged(stories, ranges));
    }
}
