package stillturning.assess.requirement;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.PilotBurden;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.ToleranceOutcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;

/** Holds a candidate's verdicts against the hard requirements. */
public final class Requirements implements Requirement.Visitor<RequirementMet> {

    /** Longer nobody is at it. */
    private static final double DRILL_SECONDS = 60;

    private static final double SECONDS_PER_MINUTE = 60;

    private final Study.Aircraft aircraft;
    private final Study.Goals goals;
    private final Evidence evidence;

    /**
     * @param evidence asked only for what a requirement needs
     */
    public Requirements(Study study, Evidence evidence) {
        this.aircraft = study.aircraft();
        this.goals = study.goals();
        this.evidence = evidence;
    }

    /** Failures that are held against a candidate. */
    private List<Verdict> singles() {
        return evidence.singles().stream().filter(v -> !v.engineOwn()).toList();
    }

    /** What a requirement comes to. */
    public RequirementMet check(Requirement requirement) {
        return requirement.accept(this);
    }

    @Override
    public RequirementMet visit(Requirement.NoSingleFailureStopsEngine requirement) {
        double shortest = singles().stream().mapToDouble(this::lasts).min().orElse(0);
        RequirementMet found =
                noneOf(requirement, singles(), v -> v.outcome() == Outcome.ENGINE_LOST, "do");
        return found.within(shortestRun(shortest) + (found.met() ? "; " + nearest(singles()) : ""));
    }

    /** How near the engine came to a stop by what it needs being missing. */
    private String nearest(List<Verdict> of) {
        double tolerated = aircraft.engine().toleratedSeconds();
        return longest(of)
                .map(
                        v ->
                                "what it needs is missing for at most "
                                        + Margins.milliseconds(interruption(v))
                                        + " ("
                                        + v.failure().name()
                                        + "), and it stops after "
                                        + Margins.milliseconds(tolerated))
                .orElseGet(
                        () ->
                                "what it needs is never missing; it would stop after "
                                        + Margins.milliseconds(tolerated));
    }

    /** The failure that interrupts most of those that interrupt at all. */
    private static Optional<Verdict> longest(List<Verdict> of) {
        return of.stream()
                .filter(v -> interruption(v) > 0)
                .max(Comparator.comparingDouble(Requirements::interruption));
    }

    private static double interruption(Verdict verdict) {
        return verdict.planned().engine().longestInterruptionSeconds();
    }

    private String shortestRun(double seconds) {
        String margin = Margins.time(seconds, goals.enoughSeconds());
        return Double.isInfinite(seconds)
                ? "after each it runs " + inWords(seconds)
                : "the shortest run after one is " + Formats.lasting(seconds) + ", " + margin;
    }

    @Override
    public RequirementMet visit(Requirement.EnduranceWithoutCharging requirement) {
        Verdict lost = evidence.chargingLost();
        double seconds = lasts(lost);
        boolean met = seconds >= requirement.seconds() && lost.untold().isEmpty();
        String from =
                Double.isInfinite(seconds) ? "" : ", counted from " + goals.countsFrom().words();
        String runs = "it runs on for " + inWords(seconds) + from;
        return met(requirement, met, untold(lost).orElse(runs))
                .within(Margins.time(seconds, requirement.seconds()));
    }

    @Override
    public RequirementMet visit(Requirement.InterruptionBelow requirement) {
        double seconds = requirement.seconds();
        RequirementMet found =
                noneOf(requirement, singles(), v -> interrupts(v, seconds), "do, or stop it");
        if (!found.met()) {
            return found;
        }
        return longest(singles())
                .map(
                        v ->
                                found.within(
                                        "the longest is "
                                                + Margins.milliseconds(interruption(v))
                                                + " ("
                                                + v.failure().name()
                                                + "), "
                                                + Margins.interruption(interruption(v), seconds)))
                .orElseGet(
                        () ->
                                found.within(
                                        "the longest is 0 ms, "
                                                + Margins.interruption(0, seconds)));
    }

    @Override
    public RequirementMet visit(Requirement.RestartsInFlight requirement) {
        Restarts restarts = evidence.restarts();
        List<String> names = restarts.failedAfter();
        String reason =
                names.isEmpty()
                        ? "it can after each of " + singles().size()
                        : "it cannot after " + names.size() + " of " + singles().size();
        return new RequirementMet(requirement.inWords(), names.isEmpty(), reason, names)
                .within(
                        names.isEmpty()
                                ? restarts.hardest().map(this::hardest).orElse("")
                                : Margins.none(names.size()));
    }

