package stillturning.cli.breaking;

import java.util.List;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.cli.breaking.Stories.ToldFailure;
import stillturning.cli.breaking.Stories.UntoldFailure;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonReport;
import stillturning.report.json.JsonShape;
import stillturning.story.Moment.FlightSpan;

/** Stories for other programs. */
public final class StoriesJson {

    /**
     * Stories, and how sure the endurance of each is.
     *
     * @param ranges one a told story, or none
     */
    record Ranged(Stories stories, List<EnduranceRange> ranges) {}

    private static final JsonShape<ToldFailure> STORY =
            JsonShape.<ToldFailure>named("story")
                    .text("candidate", t -> t.candidate().id())
                    .field("story", JsonReport.STORY_INSIDE, ToldFailure::verdict)
                    .says("A document of story.schema.json.");

    private static final JsonShape<UntoldFailure> UNTOLD =
            JsonShape.<UntoldFailure>named("untold")
                    .text("candidate", UntoldFailure::candidate)
                    .text("failure", UntoldFailure::failure)
                    .text("reason", UntoldFailure::reason);

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
                            .flag("flown", r -> r.stories.moment().span() == FlightSpan.FLOWN)
                            .says(
                                    "Whether the rest of the flight is flown; if not, the phase"
                                            + " lasts.")
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
