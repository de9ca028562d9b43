package stillturning.report.joint;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.crosscheck.Disagreement;
import stillturning.assess.crosscheck.StoryOnlyFact;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.quantity.Formats;
import stillturning.report.ResultText;
import stillturning.report.joint.SharedFindings.Carrier;
import stillturning.report.joint.SharedFindings.PlayedCause;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** One candidate's common causes, and what its shape alone says. */
public final class CauseSheet {

    private static final int SHOWN = 10;

    /** What cannot be computed may be the worst. */
    private static final Comparator<PlayedCause> GRAVEST_FIRST =
            Comparator.comparing(
                            (PlayedCause p) ->
                                    p.verdict().map(v -> v.outcome()).orElse(Outcome.ENGINE_LOST))
                    .thenComparing(
                            p ->
                                    p.verdict()
                                            .map(v -> v.planned().engine().endurance().seconds())
                                            .map(Formats::lastingSeconds)
                                            .orElse(0.0));

    private static final double HOUR_SECONDS = 3600;

    /** What is meant; stands once above them. */
    public static final String MEANING =
            "A common cause fails several parts at one moment. Its outcome is that of a pilot as"
                    + " planned; its rate is mostly a guess. The shape is a second opinion that"
                    + " knows no volts and no time: which ways lead from the sources to what the"
                    + " engine needs, and back.";

    private final SharedFindings shared;
    private final boolean all;
    private final List<Block> blocks = new ArrayList<>();

    private CauseSheet(SharedFindings shared, boolean all) {
        this.shared = shared;
        this.all = all;
    }

    /**
     * The blocks.
     *
     * @param all whether to list what is else only counted
     */
    public static List<Block> of(SharedFindings shared, boolean all) {
        CauseSheet sheet = new CauseSheet(shared, all);
        sheet.causes();
        sheet.carriers();
        sheet.functions();
        sheet.places();
        sheet.disagreements();
        sheet.untold();
        return List.copyOf(sheet.blocks);
    }

    private void causes() {
        if (shared.causes().isEmpty()) {
            blocks.add(new Words("Nothing that the study names fails several parts at once."));
            return;
        }
        List<PlayedCause> worst = shared.causes().stream().sorted(GRAVEST_FIRST).toList();
        int shown = all ? worst.size() : Math.min(SHOWN, worst.size());
        blocks.add(
                Grid.of(
                        worst.subList(0, shown),
                        List.of(
                                words("common cause", 18, played -> played.cause().name()),
                                words("what happens", 26, CauseSheet::happens),
                                words("outcome, engine runs", 14, CauseSheet::comesTo),
                                words("what helps", 18, CauseSheet::remedy),
                                words("how often", 14, played -> rate(played.cause().rate())))));
        more(worst.size() - shown);
        sources(worst.subList(0, shown));
    }

    /** Once below the table: beside each figure they took more room than all the rest. */
    private void sources(List<PlayedCause> shown) {
        Map<String, Long> sources =
                shown.stream()
                        .flatMap(played -> played.cause().rate().stream())
                        .collect(
                                Collectors.groupingBy(
                                        Rate::source, LinkedHashMap::new, Collectors.counting()));
        if (!sources.isEmpty()) {
            blocks.add(
                    new Note(
                            "How often, by where it comes from: "
                                    + sources.entrySet().stream()
                                            .map(e -> e.getValue() + " " + e.getKey())
                                            .collect(Collectors.joining("; "))
                                    + "."));
        }
    }

    private static String comesTo(PlayedCause played) {
        return played.verdict().map(CauseSheet::outcome).orElse("cannot be computed");
    }

    /** Parts that share nothing cannot fail together: what has to be apart. */
    private static String remedy(PlayedCause played) {
        boolean harmless =
                played.verdict()
                        .filter(v -> v.outcome().compareTo(Outcome.INTERRUPTED) > 0)
                        .isPresent();
        if (harmless) {
            return "none needed for the engine";
        }
        return CauseRemedies.of(played.cause().kind());
    }

    private void more(int left) {
        if (left > 0) {
            blocks.add(new Note(left + " more; break --causes --all lists them."));
        }
    }

    /** Its words, without the kind that its name begins with. */
    private static String happens(PlayedCause played) {
        String words = played.cause().words();
        String known = played.cause().name().split(": ", 2)[0] + ": ";
        return words.startsWith(known) ? words.substring(known.length()) : words;
    }

