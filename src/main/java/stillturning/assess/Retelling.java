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
import stillturning.assess.requirement.BaselineParts;
import stillturning.assess.requirement.Evidence;
import stillturning.assess.requirement.Requirements;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.StartAttempt;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Assesses a study in which numbers are others again, as far as the order and the requirements hang
 * on it: the operating cases, the start and the burdens anew, of the single failures those that are
 * asked for. What numbers do not reach is taken from before.
 */
final class Retelling {

    private final Assessment basis;

    Retelling(Assessment basis) {
        this.basis = basis;
    }

    /**
     * The study assessed again.
     *
     * @param changed candidates that are not in it stay as they are
     * @param again whether a failure of a candidate, by their names, is to be told again
     */
    Assessment of(Study changed, BiPredicate<String, String> again) {
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
        return new Assessment(
                whole,
                appraisals,
                unassessed,
                appraisals.isEmpty()
                        ? Optional.empty()
                        : Optional.of(StudyRanking.of(whole, appraisals)));
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

    /** Failures by name. */
    private interface Chosen {
        boolean has(String failure);
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
                before.singles().stream()
                        .map(
                                was ->
                                        Optional.ofNullable(chosen.get(was.failure().name()))
                                                .map(judge::typically)
                                                .orElse(was))
                        .toList();
        Optional<Verdict> masterOff =
                FailureCatalogue.operatingCasesOf(candidate).stream()
                        .findFirst()
                        .map(judge::typically);
        Verdict chargingLost = judge.typically(FailureCatalogue.chargingLost(candidate));
        OtherConditions trials = new OtherConditions(study, candidate);
        Cases was = before.cases();
        Cases cases =
                new Cases(
                        masterOff,
                        chargingLost,
                        was.lasting(),
                        was.leftSwitches(),
                        starts(study, trials, was),
                        was.harmfulMoves());
        Measures measures = measures(study, candidate, before, singles, chargingLost);
        List<String> notRestarted = notRestarted(study, trials, before, chosen.values());
        Requirements requirements =
                new Requirements(
                        study.goals(),
                        new Found(study, candidate, singles, cases, measures, notRestarted));
        return new Appraisal(
                candidate,
                NothingBroken.of(study, candidate, timeline),
                singles,
                cases,
                before.structure(),
                measures,
                study.goals().requirements().stream().map(requirements::check).toList());
    }

    /** What was found again, and what was kept. */
    private final class Found implements Evidence {
        private final Study study;
        private final Candidate candidate;
        private final List<Verdict> singles;
        private final Cases cases;
        private final Measures measures;
        private final List<String> notRestarted;

        Found(
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
        public List<String> notRestartedAfter() {
            return notRestarted;
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
        names.addAll(trials.notRestartedAfter(List.copyOf(again)));
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

    /** Failures of a candidate, by name, that end otherwise in a changed study. */
    Set<String> turned(Study changed, Candidate candidate) {
        Appraisal before = basis.of(candidate.id()).orElseThrow();
        Set<String> turned = new HashSet<>();
        try {
            Appraisal after = retold(whole(changed), candidate, before, failure -> true);
            for (int i = 0; i < before.singles().size(); i++) {
                Verdict was = before.singles().get(i);
                if (!ends(was).equals(ends(after.singles().get(i)))) {
                    turned.add(was.failure().name());
                }
            }
            Set<String> one = new HashSet<>(restartless(before));
            Set<String> other = new HashSet<>(restartless(after));
            one.stream().filter(name -> !other.contains(name)).forEach(turned::add);
            other.stream().filter(name -> !one.contains(name)).forEach(turned::add);
        } catch (UntoldStory e) {
            before.singles().forEach(v -> turned.add(v.failure().name()));
        }
        return turned;
    }

    /** What a requirement or a criterion can ask of a failure. */
    private List<Object> ends(Verdict verdict) {
        double interrupted = verdict.planned().engine().longestInterruptionSeconds();
        return List.of(
                verdict.outcome(),
                verdict.losses().engineLoads(),
                verdict.losses().otherLoads(),
                basis.study().goals().requirements().stream()
                        .map(r -> r.limitSeconds().orElse(Double.POSITIVE_INFINITY) <= interrupted)
                        .toList());
    }
}
