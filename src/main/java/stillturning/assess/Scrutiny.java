package stillturning.assess;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Appraisal.Cases;
import stillturning.assess.Appraisal.Measures;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.requirement.BaselineParts;
import stillturning.assess.requirement.Effort;
import stillturning.assess.requirement.Evidence;
import stillturning.assess.requirement.Requirements;
import stillturning.assess.requirement.Restarts;
import stillturning.assess.requirement.SomeFailures;
import stillturning.assess.requirement.Survey;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Lazy;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.goal.CriterionName;
import stillturning.story.NormalFlight;
import stillturning.story.StartAttempt;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.structure.Structure;
import stillturning.structure.StructureFindings;

/**
 * One candidate looked at as far as somebody wants to know it; what was told once is not told
 * again. For one thread, which may use others.
 */
public final class Scrutiny implements Evidence {

    /** So many failures that come nearest to a limit are worth asking first of what is alike. */
    private static final int NEAREST = 6;

    /** So many failures are told before it is seen whether one breaks something. */
    private static final int AT_ONCE = 24;

    private final Study study;
    private final Candidate candidate;
    private final Survey survey;
    private final Timeline timeline;
    private final Judge judge;
    private final OtherConditions trials;
    private final Burdens burdens;
    private final PilotBurden pilot;
    private final List<Failure> singles;
    private final Map<String, Verdict> told = new ConcurrentHashMap<>();
    private @Nullable List<StartAttempt> starts;
    private @Nullable List<LeftSwitch> leftSwitches;
    private @Nullable NothingBroken flight;
    private @Nullable Restarts restarts;

    /**
     * A requirement that is missed, as far as was looked.
     *
     * @param requirement in words: the first one found missed
     * @param breaking failures that break a requirement of the same effort or of less; empty where
     *     it is no failure that does
     */
    public record MissedRequirement(String requirement, List<String> breaking) {
        public MissedRequirement {
            breaking = List.copyOf(breaking);
        }
    }

    private Scrutiny(Study study, Candidate candidate, Survey survey) throws UntoldStory {
        this.study = study;
        this.candidate = candidate;
        this.survey = survey;
        this.timeline = Timeline.quick(study, candidate);
        if (!timeline.normal().engineRuns()) {
            throw timeline.neverRan();
        }
        this.judge = new Judge(study, timeline);
        this.trials = new OtherConditions(study, timeline);
        this.burdens = Burdens.of(candidate);
        this.pilot = PilotBurden.of(candidate);
        this.singles = FailureCatalogue.singlesOf(candidate);
    }

    /**
     * Begins with a candidate.
     *
     * @throws UntoldStory if it cannot be computed, or its engine does not run with nothing wrong
     */
    public static Scrutiny of(Study study, Candidate candidate, Survey survey) throws UntoldStory {
        return new Scrutiny(study, candidate, survey);
    }

    /**
     * The first requirement that is missed, cheapest first; empty if all are met. What it says is
     * what the whole appraisal says: no failure is judged otherwise for being asked first, and one
     * failure that breaks a requirement is enough.
     *
     * @param first names of failures to ask before all others
     * @throws UntoldStory if something cannot be computed without which nothing can be said
     */
    public Optional<MissedRequirement> refusal(Set<String> first) throws UntoldStory {
        Set<String> breaking = new LinkedHashSet<>();
        List<String> missed = new ArrayList<>();
        for (Effort effort : Effort.values()) {
            if (effort == Effort.EVERY_SINGLE_FAILURE) {
                holdSingles(first, missed, breaking);
            }
            if (effort == Effort.ONE_STORY || missed.isEmpty()) {
                hold(effort, new Requirements(study, this), missed, breaking);
            }
        }
        return missed.stream()
                .findFirst()
                .map(words -> new MissedRequirement(words, List.copyOf(breaking)));
    }

