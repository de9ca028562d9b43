package stillturning.assess;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import stillturning.assess.Appraisal.Cases;
import stillturning.assess.Appraisal.Measures;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment.Unassessed;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.assess.requirement.BaselineParts;
import stillturning.assess.requirement.Evidence;
import stillturning.assess.requirement.Requirements;
import stillturning.assess.requirement.Restarts;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.assess.verdict.Verdict.Losses;
import stillturning.model.Burdens;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.StartAttempt;
import stillturning.story.Story.EngineFate;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Assesses a study in which numbers are others again, as far as the order and the requirements hang
 * on it: the loss of charging, the start and the burdens again; of the single failures, the drill
 * and the flight with nothing wrong those that are asked for. What numbers do not reach is taken
 * from before.
 */
final class Retelling {

    private final Assessment basis;

    Retelling(Assessment basis) {
        this.basis = basis;
    }

    /**
     * A study assessed again.
     *
     * @param assessment without a ranking
     * @param standings the order, without what becomes of it under other weights
     */
    record RetoldStudy(Assessment assessment, List<Standing> standings) {

        /** What was assessed in full. */
        static RetoldStudy of(Assessment whole) {
            return new RetoldStudy(
                    whole, whole.ranking().map(RankingResult::standings).orElse(List.of()));
        }
    }

    /**
     * The study assessed again.
     *
     * @param changed candidates that are not in it stay as they are
     * @param again whether a step of a candidate, by their names, is to be told again
     */
    RetoldStudy of(Study changed, BiPredicate<String, String> again) {
        Study whole = whole(changed);
        boolean surroundings = changed.aircraft().equals(basis.study().aircraft());
        List<Appraisal> appraisals = new ArrayList<>();
        List<Unassessed> unassessed = new ArrayList<>(basis.unassessed());
        for (Appraisal before : basis.appraisals()) {
            String id = before.candidate().id();
            Optional<Candidate> candidate =
                    changed.candidate(id)
                            .filter(c -> !surroundings || !c.equals(before.candidate()));
            try {
                appraisals.add(
                        candidate.isEmpty()
                                ? before
                                : retold(whole, candidate.get(), before, f -> again.test(id, f)));
            } catch (UntoldStory e) {
                unassessed.add(new Unassessed(id, String.valueOf(e.getMessage())));
            }
        }
        return new RetoldStudy(
                new Assessment(whole, appraisals, unassessed, Optional.empty()),
                appraisals.isEmpty()
                        ? List.of()
                        : StudyRanking.standings(
                                whole, appraisals, whole.goals().preferences().complexity()));
    }

    private Study whole(Study changed) {
        return new Study(
                changed.id(),
                changed.heading(),
                changed.aircraft(),
                changed.goals(),
                basis.study().candidates().stream()
                        .map(c -> changed.candidate(c.id()).orElse(c))
                        .toList());
    }

    /** Steps by name: those of failures, of the drill and of {@link NothingBroken#NOTHING}. */
    private interface Chosen {
        boolean has(String step);
    }

    private Appraisal retold(Study study, Candidate candidate, Appraisal before, Chosen again)
            throws UntoldStory {
        Timeline timeline = Timeline.quick(study, candidate);
        if (!timeline.normal().engineRuns()) {
            throw timeline.neverRan();
        }
        Judge judge = new Judge(study, timeline);
        Map<String, Failure> chosen = new HashMap<>();
        FailureCatalogue.singlesOf(candidate).stream()
                .filter(failure -> again.has(failure.name()))
                .forEach(failure -> chosen.put(failure.name(), failure));
        List<Verdict> singles =
                before.singles().parallelStream()
                        .map(
                                was ->
                                        Optional.ofNullable(chosen.get(was.failure().name()))
                                                .map(failure -> again(judge, was, failure))
                                                .orElse(was))
                        .toList();
        Verdict chargingLost =
                again(judge, before.chargingLost(), FailureCatalogue.chargingLost(candidate));
        OtherConditions trials = new OtherConditions(study, timeline);
        Cases was = before.cases();
        Cases cases =
                new Cases(
                        masterOff(candidate, judge, was, again),
                        chargingLost,
                        was.lasting(),
                        was.leftSwitches(),
                        starts(study, trials, was),
                        was.movesAudited());
        Measures measures = measures(study, candidate, before, singles, chargingLost);
        List<String> notRestarted = notRestarted(study, trials, before, chosen.values());
        Requirements requirements =
                new Requirements(
                        study,
                        new ToldBefore(study, candidate, singles, cases, measures, notRestarted));
        return new Appraisal(
                candidate,
                again.has(NothingBroken.NOTHING.name())
                        ? NothingBroken.inBrief(timeline)
                        : before.flight(),
                singles,
                cases,
                before.structure(),
                measures,
                study.goals().requirements().stream().map(requirements::check).toList());
    }

    /** What could not be told to its end with some pilot is told with every pilot again. */
    private static Verdict again(Judge judge, Verdict was, Failure failure) {
        return was.untold().isPresent() ? judge.typically(failure) : judge.inBrief(failure);
    }

    private static Optional<Verdict> masterOff(
            Candidate candidate, Judge judge, Cases was, Chosen again) {
        return was.masterOff()
                .map(
                        before ->
                                again.has(before.failure().name())
                                        ? FailureCatalogue.operatingCasesOf(candidate).stream()
                                                .findFirst()
                                                .map(drill -> again(judge, before, drill))
                                                .orElse(before)
                                        : before);
    }