    private static String outcome(Verdict verdict) {
        return verdict.outcome().words()
                + "; "
                + ResultText.endurance(verdict.planned().engine().endurance())
                + (verdict.engineOwn() ? " (engine's own)" : "");
    }

    /** Median and factor. */
    private static String rate(Optional<Rate> rate) {
        return rate.map(
                        r ->
                                (r.per() == Per.SECOND
                                                ? ChanceWords.every(r.median() * HOUR_SECONDS, "h")
                                                : ChanceWords.every(r.median(), "flights"))
                                        + ", within a factor of "
                                        + Formats.significant(r.errorFactor(), 2))
                .orElse("not known");
    }

    private void carriers() {
        if (shared.carriers().isEmpty()) {
            return;
        }
        blocks.add(new Heading("One part that takes feeds of several of the engine's loads"));
        List<Carrier> worst =
                shared.carriers().stream()
                        .sorted(
                                Comparator.comparing((Carrier c) -> c.verdict().outcome())
                                        .thenComparing(
                                                c ->
                                                        c.verdict()
                                                                .planned()
                                                                .engine()
                                                                .endurance()
                                                                .seconds()))
                        .toList();
        int shown = all ? worst.size() : Math.min(SHOWN, worst.size());
        blocks.add(
                Grid.of(
                        worst.subList(0, shown),
                        List.of(
                                words("failure", 34, c -> c.verdict().failure().name()),
                                words("feeds of", 38, c -> String.join(", ", c.loads())),
                                words("outcome, engine runs", 22, c -> outcome(c.verdict())))));
        more(worst.size() - shown);
    }

    private void functions() {
        blocks.add(new Heading("By shape: how each thing that the engine needs is supplied"));
        points(shared.shape().functions().stream().map(f -> f.words()).toList());
        if (!shared.shape().singlePoints().isEmpty()) {
            blocks.add(new Heading("By shape: parts without which the engine's needs are not met"));
            points(
                    shared.shape().singlePoints().stream()
                            .map(point -> point.part() + ": " + point.reason())
                            .toList());
        }
    }

    private void places() {
        List<String> meetings = PlaceGroups.shared(shared.shape().places().shared());
        if (!meetings.isEmpty()) {
            blocks.add(new Heading("What redundant feeds and returns share"));
            points(meetings);
        }
        List<String> hot = PlaceGroups.hotSide(shared.shape().places().hotSide());
        if (!hot.isEmpty()) {
            blocks.add(new Heading("Feeds on the hot side of the firewall"));
            points(hot);
            blocks.add(
                    new Note(
                            "Wiring is kept away from the side of exhaust and turbocharger where it"
                                    + " can be: common practice, with no published source."));
        }
    }

    private void disagreements() {
        blocks.add(new Heading("Where shape and story disagree"));
        if (shared.disagreements().isEmpty()) {
            blocks.add(new Words("Nowhere, part by part."));
            return;
        }
        points(shared.disagreements().stream().map(CauseSheet::disagreement).toList());
        long open = shared.disagreements().stream().filter(d -> !d.explained()).count();
        blocks.add(
                new Note(
                        open == 0
                                ? "Each goes away once what both openly treat differently is taken"
                                        + " away."
                                : open
                                        + " of them nothing explains: a fault of the model to look"
                                        + " at."));
    }

    private static String disagreement(Disagreement of) {
        String without = of.part().map(part -> "without " + part).orElse("with nothing removed");
        return without
                + " the shape "
                + (of.structureSays() ? "still supplies the engine" : "does not supply the engine")
                + ", but in its story it "
                + (of.storySays() ? "runs" : "does not run")
                + (of.explained()
                        ? ": "
                                + String.join(
                                        ", and ",
                                        of.because().stream().map(StoryOnlyFact::words).toList())
                        : ": NOT EXPLAINED; the shape says " + of.structureEvidence());
    }

    private void untold() {
        if (!shared.untold().isEmpty()) {
            blocks.add(new Heading("What could not be computed"));
            points(shared.untold());
        }
    }

    private void points(List<String> points) {
        int shown = all ? points.size() : Math.min(SHOWN, points.size());
        blocks.add(new Points(points.subList(0, shown)));
        more(points.size() - shown);
    }
}
