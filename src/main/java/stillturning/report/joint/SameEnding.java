package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.report.OutcomeMark;
import stillturning.report.Spoken;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.story.StoryEvent;

/**
 * Single failures of a candidate that stop the engine by taking the same away from it, so that one
 * change mends them all: a second way to what stops, a guard against what destroys, another source
 * for what runs down. Thirty parts in one line are one finding, not thirty.
 *
 * @param outcome of each, the pilot as planned
 * @param loads that the engine loses at once; none where it first runs on
 * @param failures the most frequent first
 * @param perHour how often any of them happens, by the medians of their rates (1/h)
 */
public record SameEnding(
        Candidate candidate,
        Outcome outcome,
        By by,
        List<String> loads,
        List<Verdict> failures,
        double perHour) {

    /** How the table of them is to be read. */
    public static final List<String> NOTES =
            List.of(
                    "One change mends a row: a second way to feed what stops, a guard against too high a",
                    "voltage, another source for what runs down. How often: by the medians of rates, most of",
                    "them guesses.");

    private static final double HOUR_SECONDS = 3600;
    private static final int NAMED = 3;

    /** By what the engine stops. */
    public enum By {
        /** What it needs is fed no more. */
        SUPPLY,
        /** Too high a voltage destroys what it needs. */
        VOLTAGE,
        /** It runs on, on what is stored, until that is used up or the pilot has acted. */
        STORE
    }

    /** What a failure takes away. */
    private record Taken(Outcome outcome, By by, List<String> loads) {

        static Taken by(Verdict verdict) {
            List<String> loads = verdict.losses().engineLoads();
            By by = loads.isEmpty() ? By.STORE : destroys(verdict) ? By.VOLTAGE : By.SUPPLY;
            return new Taken(verdict.outcome(), by, loads.stream().sorted().toList());
        }

        private static boolean destroys(Verdict verdict) {
            return verdict.planned().of(StoryEvent.Kind.LOAD_DESTROYED).stream()
                    .anyMatch(event -> verdict.losses().engineLoads().contains(event.part()));
        }
    }

    public SameEnding {
        loads = List.copyOf(loads);
        failures = List.copyOf(failures);
    }

    /**
     * The worst outcome first, and of each outcome the most frequent: an engine that runs on for
     * too short to land is lost like one that stops at once.
     *
     * @param odds how often each of the candidate's failures happens
     */
    public static List<SameEnding> of(Appraisal appraisal, Odds odds) {
        Map<Taken, List<Verdict>> groups = new LinkedHashMap<>();
        for (Verdict verdict : appraisal.singles()) {
            boolean stops =
                    verdict.outcome() == Outcome.ENGINE_LOST || verdict.outcome().needsPilot();
            if (stops && !verdict.engineOwn()) {
                groups.computeIfAbsent(Taken.by(verdict), taken -> new ArrayList<>()).add(verdict);
            }
        }
        List<SameEnding> endings = new ArrayList<>();
        groups.forEach((taken, of) -> endings.add(of(appraisal.candidate(), taken, of, odds)));
        endings.sort(
                Comparator.comparing(SameEnding::outcome).thenComparingDouble(e -> -e.perHour));
        return List.copyOf(endings);
    }

    private static SameEnding of(Candidate candidate, Taken taken, List<Verdict> group, Odds odds) {
        List<Verdict> failures = new ArrayList<>(group);
        failures.sort(
                Comparator.comparingDouble((Verdict v) -> perHour(v, odds))
                        .reversed()
                        .thenComparing(v -> v.failure().name()));
        double perHour = group.stream().mapToDouble(v -> perHour(v, odds)).sum();
        return new SameEnding(candidate, taken.outcome, taken.by, taken.loads, failures, perHour);
    }

    private static double perHour(Verdict verdict, Odds odds) {
        return verdict.failure().hits().stream()
                .map(hit -> Optional.ofNullable(odds.rates().get(Mode.of(hit))))
                .flatMap(Optional::stream)
                .filter(rate -> rate.per() == Per.SECOND)
                .mapToDouble(Rate::median)
                .map(perSecond -> perSecond * HOUR_SECONDS)
                .sum();
    }

    /** Parts that fail, the most frequent first. */
    public List<String> parts() {
        return failures.stream()
                .flatMap(v -> v.failure().hits().stream())
                .map(Hit::part)
                .distinct()
                .toList();
    }

    /** What the engine is left without, in words. */
    public String inWords() {
        String lost = loads.isEmpty() ? "" : new Spoken(candidate).all(loads);
        return switch (by) {
            case SUPPLY -> lost;
            case VOLTAGE -> lost + ", destroyed by too high a voltage";
            case STORE -> "nothing at once; it runs on what is stored";
        };
    }

    private String partsInWords() {
        List<String> parts = parts();
        String named = String.join(", ", parts.subList(0, Math.min(NAMED, parts.size())));
        int left = parts.size() - NAMED;
        return left > 0 ? named + " and " + left + " more" : named;
    }

    /** Some of them, each candidate's together. */
    public static Table<SameEnding> table(List<SameEnding> endings) {
        return new Table<>(
                List.of(
                        Column.<SameEnding>words("candidate", 22, e -> e.candidate.title()).once(),
                        Column.<SameEnding>words("engine", 6, e -> OutcomeMark.of(e.outcome).code())
                                .ink(e -> OutcomeMark.of(e.outcome).ink()),
                        Column.words("is left without", 24, SameEnding::inWords),
                        Column.figures("failures", 8, e -> String.valueOf(e.failures.size())),
                        Column.words("any of them", 13, e -> ChanceWords.every(e.perHour, "h")),
                        Column.words("parts", 22, SameEnding::partsInWords)),
                endings);
    }
}