    /** What was found again, and what was kept. */
    private final class ToldBefore implements Evidence {
        private final Study study;
        private final Candidate candidate;
        private final List<Verdict> singles;
        private final Cases cases;
        private final Measures measures;
        private final List<String> notRestarted;

        ToldBefore(
                Study study,
                Candidate candidate,
                List<Verdict> singles,
                Cases cases,
                Measures measures,
                List<String> notRestarted) {
            this.study = study;
            this.candidate = candidate;
            this.singles = singles;
            this.cases = cases;
            this.measures = measures;
            this.notRestarted = notRestarted;
        }

        @Override
        public List<Verdict> singles() {
            return singles;
        }

        @Override
        public Optional<Verdict> masterOff() {
            return cases.masterOff();
        }

        @Override
        public Verdict chargingLost() {
            return cases.chargingLost();
        }

        @Override
        public Burdens burdens() {
            return measures.burdens();
        }

        @Override
        public PilotBurden pilot() {
            return measures.pilot();
        }

        @Override
        public Optional<StartAttempt> coldStart() {
            return cases.coldStart();
        }

        @Override
        public Restarts restarts() {
            return Restarts.failing(notRestarted);
        }

        @Override
        public Optional<List<String>> departures() {
            return BaselineParts.departures(study, candidate);
        }

        @Override
        public Optional<RequirementMet> surveyed(Requirement requirement) {
            return basis.surveyed(requirement, candidate);
        }
    }

    private static List<StartAttempt> starts(Study study, OtherConditions trials, Cases was) {
        return study.goals().requirements().contains(new Requirement.StartsCold())
                ? trials.starts()
                : was.starts();
    }

    private static Measures measures(
            Study study,
            Candidate candidate,
            Appraisal before,
            List<Verdict> singles,
            Verdict chargingLost) {
        Burdens burdens = Burdens.of(candidate);
        Complexity complexity = before.measures().complexity();
        return new Measures(
                burdens,
                complexity,
                before.measures().pilot(),
                StudyRanking.values(study, singles, chargingLost, burdens, complexity));
    }

    private static List<String> notRestarted(
            Study study, OtherConditions trials, Appraisal before, Collection<Failure> again)
            throws UntoldStory {
        if (!study.goals().requirements().contains(new Requirement.RestartsInFlight())) {
            return List.of();
        }
        Set<String> chosen = new HashSet<>();
        again.forEach(failure -> chosen.add(failure.name()));
        List<String> names = new ArrayList<>(restartless(before));
        names.removeIf(chosen::contains);
        names.addAll(trials.restarts(List.copyOf(again)).failedAfter());
        return names;
    }

    private static List<String> restartless(Appraisal appraisal) {
        String words = new Requirement.RestartsInFlight().inWords();
        return appraisal.met().stream()
                .filter(met -> met.requirement().equals(words))
                .findFirst()
                .map(RequirementMet::culprits)
                .orElse(List.of());
    }

    /** Steps of a candidate, by name, that come out otherwise in a changed study. */
    Set<String> turned(Study changed, Candidate candidate) {
        Appraisal before = basis.of(candidate.id()).orElseThrow();
        try {
            return turned(before, retold(whole(changed), candidate, before, step -> true));
        } catch (UntoldStory e) {
            Set<String> all = new HashSet<>();
            before.singles().forEach(v -> all.add(v.failure().name()));
            before.masterOff().ifPresent(v -> all.add(v.failure().name()));
            all.add(NothingBroken.NOTHING.name());
            return all;
        }
    }

    /** Steps of a candidate, by name, that came out otherwise; all where it was not told again. */
    Set<String> turned(Appraisal before, Appraisal after) {
        Set<String> turned = new HashSet<>();
        for (int i = 0; i < before.singles().size(); i++) {
            turned(before.singles().get(i), after.singles().get(i)).ifPresent(turned::add);
        }
        before.masterOff()
                .flatMap(was -> after.masterOff().flatMap(is -> turned(was, is)))
                .ifPresent(turned::add);
        if (before.flight().unwell() != after.flight().unwell()) {
            turned.add(NothingBroken.NOTHING.name());
        }
        Set<String> one = new HashSet<>(restartless(before));
        Set<String> other = new HashSet<>(restartless(after));
        one.stream().filter(name -> !other.contains(name)).forEach(turned::add);
        other.stream().filter(name -> !one.contains(name)).forEach(turned::add);
        return turned;
    }

    private Optional<String> turned(Verdict was, Verdict is) {
        return ends(was).equals(ends(is)) ? Optional.empty() : Optional.of(was.failure().name());
    }

    /** What a requirement or a criterion can ask of a failure. */
    private List<Object> ends(Verdict verdict) {
        EngineFate engine = verdict.planned().engine();
        Outcome outcome = verdict.outcome();
        boolean harmless = outcome != Outcome.ENGINE_LOST && !outcome.needsPilot();
        Losses losses = verdict.losses();
        return List.of(
                harmless ? Optional.empty() : Optional.of(outcome),
                engine.stoppedAndCameBack(),
                verdict.untold().isPresent(),
                basis.study().goals().requirements().stream()
                        .map(r -> isPast(r, engine.longestInterruptionSeconds(), losses))
                        .toList());
    }

    private static boolean isPast(
            Requirement requirement, double interruptedSeconds, Losses losses) {
        return requirement.limitSeconds().orElse(Double.POSITIVE_INFINITY) <= interruptedSeconds
                || (requirement instanceof Requirement.NoSingleFailureDarkens lit
                        && (losses.engineLoads().contains(lit.load())
                                || losses.otherLoads().contains(lit.load())));
    }
}
