package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assessment;
import stillturning.report.UntoldTexts;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.page.ReplayedReport;

/** What no page of the document answers, so that nobody thinks it does. */
final class NotAnalysed {

    private static final List<String> BY_THE_MODEL =
            List.of(
                    "Ripple, radio noise, lightning and surges, but for the load dump of an alternator"
                            + " that loses its battery: between events all is steady direct current.",
                    "Vibration, corrosion, chafing before it is through, workmanship, and faults of"
                            + " software that nobody thought of.",
                    "Loads below their minimum voltage go on drawing as a resistance, which errs on the"
                            + " cautious side.",
                    "Failures that come and go, and slow ones that nobody would call failed yet.",
                    "The engine itself: fuel, spark and cooling are given or not, by electricity alone.",
                    "Requirements and ranking look at one failure at a time, a rare one as much as a"
                            + " frequent one, in one phase of the flight.");

    private NotAnalysed() {}

    /** In a few lines. */
    static List<String> inShort(PaperContents contents) {
        List<String> points = new ArrayList<>();
        points.add(
                "Ripple, radio noise, lightning, vibration, corrosion, workmanship, and what software"
                        + " does by mistake.");
        points.add(
                "The engine's own failures: fuel, spark and cooling for other than electrical reasons.");
        points.addAll(notAsked(contents));
        return points;
    }

    private static List<String> notAsked(PaperContents contents) {
        List<String> points = new ArrayList<>();
        if (contents.together().isEmpty()) {
            points.add(
                    "Two failures at once, common causes, latent failures and how likely anything is:"
                            + " not asked for (explain --pairs); so there is no run-up card.");
        }
        if (contents.cases().stream().allMatch(c -> c.cases().isEmpty())) {
            points.add("Cases of its own: the study names none.");
        }
        if (contents.sizes().isEmpty()) {
            points.add("Sizes of wires and protectors: not asked for.");
        }
        return points;
    }

    static List<Block> blocks(Assessment assessment, PaperContents contents) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("By the model"));
        blocks.add(new Points(BY_THE_MODEL));
        blocks.add(new Heading("Held against what has happened"));
        blocks.add(new Words(ReplayedReport.inShort()));
        List<String> notAsked = notAsked(contents);
        if (!notAsked.isEmpty()) {
            blocks.add(new Heading("In this edition"));
            blocks.add(new Points(notAsked));
        }
        List<String> untold = new ArrayList<>();
        assessment.unassessed().forEach(u -> untold.add(u.candidate() + ": " + u.reason()));
        assessment
                .appraisals()
                .forEach(
                        a ->
                                UntoldTexts.findings(a)
                                        .forEach(
                                                f -> untold.add(a.candidate().title() + ": " + f)));
        if (!untold.isEmpty()) {
            blocks.add(new Heading(UntoldTexts.HEADING));
            blocks.add(new Points(untold));
        }
        return List.copyOf(blocks);
    }
}
