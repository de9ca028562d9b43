package stillturning.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import stillturning.assess.Assessment.Unassessed;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.crosscheck.CrossCheck;
import stillturning.assess.crosscheck.SecondOpinion;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Sense;
import stillturning.assess.requirement.BaselineParts;
import stillturning.assess.requirement.Survey;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.Study.Weight;
import stillturning.model.failure.Failure;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.Preferences;
import stillturning.story.Moment;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Assesses studies: tells every failure of every candidate, judges, weighs and ranks. */
public final class Assess {

    private Assess() {}

    /** Assesses every candidate of a study. The result does not depend on the number of threads. */
    public static Assessment of(Study study) {
        return of(study, done -> {});
    }

    /**
     * Assesses every candidate of a study.
     *
     * @param progress told the name of each candidate when it is done, from any thread
     */
    public static Assessment of(Study study, Consumer<String> progress) {
        return of(study, Survey.NONE, progress);
    }

    /**
     * Assesses every candidate of a study.
     *
     * @param survey looks at what this room does not know
     * @param progress told the name of each candidate when it is done, from any thread
     */
    public static Assessment of(Study study, Survey survey, Consumer<String> progress) {
        return assessment(study, candidate -> appraise(study, candidate, survey, progress));
    }

    /**
     * Tries each guess along its range, and says which of them change the leader, a requirement's
     * verdict or the leader's endurance, how likely and from where on. The result does not depend
     * on the number of threads.
     *
     * @param basis the study as it is
     * @param progress told the name of a guess after the trial of each of its ends, from any thread
     */
    public static Guesses guesses(Assessment basis, Doubts doubts, Consumer<String> progress) {
        return new GuessTrials(basis).all(doubts, progress);
    }

    /**
     * The same assessment with other weights, which nothing but the order depends on. Quick enough
     * to follow a slider.
     *
     * @param weights one for each criterion that the study counts, in its order
     * @throws IllegalArgumentException if they are of other criteria, or all are 0
     */
    public static Assessment reranked(Assessment basis, List<Weight> weights) {
        Study study = basis.study();
        List<CriterionName> counted = criteria(study.goals().weights());
        if (!criteria(weights).equals(counted)) {
            throw new IllegalArgumentException(
                    "weights of %s for criteria %s".formatted(criteria(weights), counted));
        }
        Optional<RankingResult> ranking =
                basis.ranking()
                        .map(
                                r ->
                                        Ranking.reweighted(
                                                r, weights.stream().map(Weight::weight).toList()));
        return new Assessment(
                study.with(study.goals().preferences().weighed(weights)),
                basis.appraisals(),
                basis.unassessed(),
                ranking);
    }

    private static List<CriterionName> criteria(List<Weight> weights) {
        return weights.stream().map(Weight::criterion).toList();
    }

    /**
     * The same assessment with other preferences, scales too, which nothing but the order depends
     * on.
     */
    public static Assessment preferring(Assessment basis, Preferences preferences) {
        return ranked(basis.study().with(preferences), basis.appraisals(), basis.unassessed());
    }

    /** Assesses a study that was changed; what the change does not reach is taken from before. */
    static Assessment again(Study changed, Assessment before) {
        return again(changed, before, done -> {});
    }

    /**
     * Assesses a study that was changed; what the change does not reach is taken from before.
     *
     * @param progress told the name of each candidate that had to be assessed again, when it is
     *     done, from any thread; what it throws ends the work
     */
    public static Assessment again(Study changed, Assessment before, Consumer<String> progress) {
        return again(changed, before, before::surveyed, progress);
    }

    /**
     * The same, where somebody looks again at what this room does not know.
     *
     * @param survey asked for every candidate that has to be assessed again
     */
    public static Assessment again(
            Study changed, Assessment before, Survey survey, Consumer<String> progress) {
        boolean surroundings =
                BaselineParts.baseline(changed).equals(BaselineParts.baseline(before.study()))
                        && changed.aircraft().equals(before.study().aircraft())
                        && asked(changed.goals()).equals(asked(before.study().goals()));
        return assessment(
                changed,
                candidate ->
                        before.of(candidate.id())
                                .filter(a -> surroundings && a.candidate().equals(candidate))
                                .map(a -> new Result(Optional.of(a), Optional.empty()))
                                .orElseGet(() -> appraise(changed, candidate, survey, progress)));
    }

    /** Goals as far as they reach into an appraisal. */
    private static Study.Goals asked(Study.Goals goals) {
        return new Study.Goals(
                goals.failurePhase(),
                goals.enoughSeconds(),
                goals.requirements(),
                goals.preferences().weighed(List.of()).scaled(List.of()).knowing(List.of()),
                Optional.empty(),
                List.of(),
                goals.runUp(),
                goals.countsFrom());
    }

