package stillturning.assess;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.verdict.Lazy;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Selectivity;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.model.goal.CriterionName;
import stillturning.story.StartAttempt;
import stillturning.structure.StructureFindings;

/**
 * Everything that was found out about one candidate.
 *
 * @param flight the candidate with nothing wrong
 * @param singles verdict on every single failure, in the candidate's order
 * @param cases what is looked at beside the single failures
 * @param structure the structural second opinion
 * @param met each hard requirement, met or not, with the reason
 */
public record Appraisal(
        Candidate candidate,
        NothingBroken flight,
        List<Verdict> singles,
        Cases cases,
        StructureFindings structure,
        Measures measures,
        List<RequirementMet> met) {

    /**
     * What is looked at beside the single failures.
     *
     * @param masterOff the drill that takes all power off the airframe, if there is one
     * @param chargingLost all charging sources failing
     * @param lasting how long the engine then runs, by what is switched off
     * @param leftSwitches each switch of normal flight left in another position
     * @param starts the engine started on the ground, as stated and then with tired batteries in
     *     the cold; none where the study has no starter
     * @param movesAudited drills and procedures whose moves do less harm in another order
     */
    public record Cases(
            Optional<Verdict> masterOff,
            Verdict chargingLost,
            SheddingEndurances lasting,
            List<LeftSwitch> leftSwitches,
            List<StartAttempt> starts,
            Lazy<List<HarmfulMoves>> movesAudited) {
        public Cases {
            leftSwitches = List.copyOf(leftSwitches);
            starts = List.copyOf(starts);
        }

        /** Drills and procedures whose moves do less harm in another order. */
        public List<HarmfulMoves> harmfulMoves() {
            return movesAudited.get();
        }

        /** The start in the cold with tired batteries. */
        public Optional<StartAttempt> coldStart() {
            return starts.isEmpty() ? Optional.empty() : Optional.of(starts.get(starts.size() - 1));
        }
    }

    /** The drill that takes all power off the airframe, if there is one. */
    public Optional<Verdict> masterOff() {
        return cases.masterOff;
    }

    /** All charging sources failing. */
    public Verdict chargingLost() {
        return cases.chargingLost;
    }

    /** Weight, cost, complexity, what the pilot has to do, and the value by criterion. */
    public record Measures(
            Burdens burdens,
            Complexity complexity,
            PilotBurden pilot,
            Map<CriterionName, Double> values) {
        public Measures {
            values = Map.copyOf(values);
        }
    }

    /**
     * A hard requirement.
     *
     * @param requirement in words
     * @param reason why it is missed, or by what it is met
     * @param culprits failures by which it is missed, or by which it may be within the tolerance of
     *     the protectors although it is met
     * @param margin how far from its limit, in words; empty where it has none
     */
    public record RequirementMet(
            String requirement, boolean met, String reason, List<String> culprits, String margin) {

        private static final int NAMED = 3;

        public RequirementMet {
            culprits = List.copyOf(culprits);
        }

        /** One without a margin. */
        public RequirementMet(
                String requirement, boolean met, String reason, List<String> culprits) {
            this(requirement, met, reason, culprits, "");
        }

        /** The same with a margin. */
        public RequirementMet within(String howFar) {
            return new RequirementMet(requirement, met, reason, culprits, howFar);
        }

        /** The reason with its margin and the first of the culprits. */
        public String reasonInFull() {
            String found = margin.isEmpty() ? reason : reason + ", " + margin;
            if (culprits.isEmpty()) {
                return found;
            }
            String named = String.join("; ", culprits.subList(0, Math.min(NAMED, culprits.size())));
            int left = culprits.size() - NAMED;
            return found + ": " + named + (left > 0 ? "; and " + left + " more" : "");
        }
    }

    public Appraisal {
        singles = List.copyOf(singles);
        met = List.copyOf(met);
    }

    /**
     * The verdict on one of the candidate's failures.
     *
     * @throws IllegalArgumentException if it is no single failure and no operating case of it
     */
    public Verdict verdictOn(Failure failure) {
        Stream<Verdict> operating = Stream.concat(Stream.of(chargingLost()), masterOff().stream());
        return Stream.concat(operating, singles.stream())
                .filter(v -> v.failure().name().equals(failure.name()))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        candidate.id() + " was not asked about " + failure.name()));
    }

    /** Single failures of one outcome, those of the engine's own parts left out. */
    public List<Verdict> with(Outcome outcome) {
        return singles.stream().filter(v -> v.outcome() == outcome && !v.engineOwn()).toList();
    }

    /** What cannot be told to its end, and so counts as engine lost, operating cases first. */
    public List<Verdict> untold() {
        return Stream.concat(
                        Stream.concat(masterOff().stream(), Stream.of(chargingLost())),
                        singles.stream())
                .filter(v -> v.untold().isPresent())
                .toList();
    }

    /** Pairs of which the wrong one may give way first, the engine's own parts' failures too. */
    public Selectivity selectivity() {
        return Selectivity.of(singles);
    }

    /** Failures of what the engine cannot do without, the same in every candidate. */
    public List<Verdict> engineOwn() {
        return singles.stream().filter(Verdict::engineOwn).toList();
    }
}
