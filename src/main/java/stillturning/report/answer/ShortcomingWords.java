package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.reliability.runup.Card;
import stillturning.report.MissingWarnings;
import stillturning.report.NormalFlightTexts;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.result.Rule.Gravity;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;

/** What the first candidate still breaks or cannot do, worst first. */
final class ShortcomingWords {

    private static final int NAMED = 3;

    /** What says why an engine does not start. */
    private static final Set<StoryEvent.Kind> TELLING =
            Set.of(
                    StoryEvent.Kind.BATTERY_DISCONNECTS,
                    StoryEvent.Kind.PROTECTOR_OPENS,
                    StoryEvent.Kind.CRANKING_FAILS);

    private final Appraisal leader;
    private final Optional<SizingReport> sizes;
    private final Optional<Card> runUp;

    /**
     * @param runUp the checks that it needs before each flight, if that was asked
     */
    ShortcomingWords(Appraisal leader, Optional<SizingReport> sizes, Optional<Card> runUp) {
        this.leader = leader;
        this.sizes = sizes;
        this.runUp = runUp;
    }

    /** What is wrong with nothing broken, then what single failures do, then what is missing. */
    List<String> worstFirst() {
        List<String> found = new ArrayList<>();
        List<String> unwell = NormalFlightTexts.findings(leader.flight());
        if (!unwell.isEmpty()) {
            found.add("With nothing wrong: " + unwell.get(0));
        }
        failures(Outcome.ENGINE_LOST, " lose the engine").ifPresent(found::add);
        leader.cases().coldStart().filter(s -> !s.runs()).map(this::cold).ifPresent(found::add);
        sizes.map(this::limits).filter(s -> !s.isEmpty()).ifPresent(found::add);
        untold().ifPresent(found::add);
        needsPilot().ifPresent(found::add);
        runUp.flatMap(ShortcomingWords::checks).ifPresent(found::add);
        warnings().ifPresent(found::add);
        if (found.isEmpty()) {
            found.add(
                    "Nothing was found: no single failure loses the engine or needs the pilot, no"
                            + " limit is broken with nothing wrong.");
        }
        return found;
    }

    private Optional<String> failures(Outcome outcome, String words) {
        return named(leader.with(outcome)).map(n -> ofAll(leader.with(outcome).size()) + words + n);
    }

    private String ofAll(int some) {
        long all = leader.singles().stream().filter(v -> !v.engineOwn()).count();
        return some + " of " + all + " single failures";
    }

    private static Optional<String> named(List<Verdict> verdicts) {
        return verdicts.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        ": " + listed(verdicts.stream().map(v -> v.failure().name()).toList()));
    }

    private static String listed(List<String> all) {
        int left = all.size() - NAMED;
        return String.join("; ", all.subList(0, Math.min(NAMED, all.size())))
                + (left > 0 ? "; and " + left + " more" : "")
                + ".";
    }

    private String cold(StartAttempt start) {
        String lowest =
                start.lowestVolts().entrySet().stream()
                        .min(Map.Entry.comparingByValue())
                        .map(e -> ": " + Formats.fixed(e.getValue(), 1) + " V at " + e.getKey())
                        .orElse("");
        String why =
                start.untold()
                        .or(
                                () ->
                                        start.happenings().stream()
                                                .filter(h -> TELLING.contains(h.kind()))
                                                .map(h -> h.part() + " " + h.words())
                                                .findFirst())
                        .map(words -> ": " + words)
                        .orElse(lowest);
        return "It does not start in the cold with tired batteries" + why + ".";
    }

    /** Limits broken with nothing wrong, the gravest named. */
    private String limits(SizingReport report) {
        List<SizeFinding> wrong =
                report.findings().stream()
                        .filter(f -> f.rule().gravity() == Gravity.WRONG)
                        .toList();
        if (wrong.isEmpty()) {
            return "";
        }
        SizeFinding gravest = wrong.get(0);
        List<String> others =
                wrong.stream()
                        .map(f -> FindingWords.about(report, f))
                        .distinct()
                        .filter(part -> !part.equals(FindingWords.about(report, gravest)))
                        .toList();
        return wrong.size()
                + (wrong.size() == 1 ? " size limit is" : " size limits are")
                + " broken with nothing wrong: "
                + FindingWords.about(report, gravest)
                + " "
                + FindingWords.wrong(gravest)
                + (others.isEmpty() ? "." : "; also at " + listed(others));
    }

    private Optional<String> untold() {
        List<Verdict> untold = leader.untold();
        return named(untold)
                .map(n -> untold.size() + " cannot be computed, and count as engine lost" + n);
    }

    private Optional<String> needsPilot() {
        List<Verdict> needing =
                leader.singles().stream()
                        .filter(v -> !v.engineOwn() && v.outcome().needsPilot())
                        .toList();
        return named(needing).map(n -> ofAll(needing.size()) + " need the pilot in time" + n);
    }

    /** What has to be done before each flight because nobody sees it in flight. */
    private static Optional<String> checks(Card card) {
        int matter = card.thatMatter().size();
        if (matter == 0) {
            return Optional.empty();
        }
        int checks = card.checks().size();
        int hidden = card.hidden().size() + card.unconfirmed().size();
        return Optional.of(
                "It needs "
                        + checks
                        + (checks == 1 ? " check" : " checks")
                        + " before each flight: "
                        + matter
                        + (matter == 1 ? " failure" : " failures")
                        + " that nobody sees in flight"
                        + (matter == 1 ? " ends" : " end")
                        + " the engine with one more; "
                        + (hidden == 0 ? "the checks show all." : hidden + " no check shows."));
    }

    private Optional<String> warnings() {
        List<MissingWarnings.MissingWarning> missing = MissingWarnings.of(leader);
        return missing.stream()
                .findFirst()
                .map(
                        m ->
                                missing.size()
                                        + (missing.size() == 1
                                                ? " warning is missing: "
                                                : " warnings are missing: ")
                                        + m.warning()
                                        + ".");
    }
}