    private static Assessment assessment(Study study, Function<Candidate, Result> appraising) {
        List<Result> results = study.candidates().parallelStream().map(appraising).toList();
        List<Appraisal> appraisals = new ArrayList<>();
        List<Unassessed> unassessed = new ArrayList<>();
        for (Result result : results) {
            result.appraisal.ifPresent(appraisals::add);
            result.unassessed.ifPresent(unassessed::add);
        }
        return ranked(study, appraisals, unassessed);
    }

    private static Assessment ranked(
            Study study, List<Appraisal> appraisals, List<Unassessed> unassessed) {
        Optional<RankingResult> ranking =
                appraisals.isEmpty()
                        ? Optional.empty()
                        : Optional.of(StudyRanking.of(study, appraisals));
        return new Assessment(study, appraisals, unassessed, ranking);
    }

    /**
     * One failure of one candidate in the phase in which the study's failures happen.
     *
     * @throws UntoldStory if the candidate has no steady state there with nothing wrong
     */
    public static Verdict one(Study study, Candidate candidate, Failure failure)
            throws UntoldStory {
        return one(study, candidate, failure, Moment.heldIn(study.goals().failurePhase().name()));
    }

    /**
     * One failure of one candidate at a moment of the flight.
     *
     * @throws UntoldStory if the candidate has no steady state there with nothing wrong
     * @throws IllegalArgumentException if the study has no such phase
     */
    public static Verdict one(Study study, Candidate candidate, Failure failure, Moment moment)
            throws UntoldStory {
        return new Judge(study, Timeline.quick(study, candidate, moment)).judge(failure);
    }

    /**
     * What a study's cases do to a candidate.
     *
     * @param meant the failures that each case means there, in the study's order
     */
    public static CandidateCases cases(
            Study study, Candidate candidate, Map<String, List<Failure>> meant) {
        try {
            Judge judge = new Judge(study, Timeline.quick(study, candidate));
            return CandidateCases.of(candidate, meant, judge::judge);
        } catch (UntoldStory e) {
            return CandidateCases.of(
                    candidate,
                    meant,
                    failure -> {
                        throw e;
                    });
        }
    }

    /**
     * A candidate with nothing wrong.
     *
     * @throws UntoldStory if it has no steady state
     */
    public static NothingBroken undisturbed(Study study, Candidate candidate) throws UntoldStory {
        return NothingBroken.of(study, candidate, Timeline.quick(study, candidate));
    }

    /** One failure at every moment of the flight: just after a hard start, then phase by phase. */
    public static PhaseVerdicts byPhase(Study study, Candidate candidate, Failure failure) {
        return OtherConditions.byPhase(study, candidate, failure);
    }

    /**
     * Single failures that do worse at another moment of the flight than where the study tries
     * them, by candidate, worst first. The result does not depend on the number of threads.
     *
     * @param basis the study assessed
     * @param progress told the name of a candidate after each of its moments, from any thread
     */
    public static Elsewhere elsewhere(Assessment basis, Consumer<String> progress) {
        return new EveryPhase(basis).all(progress);
    }

    /**
     * Parts of a candidate without which its shape and its stories say different things of the
     * engine, in the candidate's order. The result does not depend on the number of threads.
     *
     * @throws UntoldStory if there is no story with nothing removed
     */
    public static SecondOpinion secondOpinion(Study study, Candidate candidate) throws UntoldStory {
        return new CrossCheck(study, candidate).all();
    }

    /** Every moment at which {@link #byPhase} tries a failure, in the order of the flight. */
    public static List<Moment> moments(Study study) {
        return OtherConditions.moments(study);
    }

    /**
     * How long the engine runs after one failure, by what is switched off.
     *
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static SheddingEndurances lasting(Study study, Candidate candidate, Failure failure)
            throws UntoldStory {
        return new OtherConditions(study, Timeline.quick(study, candidate)).lasting(failure);
    }

    /** The drill that takes all power off, if its moves do less harm in another order. */
    public static Optional<HarmfulMoves> harmfulDrill(Study study, Candidate candidate) {
        return new MoveAudit(study, candidate).drill();
    }

    private record Result(Optional<Appraisal> appraisal, Optional<Unassessed> unassessed) {}

    private static Result appraise(
            Study study, Candidate candidate, Survey survey, Consumer<String> progress) {
        try {
            Appraisal appraisal = Scrutiny.of(study, candidate, survey).appraisal();
            progress.accept(candidate.id());
            return new Result(Optional.of(appraisal), Optional.empty());
        } catch (UntoldStory e) {
            progress.accept(candidate.id());
            return new Result(
                    Optional.empty(),
                    Optional.of(new Unassessed(candidate.id(), String.valueOf(e.getMessage()))));
        }
    }

    /** Which end of a criterion is the good one. */
    public static Sense sense(CriterionName criterion) {
        return criterion.moreIsBetter() ? Sense.MORE_IS_BETTER : Sense.LESS_IS_BETTER;
    }
}