    /** Where no starter turns, the slowest is the hardest. */
    private String hardest(Restarts.Hardest hardest) {
        String seconds = Formats.duration(StartMargin.seconds(hardest.start()));
        return StartMargin.of(aircraft, hardest.start())
                .map(
                        margin ->
                                "the hardest start ("
                                        + hardest.failure()
                                        + ") takes "
                                        + seconds
                                        + ", "
                                        + margin.words())
                .orElse("none takes longer than " + seconds + " (" + hardest.failure() + ")");
    }

    @Override
    public RequirementMet visit(Requirement.StartsCold requirement) {
        Optional<StartAttempt> cold = evidence.coldStart();
        return met(
                        requirement,
                        cold.filter(StartAttempt::runs).isPresent(),
                        cold.map(start -> start.conditions() + ": " + started(start))
                                .orElse("the study has no starter"))
                .within(
                        cold.flatMap(start -> StartMargin.of(aircraft, start))
                                .map(StartMargin::words)
                                .orElse(""));
    }

    private static String started(StartAttempt start) {
        return start.runs()
                ? "it runs after " + Formats.duration(start.seconds())
                : start.happenings().stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.CRANKING_FAILS)
                        .findFirst()
                        .map(h -> "it " + h.words())
                        .orElse("nothing turns it");
    }

    @Override
    public RequirementMet visit(Requirement.WeightAtMost requirement) {
        double kilograms = evidence.burdens().kilograms();
        return met(
                        requirement,
                        kilograms <= requirement.kilograms(),
                        String.format(Locale.ROOT, "it weighs %.1f kg", kilograms))
                .within(Margins.most(kilograms, requirement.kilograms(), 1, "kg"));
    }

    @Override
    public RequirementMet visit(Requirement.CostAtMost requirement) {
        double price = evidence.burdens().price();
        return met(
                        requirement,
                        price <= requirement.price(),
                        String.format(Locale.ROOT, "it costs %.0f", price))
                .within(Margins.most(price, requirement.price(), 0, requirement.currency()));
    }

    @Override
    public RequirementMet visit(Requirement.ActsAtMost requirement) {
        List<PilotBurden.Task> tasks = evidence.pilot().tasks();
        int most = tasks.stream().mapToInt(t -> t.acts().size()).max().orElse(0);
        List<String> beyond =
                tasks.stream()
                        .filter(t -> t.acts().size() > requirement.acts())
                        .map(t -> t.name() + " (" + t.acts().size() + ")")
                        .toList();
        return met(
                        requirement,
                        beyond.isEmpty(),
                        "the longest asks for " + most + Margins.named(beyond))
                .within(Margins.most(most, requirement.acts(), 0, "of them"));
    }

    @Override
    public RequirementMet visit(Requirement.DeparturesAtMost requirement) {
        if (evidence.departures().isEmpty()) {
            return met(requirement, false, "the baseline is not among the candidates");
        }
        List<String> departures = evidence.departures().get();
        boolean met = departures.size() <= requirement.departures();
        return met(
                        requirement,
                        met,
                        departures.size() + " are" + Margins.named(met ? List.of() : departures))
                .within(Margins.most(departures.size(), requirement.departures(), 0, "of them"));
    }

    /** What the load is supplied with, not the load: its own failures are alike in all. */
    @Override
    public RequirementMet visit(Requirement.NoSingleFailureDarkens requirement) {
        String load = requirement.load();
        List<Verdict> others =
                singles().stream()
                        .filter(
                                v ->
                                        v.failure().hits().stream()
                                                .noneMatch(h -> h.part().equals(load)))
                        .toList();
        RequirementMet found = noneOf(requirement, others, v -> darkens(v, load), "do");
        return found.met() ? found.within(longestDark(others, load)) : found;
    }

    private static String longestDark(List<Verdict> of, String load) {
        return of.stream()
                .filter(v -> DarkSpells.longestSeconds(v.planned(), load) > 0)
                .max(Comparator.comparingDouble(v -> DarkSpells.longestSeconds(v.planned(), load)))
                .map(
                        v ->
                                "it is dark for at most "
                                        + Formats.duration(
                                                DarkSpells.longestSeconds(v.planned(), load))
                                        + " ("
                                        + v.failure().name()
                                        + ")")
                .orElse("it is dark for 0 s");
    }

    /** What cannot be told to its end counts as dark. */
    private static boolean darkens(Verdict verdict, String load) {
        return verdict.untold().isPresent()
                || verdict.losses().otherLoads().contains(load)
                || verdict.losses().engineLoads().contains(load);
    }

    @Override
    public RequirementMet visit(Requirement.NoSizeLimitBroken requirement) {
        return surveyed(requirement);
    }

    @Override
    public RequirementMet visit(Requirement.ArmBetween requirement) {
        return surveyed(requirement);
    }

    @Override
    public RequirementMet visit(Requirement.NoLatentPair requirement) {
        return surveyed(requirement);
    }

    private RequirementMet surveyed(Requirement requirement) {
        return evidence.surveyed(requirement)
                .orElseGet(() -> met(requirement, false, "not looked at, so it counts as missed"));
    }

    @Override
    public RequirementMet visit(Requirement.RunsWithMasterOff requirement) {
        Optional<Verdict> masterOff = evidence.masterOff();
        if (masterOff.isEmpty()) {
            return met(requirement, false, "it has no master-off positions to try");
        }
        Verdict drill = masterOff.get();
        boolean runs = drill.outcome().compareTo(Outcome.STOPS_UNTIL_PILOT_ACTS) > 0;
        return met(
                        requirement,
                        runs,
                        runs
                                ? "it runs on for " + inWords(lasts(drill)) + leftAlive(drill)
                                : untold(drill).orElseGet(() -> stopped(drill)))
                .within(
                        Double.isInfinite(lasts(drill))
                                ? nearest(List.of(drill))
                                : Margins.time(lasts(drill), goals.enoughSeconds()));
    }

    /**
     * A drill that parts nothing passes for one under which the engine runs on. Where the aircraft
     * has no other loads there is nothing to part.
     */
    private String leftAlive(Verdict drill) {
        List<String> engine = aircraft.engine().logic().loads();
        boolean others =
                aircraft.loads().stream()
                        .filter(load -> load.use().phases().contains(goals.failurePhase().name()))
                        .anyMatch(load -> !engine.contains(load.id()));
        boolean parts =
                !others
                        || drill.planned().of(StoryEvent.Kind.LOAD_STOPS).stream()
                                .anyMatch(stops -> stops.seconds() < DRILL_SECONDS);
        return parts ? "" : "; but it takes power from no load, so not from what smokes";
    }

    private String stopped(Verdict drill) {
        return "the drill \"" + drill.failure().name() + "\" stops it";
    }

    private double lasts(Verdict verdict) {
        return verdict.planned().engine().lastsFrom(goals.countsFrom());
    }

    private RequirementMet noneOf(
            Requirement requirement, List<Verdict> of, Predicate<Verdict> bad, String words) {
        List<String> names =
                of.stream()
                        .filter(bad)
                        .sorted(Comparator.comparingDouble(Requirements::minutesLeft))
                        .map(v -> v.failure().name())
                        .toList();
        List<String> doubtful =
                of.stream()
                        .filter(bad.negate())
                        .filter(v -> v.inBand().map(ToleranceOutcome::then).filter(bad).isPresent())
                        .map(v -> v.failure().name())
                        .toList();
        String may = " may by the tolerance of protectors";
        if (names.isEmpty()) {
            String doubt = doubtful.isEmpty() ? "" : "; " + doubtful.size() + may;
            String reason = "none of " + of.size() + " does" + doubt;
            return new RequirementMet(requirement.inWords(), true, reason, doubtful)
                    .within(doubtful.isEmpty() ? "nor may any by the tolerance of protectors" : "");
        }
        String doubt = doubtful.isEmpty() ? "" : ", and " + doubtful.size() + " more" + may;
        long untold = of.stream().filter(bad).filter(v -> v.untold().isPresent()).count();
        String so = untold == 0 ? "" : ", " + untold + " of them because it cannot be computed";
        String reason = names.size() + " of " + of.size() + " " + words + so + doubt;
        return new RequirementMet(requirement.inWords(), false, reason, names)
                .within(Margins.none(names.size()));
    }

    /** Whole minutes from the failure until the engine stops for good. */
    private static double minutesLeft(Verdict verdict) {
        return Math.floor(verdict.planned().engine().endurance().seconds() / SECONDS_PER_MINUTE);
    }

    private static Optional<String> untold(Verdict verdict) {
        return verdict.untold().map(why -> "it counts as stopping: cannot be computed, " + why);
    }

    private static String inWords(double seconds) {
        return Double.isInfinite(seconds)
                ? "as long as the rest of the aircraft"
                : Formats.lasting(seconds);
    }

    private static boolean interrupts(Verdict verdict, double seconds) {
        return verdict.planned().engine().longestInterruptionSeconds() >= seconds
                || verdict.outcome().compareTo(Outcome.STOPS_UNTIL_PILOT_ACTS) <= 0
                || verdict.planned().engine().stoppedAndCameBack();
    }

    private static RequirementMet met(Requirement requirement, boolean met, String reason) {
        return new RequirementMet(requirement.inWords(), met, reason, List.of());
    }
}