    /** Those to be asked first, then the others some at a time, until one breaks something. */
    private void holdSingles(Set<String> first, List<String> missed, Set<String> breaking)
            throws UntoldStory {
        Map<Boolean, List<Failure>> all =
                singles.stream().collect(Collectors.partitioningBy(f -> first.contains(f.name())));
        List<Failure> asked = all.getOrDefault(true, List.of());
        List<Failure> rest = all.getOrDefault(false, List.of());
        holdSome(asked, missed, breaking);
        for (int n = 0; n < rest.size() && missed.isEmpty(); n += AT_ONCE) {
            holdSome(rest.subList(n, Math.min(rest.size(), n + AT_ONCE)), missed, breaking);
        }
    }

    private void holdSome(List<Failure> some, List<String> missed, Set<String> breaking)
            throws UntoldStory {
        Requirements against = new Requirements(study, only(some));
        hold(Effort.EVERY_SINGLE_FAILURE, against, missed, breaking);
    }

    private Evidence only(List<Failure> some) {
        return new SomeFailures(this, () -> judged(some), this::restarts);
    }

    /**
     * Requirements that are missed for certain, in words: as some of the single failures tell, and
     * what takes no more than a few stories. Of the others nobody knows.
     *
     * @param failures names of those that are told
     * @throws UntoldStory if something cannot be computed without which nothing can be said
     */
    public List<String> missedBy(Set<String> failures) throws UntoldStory {
        List<Failure> some = singles.stream().filter(f -> failures.contains(f.name())).toList();
        Requirements against = new Requirements(study, only(some));
        List<String> missed = new ArrayList<>();
        for (Effort effort : Effort.values()) {
            if (effort != Effort.SURVEY) {
                hold(effort, against, missed, new LinkedHashSet<>());
            }
        }
        return missed;
    }

    private void hold(
            Effort effort, Requirements against, List<String> missed, Set<String> breaking)
            throws UntoldStory {
        for (Requirement requirement : study.goals().requirements()) {
            if (Effort.of(requirement) == effort) {
                RequirementMet met = told(() -> against.check(requirement));
                if (!met.met()) {
                    missed.add(met.requirement());
                    breaking.addAll(met.culprits());
                }
            }
        }
    }

    /** What comes of those of the candidate's single failures that have these names. */
    public List<Verdict> verdicts(Collection<String> failures) {
        return judged(singles.stream().filter(f -> failures.contains(f.name())).toList());
    }

    /** What becomes of the candidate although nothing fails. */
    public NothingBroken flight() {
        if (flight == null) {
            flight = NothingBroken.of(study, candidate, timeline);
        }
        return flight;
    }

    /** Each switch of normal flight left in another position. */
    public List<LeftSwitch> leftSwitches() {
        if (leftSwitches == null) {
            leftSwitches = trials.leftSwitches();
        }
        return leftSwitches;
    }

    /** Names of the single failures that come nearest to breaking something, nearest first. */
    public List<String> nearest() {
        return StudyRanking.held(singles())
                .sorted(Comparator.comparingDouble(v -> v.planned().engine().endurance().seconds()))
                .limit(NEAREST)
                .map(v -> v.failure().name())
                .toList();
    }

    /**
     * A candidate's value by every criterion, as far as one story of charging lost tells; what only
     * all single failures tell is at its best.
     */
    public Map<CriterionName, Double> atBest() {
        return StudyRanking.values(study, List.of(), chargingLost(), burdens, complexity());
    }

    /** A candidate's value by every criterion. */
    public Map<CriterionName, Double> values() {
        return StudyRanking.values(study, singles(), chargingLost(), burdens, complexity());
    }

    /** How it flies with nothing wrong. */
    public NormalFlight normal() {
        return timeline.normal();
    }

