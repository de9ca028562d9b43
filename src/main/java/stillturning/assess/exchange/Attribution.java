package stillturning.assess.exchange;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.goal.CriterionName;

/**
 * What makes the difference between two candidates of a study.
 *
 * @param from the candidate from which the mixes start
 * @param to the one that they end in
 * @param shares one for each group, or for groups that go together
 * @param mixes every mix, none exchanged first and all exchanged last
 * @param inseparable why some groups go together; empty if none do
 */
public record Attribution(
        Candidate from,
        Candidate to,
        List<AttributedShare> shares,
        List<Mix> mixes,
        String inseparable) {

    /**
     * The part of a group, or of groups that go together, in the difference.
     *
     * @param together the groups
     * @param parts parts by which the candidates differ there
     * @param values share in the difference of each criterion (second less first); one that is
     *     without limit in some mix has none
     * @param points share in the difference of the points
     * @param missed share in the difference of hard requirements missed
     */
    public record AttributedShare(
            List<Group> together,
            List<String> parts,
            Map<CriterionName, Double> values,
            double points,
            double missed) {
        public AttributedShare {
            together = List.copyOf(together);
            parts = List.copyOf(parts);
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        /** Whether anything of it is a matter of architecture. */
        public boolean isLayout() {
            return together.stream().anyMatch(Group::isLayout);
        }
    }

    public Attribution {
        shares = List.copyOf(shares);
        mixes = List.copyOf(mixes);
    }

    /** The first candidate as it is. */
    public Mix none() {
        return mixes.get(0);
    }

    /** The second candidate as it is. */
    public Mix all() {
        return mixes.get(mixes.size() - 1);
    }

    /**
     * The mix with just these groups exchanged.
     *
     * @throws IllegalArgumentException if they do not all go by themselves
     */
    public Mix with(Set<Group> exchanged) {
        return mixes.stream()
                .filter(mix -> mix.exchanged().equals(exchanged))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no mix exchanges " + exchanged));
    }

    /** Whether exchanging just this turns the order of the two, or makes or breaks a tie. */
    public boolean turnedBy(AttributedShare share) {
        int asTheyAre = sign(all().against(none()));
        return sign(ifBothHaveTheSeconds(share)) != asTheyAre
                || sign(ifBothHaveTheFirsts(share)) != asTheyAre;
    }

    /** Above 0 if the second is before the first once both have what the second has there. */
    public int ifBothHaveTheSeconds(AttributedShare share) {
        return all().against(with(asSet(share.together())));
    }

    /** Above 0 if the second is before the first once both have what the first has there. */
    public int ifBothHaveTheFirsts(AttributedShare share) {
        Set<Group> others = EnumSet.noneOf(Group.class);
        all().exchanged().stream()
                .filter(group -> !share.together().contains(group))
                .forEach(others::add);
        return with(others).against(none());
    }

    private static int sign(int order) {
        return Integer.signum(order);
    }

    private static Set<Group> asSet(List<Group> groups) {
        return EnumSet.copyOf(groups);
    }

    /** The whole difference by criterion, second less first. */
    public Map<CriterionName, Double> difference() {
        Map<CriterionName, Double> whole = new EnumMap<>(CriterionName.class);
        all().values()
                .forEach(
                        (criterion, value) -> {
                            double before = none().values().getOrDefault(criterion, Double.NaN);
                            if (Double.isFinite(value - before)) {
                                whole.put(criterion, value - before);
                            }
                        });
        return whole;
    }
}
