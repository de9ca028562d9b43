package stillturning.assess.suggest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.PilotBurden;
import stillturning.assess.Scrutiny;
import stillturning.assess.suggest.Wanted.Mended;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.goal.ComplexityWeights;
import stillturning.parts.Part;

/**
 * A change that mends something, and all that comes with it.
 *
 * @param moves in words, one after the other
 * @param differences of the changed candidate from the one that it was made from
 * @param before what the candidate costs as it was
 * @param after what it costs then
 * @param mended what it mends of what was asked for, and what it does not
 * @param troubles what is worse than before, the pilot as planned
 * @param losses single failures that lose the engine, against those before
 */
public record Suggestion(
        List<String> moves,
        CandidateDifferences differences,
        CandidateBurden before,
        CandidateBurden after,
        Mended mended,
        List<Worsening> troubles,
        EngineLosses losses) {
    public Suggestion {
        moves = List.copyOf(moves);
        troubles = List.copyOf(troubles);
    }

    /**
     * Something that is worse than before.
     *
     * @param what a failure by its name, or a requirement
     * @param comesTo what comes of it in words
     */
    public record Worsening(String what, String comesTo) {}

    /**
     * A candidate changed by moves.
     *
     * @param mended what is mended of what was asked for
     */
    public static Suggestion of(
            Study study, List<String> moves, Mended mended, Appraisal before, Appraisal after) {
        CandidateDifferences differences = CandidateDifferences.of(after, before);
        ComplexityWeights weights = study.goals().preferences().complexity();
        return new Suggestion(
                moves,
                differences,
                CandidateBurden.of(before, weights),
                CandidateBurden.of(after, weights),
                mended,
                troubles(differences, before, after),
                EngineLosses.of(before, after));
    }

    private static List<Worsening> troubles(
            CandidateDifferences differences, Appraisal before, Appraisal after) {
        List<Worsening> troubles = new ArrayList<>();
        differences.shifts().stream()
                .filter(shift -> !shift.better() && harms(shift.after()))
                .map(Suggestion::trouble)
                .forEach(troubles::add);
        differences.own().stream()
                .filter(v -> harms(v.outcome()) && !v.engineOwn())
                .map(Suggestion::trouble)
                .forEach(troubles::add);
        Set<String> missedBefore = new LinkedHashSet<>(Wanted.missed(before));
        Wanted.missed(after).stream()
                .filter(requirement -> !missedBefore.contains(requirement))
                .map(requirement -> new Worsening(requirement, "missed"))
                .forEach(troubles::add);
        return troubles;
    }

    private static boolean harms(Outcome outcome) {
        return outcome == Outcome.ENGINE_LOST
                || outcome.needsPilot()
                || outcome == Outcome.INTERRUPTED;
    }

    private static Worsening trouble(Shift shift) {
        return new Worsening(shift.failure(), shift.after().words());
    }

    private static Worsening trouble(Verdict verdict) {
        return new Worsening(verdict.failure().name(), verdict.outcome().words());
    }

    /**
     * Whether it loses the engine in more ways than before, whatever it mends; no such change is
     * offered as one among others.
     */
    public boolean isOutweighed() {
        return losses.isMore();
    }

    /** What it does not mend of what was asked for, in words. */
    public List<String> left() {
        return mended.left();
    }

    /** How many parts are added, left out or altered. */
    public int touched() {
        return differences.added().size()
                + differences.leftOut().size()
                + differences.altered().size();
    }

    /** The same, told from the drawings alone. */
    private static int touched(Candidate after, Candidate before) {
        Map<String, Part> there = new HashMap<>();
        before.parts().forEach(part -> there.put(part.id(), part));
        long stayed = after.parts().stream().filter(part -> there.containsKey(part.id())).count();
        long alike =
                after.parts().stream().filter(part -> part.equals(there.get(part.id()))).count();
        return (int) (before.parts().size() + after.parts().size() - stayed - alike);
    }

    /**
     * What a changed candidate is worth at best, before it is assessed in full.
     *
     * @param left how much of what was asked for it does not mend, or less
     */
    public static List<Double> atBest(Study study, int left, Candidate before, Scrutiny after) {
        CandidateBurden burden =
                CandidateBurden.of(after, study.goals().preferences().complexity());
        return values(left, 0, touched(after.candidate(), before), burden, false);
    }

    /** What it is worth, less being better in each. */
    public List<Double> values() {
        return values(left().size(), troubles.size(), touched(), after, isOutweighed());
    }

    /** What no candidate is better than. */
    public static List<Double> nothing() {
        return values(0, 0, 0, new CandidateBurden(0, 0, 0, 0, 0), false);
    }

    private static List<Double> values(
            int left, int troubles, int touched, CandidateBurden after, boolean outweighed) {
        return List.of(
                (double) left,
                (double) troubles,
                (double) touched,
                after.kilograms,
                (double) after.parts,
                after.price,
                after.complexity,
                (double) after.acts,
                outweighed ? 1.0 : 0.0);
    }

    /**
     * What a candidate costs the aircraft, the purse and the pilot.
     *
     * @param kilograms of the electrical system (kg)
     * @param parts without the loads
     * @param price in the study's currency
     * @param complexity index by the weights of the study
     * @param acts what the pilot has to know to do, each once
     */
    public record CandidateBurden(
            double kilograms, int parts, double price, double complexity, int acts) {

        /** How many parts a candidate has, its loads not counted. */
        public static int parts(Candidate candidate) {
            return (int) (candidate.parts().size() - candidate.loads().count());
        }

        static CandidateBurden of(Appraisal appraisal, ComplexityWeights weights) {
            return new CandidateBurden(
                    appraisal.measures().burdens().kilograms(),
                    parts(appraisal.candidate()),
                    appraisal.measures().burdens().price(),
                    appraisal.measures().complexity().index(weights),
                    acts(appraisal.measures().pilot()));
        }

        static CandidateBurden of(Scrutiny scrutiny, ComplexityWeights weights) {
            return new CandidateBurden(
                    scrutiny.burdens().kilograms(),
                    parts(scrutiny.candidate()),
                    scrutiny.burdens().price(),
                    scrutiny.complexity().index(weights),
                    acts(scrutiny.pilot()));
        }

        private static int acts(PilotBurden pilot) {
            return (int)
                    Stream.concat(pilot.byHeart().stream(), pilot.withTimeInHand().stream())
                            .distinct()
                            .count();
        }
    }
}