    /**
     * All that is found out about the candidate.
     *
     * @throws UntoldStory if something cannot be computed without which nothing can be said
     */
    public Appraisal appraisal() throws UntoldStory {
        List<Verdict> singles = singles();
        Verdict lost = chargingLost();
        Cases cases =
                new Cases(
                        masterOff(),
                        lost,
                        trials.lasting(lost.failure()),
                        leftSwitches(),
                        starts(),
                        Lazy.by(() -> new MoveAudit(study, candidate).all(singles)));
        StructureFindings structure = Structure.of(study.aircraft(), candidate);
        Complexity complexity = Complexity.of(candidate, structure.independentLoops(), pilot);
        return new Appraisal(
                candidate,
                flight(),
                singles,
                cases,
                structure,
                new Measures(
                        burdens,
                        complexity,
                        pilot,
                        StudyRanking.values(study, singles, lost, burdens, complexity)),
                met());
    }

    /**
     * Each hard requirement, met or not, in the study's order.
     *
     * @throws UntoldStory if something cannot be computed without which nothing can be said
     */
    public List<RequirementMet> met() throws UntoldStory {
        Requirements requirements = new Requirements(study, this);
        List<RequirementMet> met = new ArrayList<>();
        for (Requirement requirement : study.goals().requirements()) {
            met.add(told(() -> requirements.check(requirement)));
        }
        return List.copyOf(met);
    }

    /** What is looked at. */
    public Candidate candidate() {
        return candidate;
    }

    /** How much there is to build, to know and to do. */
    public Complexity complexity() {
        return Complexity.of(candidate, Structure.independentLoops(candidate), pilot);
    }

    @Override
    public List<Verdict> singles() {
        return judged(singles);
    }

    @Override
    public Optional<Verdict> masterOff() {
        return judged(FailureCatalogue.operatingCasesOf(candidate)).stream().findFirst();
    }

    @Override
    public Verdict chargingLost() {
        return verdictOn(FailureCatalogue.chargingLost(candidate));
    }

    /** Failures are told in parallel, those that leave the same one after the other. */
    private List<Verdict> judged(List<Failure> failures) {
        List<Failure> news = failures.stream().filter(f -> !told.containsKey(f.name())).toList();
        timeline.alike(news).parallelStream().forEach(same -> same.forEach(this::verdictOn));
        return failures.stream().map(this::verdictOn).toList();
    }

    /** What comes of a failure, be it a single one, several at once, or a switch left wrong. */
    public Verdict verdictOn(Failure failure) {
        Optional<Verdict> known = Optional.ofNullable(told.get(failure.name()));
        Verdict verdict = known.orElseGet(() -> judge.judge(failure));
        told.put(failure.name(), verdict);
        return verdict;
    }

    @Override
    public Burdens burdens() {
        return burdens;
    }

    @Override
    public PilotBurden pilot() {
        return pilot;
    }

    @Override
    public Optional<StartAttempt> coldStart() {
        return starts().stream().reduce((before, last) -> last);
    }

    private List<StartAttempt> starts() {
        if (starts == null) {
            starts = trials.starts();
        }
        return starts;
    }

    @Override
    public Restarts restarts() {
        if (restarts == null) {
            restarts = restarts(singles());
        }
        return restarts;
    }

    private Restarts restarts(List<Verdict> after) {
        try {
            return trials.restarts(StudyRanking.held(after).map(Verdict::failure).toList());
        } catch (UntoldStory e) {
            throw new Untold(e);
        }
    }

    @Override
    public Optional<List<String>> departures() {
        return BaselineParts.departures(study, candidate);
    }

    @Override
    public Optional<RequirementMet> surveyed(Requirement requirement) {
        return survey.of(requirement, candidate);
    }

    /** Lets what could not be told out of where nobody expects it. */
    private static <T> T told(Supplier<T> asked) throws UntoldStory {
        try {
            return asked.get();
        } catch (Untold e) {
            throw e.story;
        }
    }

    private static final class Untold extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final UntoldStory story;

        Untold(UntoldStory story) {
            super(story);
            this.story = story;
        }
    }
}
