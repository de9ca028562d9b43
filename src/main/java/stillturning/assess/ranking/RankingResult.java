package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The whole order with its reasons.
 *
 * @param scales what each criterion was valued on, in the criteria's order
 * @param standings best first; those that share a rank by their values, criterion by criterion, so
 *     that none stands before one that dominates it, then by name
 * @param robustness what becomes of the order under other weights
 * @param unseatedBy for each criterion whose weight alone can unseat the leader the smallest such
 *     change, smallest first
 */
public record RankingResult(
        List<AppliedScale> scales,
        List<Standing> standings,
        Robustness robustness,
        List<WeightChange> unseatedBy) {

    /** Who is in first place: more than one where nothing decides their order. */
    public List<Standing> first() {
        return standings.stream().filter(standing -> standing.rank() == 1).toList();
    }

    /** The candidate in first place; one that none of those who share it dominates. */
    public Standing leader() {
        return standings.get(0);
    }

    /**
     * One candidate's standing.
     *
     * @throws IllegalArgumentException if nobody of that name was ranked
     */
    public Standing standing(String name) {
        return standings.stream()
                .filter(standing -> standing.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException(name + " is not among the candidates"));
    }

    /** Candidates that no other dominates, in order of standing. */
    public List<Standing> efficient() {
        return standings.stream().filter(Standing::efficient).toList();
    }

    /** The leader beside the next in order; empty where there is only one candidate. */
    public Optional<Comparison> whyFirst() {
        return standings.size() < 2
                ? Optional.empty()
                : Optional.of(compare(leader().name(), standings.get(1).name()));
    }

    /** Each candidate but the leader, beside the leader, in order of standing. */
    public List<Comparison> whyNot() {
        return standings.stream()
                .skip(1)
                .map(standing -> compare(standing.name(), leader().name()))
                .toList();
    }

    /**
     * Any two candidates side by side.
     *
     * @throws IllegalArgumentException if one of them was not ranked
     */
    public Comparison compare(String candidate, String reference) {
        Standing one = standing(candidate);
        Standing other = standing(reference);
        return new Comparison(
                candidate,
                reference,
                one.total() - other.total(),
                differences(one, other, 1),
                differences(one, other, -1),
                missedOnlyBy(one, other),
                missedOnlyBy(other, one),
                dominance(one, other));
    }

    private List<CriterionDifference> differences(Standing one, Standing other, int wantedSign) {
        List<CriterionDifference> found = new ArrayList<>();
        for (int i = 0; i < scales.size(); i++) {
            Contribution here = one.contributions().get(i);
            Contribution there = other.contributions().get(i);
            int order = scales.get(i).sense().compare(here.value(), there.value());
            if (Integer.signum(order) == wantedSign) {
                found.add(
                        new CriterionDifference(
                                here.criterion(),
                                here.value(),
                                there.value(),
                                here.points() - there.points()));
            }
        }
        found.sort(Comparator.comparingDouble(difference -> -Math.abs(difference.points())));
        return List.copyOf(found);
    }

    private static List<GateVerdict> missedOnlyBy(Standing one, Standing other) {
        Set<String> missedByOther =
                other.missedGates().stream()
                        .map(GateVerdict::gate)
                        .collect(Collectors.toCollection(HashSet::new));
        return one.missedGates().stream()
                .filter(verdict -> !missedByOther.contains(verdict.gate()))
                .toList();
    }

    private static Comparison.Dominance dominance(Standing one, Standing other) {
        if (one.dominates().contains(other.name())) {
            return Comparison.Dominance.DOMINATES;
        }
        return one.dominatedBy().contains(other.name())
                ? Comparison.Dominance.DOMINATED
                : Comparison.Dominance.NEITHER;
    }
}
