package stillturning.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import stillturning.assess.SheddingEndurances.WorstPlace;
import stillturning.assess.requirement.Restarts;
import stillturning.assess.requirement.StartMargin;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.PhaseVerdict;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Blocks;
import stillturning.story.Setting.Shedding;
import stillturning.story.StartAttempt;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** One candidate at other moments and under other circumstances than the usual ones. */
final class OtherConditions {

    private final Study study;
    private final Candidate candidate;
    private final Timeline usual;

    /**
     * @param usual the candidate where the study's failures happen
     */
    OtherConditions(Study study, Timeline usual) {
        this.study = study;
        this.candidate = usual.candidate();
        this.usual = usual;
    }

    /** Every moment at which failures are tried: just after a hard start, then phase by phase. */
    static List<Moment> moments(Study study) {
        List<Moment> moments = new ArrayList<>();
        for (Phase phase : study.aircraft().phases()) {
            if (!study.aircraft().isStarted(phase)) {
                if (moments.isEmpty()) {
                    moments.add(new Moment(phase.name(), FlightSpan.FLOWN, Batteries.TIRED));
                }
                moments.add(new Moment(phase.name(), FlightSpan.FLOWN, Batteries.AS_STATED));
            }
        }
        return moments;
    }

    static PhaseVerdicts byPhase(Study study, Candidate candidate, Failure failure) {
        List<PhaseVerdict> verdicts = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        for (Moment moment : moments(study)) {
            try {
                Timeline timeline = Timeline.quick(study, candidate, moment);
                verdicts.add(new PhaseVerdict(moment, new Judge(study, timeline).judge(failure)));
            } catch (UntoldStory e) {
                untold.add("nothing in " + moment.phase() + ", " + e.getMessage());
            }
        }
        return new PhaseVerdicts(candidate, failure, verdicts, untold);
    }

    /** On the ground, as stated and after a cold night with tired batteries. */
    List<StartAttempt> starts() {
        List<StartAttempt> starts = new ArrayList<>();
        Timeline.start(study, candidate, false).ifPresent(starts::add);
        Timeline.start(study, candidate, true).ifPresent(starts::add);
        return starts;
    }

    /**
     * A stopped engine started again in flight after single failures, the batteries charged as
     * stated but cold. The starter's own failures are the same in every candidate. Told quickly:
     * what minutes take out of a battery is then good to a few parts in 100,000.
     */
    Restarts restarts(List<Failure> failures) throws UntoldStory {
        if (failures.isEmpty()) {
            return Restarts.failing(List.of());
        }
        Study.Aircraft aircraft = study.aircraft();
        Study cold =
                new Study(
                        study.id(),
                        study.heading(),
                        aircraft.at(aircraft.engine().starting().coldCelsius()),
                        study.goals(),
                        study.candidates());
        Timeline timeline = usual.in(cold);
        List<Failure> asked = failures.stream().filter(f -> !ofTheStarterItself(f)).toList();
        Map<Failure, Optional<StartAttempt>> starts = new ConcurrentHashMap<>();
        timeline.alike(asked).parallelStream()
                .forEach(
                        same -> {
                            Optional<StartAttempt> start = restart(timeline, same.get(0));
                            same.forEach(failure -> starts.put(failure, start));
                        });
        List<Tried> tried =
                asked.stream()
                        .map(f -> new Tried(f, starts.getOrDefault(f, Optional.empty())))
                        .toList();
        return new Restarts(
                tried.stream().filter(t -> !t.runs()).map(t -> t.failure.name()).toList(),
                tried.stream()
                        .filter(Tried::runs)
                        .min(
                                Comparator.comparingDouble(this::spareVolts)
                                        .thenComparing(Tried::seconds, Comparator.reverseOrder()))
                        .flatMap(t -> t.start.map(s -> new Restarts.Hardest(t.failure.name(), s))));
    }

    /** One start after a failure; empty if it cannot be computed, which counts as the worse. */
    private record Tried(Failure failure, Optional<StartAttempt> start) {
        boolean runs() {
            return start.filter(StartAttempt::runs).isPresent();
        }

        double seconds() {
            return start.map(StartMargin::seconds).orElse(Double.POSITIVE_INFINITY);
        }
    }

