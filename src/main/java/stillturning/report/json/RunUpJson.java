package stillturning.report.json;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stillturning.model.Study;
import stillturning.reliability.likelihood.Inspection;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.SeenDifference;
import stillturning.report.Cautions;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.LatentRemedies;
import stillturning.report.json.LatentJson.Looking;
import stillturning.story.PilotView;

/** The shape of run-up cards in JSON. */
record RunUpJson(
        int schemaVersion, String caution, String study, List<One> cards, List<String> untold) {

    /**
     * One candidate's card.
     *
     * @param proven whether it is proven that fewer checks do not
     * @param inFlight position by lever, before each check and after the last
     */
    record One(
            String candidate,
            String phase,
            @Nullable Double heldSeconds,
            boolean proven,
            List<Step> checks,
            Map<String, String> inFlight,
            List<NotRevealed> notRevealed) {}

    /** One check. */
    record Step(
            Map<String, String> set,
            Seen before,
            Seen expected,
            List<Revealed> reveals,
            Map<String, String> setBack) {}

    /** What there is to see. */
    record Seen(String engine, List<String> cues, List<String> stopped) {}

    /** A failure that shows, and how. */
    record Revealed(String failure, List<Instead> seen) {}

    /**
     * What is seen otherwise, in step 1 while the levers stand so, in step 2 once they are back.
     */
    record Instead(int step, String what, String name) {}

    /** What no check reveals. */
    record NotRevealed(String failure, Looking inspection) {}

    static RunUpJson of(Study study, List<CombinedFindings> found, List<String> untold) {
        return new RunUpJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                found.stream().map(RunUpJson::of).toList(),
                untold);
    }

    private static One of(CombinedFindings found) {
        Card card = found.card();
        LatentRemedies hidden = new LatentRemedies(found);
        return new One(
                found.candidate().id(),
                card.phase(),
                JsonNumbers.number(card.seconds()),
                card.proven(),
                card.checks().stream().map(check -> step(found, check)).toList(),
                found.candidate().cockpit().flight(),
                found.likely().inspections().stream().map(i -> not(found, i, hidden)).toList());
    }

    private static Step step(CombinedFindings found, Check check) {
        return new Step(
                check.moves(),
                seen(check.before()),
                seen(check.expected()),
                check.reveals().stream()
                        .map(
                                r ->
                                        new Revealed(
                                                LatentJson.name(found, r.event()),
                                                r.seen().stream().map(RunUpJson::instead).toList()))
                        .toList(),
                check.back());
    }

    private static Seen seen(PilotView sight) {
        return new Seen(
                JsonNumbers.kebab(sight.engine()),
                List.copyOf(new TreeSet<>(sight.cues())),
                List.copyOf(new TreeSet<>(sight.stopped())));
    }

    private static Instead instead(SeenDifference difference) {
        return new Instead(
                difference.step(), JsonNumbers.kebab(difference.what()), difference.name());
    }

    private static NotRevealed not(
            CombinedFindings found, Inspection inspection, LatentRemedies hidden) {
        return new NotRevealed(
                LatentJson.name(found, inspection.event()), LatentJson.looking(inspection, hidden));
    }
}