    private static Optional<StartAttempt> restart(Timeline timeline, Failure failure) {
        try {
            return Optional.of(timeline.restart(failure));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private double spareVolts(Tried tried) {
        return tried.start
                .flatMap(start -> StartMargin.of(study.aircraft(), start))
                .map(StartMargin::spareVolts)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean ofTheStarterItself(Failure failure) {
        Optional<String> starter = study.aircraft().engine().starting().starter();
        return failure.hits().stream()
                .allMatch(
                        hit ->
                                starter.equals(Optional.of(hit.part()))
                                        && hit.mode().traits().whateverItsSupply());
    }

    List<LeftSwitch> leftSwitches() {
        List<Moment> moments = moments(study);
        if (moments.isEmpty()) {
            return List.of();
        }
        Moment first = new Moment(moments.get(0).phase(), FlightSpan.FLOWN, Batteries.AS_STATED);
        List<Misplaced> all = FailureCatalogue.omissionsOf(candidate);
        try {
            NormalFlight right = usual.at(first).normal();
            boolean starts = startsOf(candidate).orElse(false);
            return all.stream().map(misplaced -> left(misplaced, first, right, starts)).toList();
        } catch (UntoldStory e) {
            return all.stream().map(misplaced -> untold(misplaced, e)).toList();
        }
    }

    /** Whether the engine starts on the ground as stated; empty where the study has no starter. */
    private Optional<Boolean> startsOf(Candidate one) {
        return Timeline.start(study, one, false).map(StartAttempt::runs);
    }

    /**
     * @param starts whether the starter starts the engine with all switches right: with a switch
     *     wrong nobody overlooks that it does not
     */
    private LeftSwitch left(Misplaced misplaced, Moment first, NormalFlight right, boolean starts) {
        try {
            Candidate set = candidate.with(misplaced.positions());
            if (starts && !startsOf(set).orElse(true)) {
                return left(misplaced, false, List.of(), Optional.empty(), Optional.empty());
            }
            Timeline timeline = Timeline.quick(study, set, first);
            NormalFlight normal = timeline.normal();
            List<String> cues =
                    normal.cuesShowing().stream()
                            .filter(cue -> !right.cuesShowing().contains(cue))
                            .toList();
            Failure nothingElse = Failure.levers(misplaced.name(), Map.of());
            Optional<Verdict> verdict =
                    normal.engineRuns()
                            ? Optional.of(new Judge(study, timeline, right).judge(nothingElse))
                            : Optional.empty();
            return left(misplaced, normal.engineRuns(), cues, verdict, Optional.empty());
        } catch (UntoldStory e) {
            return untold(misplaced, e);
        }
    }

    private static LeftSwitch untold(Misplaced misplaced, UntoldStory why) {
        Optional<String> reason = Optional.of(String.valueOf(why.getMessage()));
        return left(misplaced, false, List.of(), Optional.empty(), reason);
    }

    private static LeftSwitch left(
            Misplaced misplaced,
            boolean runsAtRest,
            List<String> cues,
            Optional<Verdict> verdict,
            Optional<String> untold) {
        return new LeftSwitch(misplaced, runsAtRest, cues, verdict, untold);
    }

    SheddingEndurances lasting(Failure failure) throws UntoldStory {
        Setting written = Setting.with(Pilot.PLANNED);
        Endurance asWritten = endurance(failure, written);
        return new SheddingEndurances(
                endurance(failure, written.with(Shedding.NONE)),
                asWritten,
                new BestShedding(study, usual).of(failure, written, asWritten),
                worstPlaced(failure, asWritten));
    }

    private Optional<WorstPlace> worstPlaced(Failure failure, Endurance even) {
        double longest = longestDuty(usual.moment().phase());
        if (longest == 0 || !(even instanceof Endurance.Lasts lasts)) {
            return Optional.empty();
        }
        double whole = lasts.seconds();
        double block = longest * whole;
        WorstPlace atOnce = placed(failure, 0, whole);
        if (atOnce.endurance().seconds() <= block) {
            return Optional.of(atOnce);
        }
        WorstPlace late =
                WorstPlace.first(atOnce, whole, block, from -> placed(failure, from, whole));
        return Optional.of(
                late.endurance().seconds() < atOnce.endurance().seconds() ? late : atOnce);
    }

    /** Largest share of the time that a load runs which does not run all the time; 0 for none. */
    private double longestDuty(String phase) {
        return study.aircraft().loads().stream()
                .map(LoadNeed::use)
                .filter(use -> use.duty() < 1 && use.phases().contains(phase))
                .mapToDouble(LoadNeed.Use::duty)
                .max()
                .orElse(0);
    }

    private WorstPlace placed(Failure failure, double fromSeconds, double ofSeconds) {
        Setting setting = Setting.with(Pilot.PLANNED).with(new Blocks(fromSeconds, ofSeconds));
        return new WorstPlace(fromSeconds, endurance(failure, setting));
    }

    private Endurance endurance(Failure failure, Setting setting) {
        return usual.tellAsFar(failure, setting).engine().endurance();
    }
}
