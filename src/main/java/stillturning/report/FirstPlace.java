package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.Comparison.Dominance;
import stillturning.assess.ranking.CriterionDifference;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;

/** Who is in first place, alone or with others, and what would decide between those. */
public final class FirstPlace {

    private final Assessment assessment;
    private final RankingResult ranking;

    public FirstPlace(Assessment assessment, RankingResult ranking) {
        this.assessment = assessment;
        this.ranking = ranking;
    }

    /** Whether several are in first place. */
    public boolean shared() {
        return ranking.first().size() > 1;
    }

    /** Those in first place, by their titles. */
    public String titles() {
        return listed(ranking.first().stream().map(s -> title(s.name())).toList());
    }

    /** What is to be known of a shared first place; nothing where one is alone there. */
    public List<String> sharing() {
        List<String> sentences = new ArrayList<>();
        List<Standing> first = ranking.first();
        for (int i = 0; i < first.size(); i++) {
            for (Standing other : first.subList(i + 1, first.size())) {
                sentences.add(between(ranking.compare(first.get(i).name(), other.name())));
            }
        }
        return List.copyOf(sentences);
    }

    private String between(Comparison pair) {
        String one = title(pair.candidate());
        String other = title(pair.reference());
        if (pair.dominance() == Dominance.DOMINATES) {
            return one
                    + " is at least as good as "
                    + other
                    + " in everything and better in "
                    + criteria(pair.better())
                    + ", which the weights do not count; no weights put "
                    + other
                    + " alone in first place.";
        }
        if (pair.better().isEmpty() && pair.worse().isEmpty()) {
            return one + " and " + other + " are alike in every criterion.";
        }
        return "Between "
                + one
                + " and "
                + other
                + " these weights decide nothing: more for "
                + criteria(pair.better())
                + " puts "
                + one
                + " first, more for "
                + criteria(pair.worse())
                + " "
                + other
                + ".";
    }

    private static String criteria(List<CriterionDifference> differences) {
        return listed(differences.stream().map(CriterionDifference::criterion).toList());
    }

    private static String listed(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    private String title(String candidate) {
        String title = assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate);
        return "\"" + title + "\"";
    }
}
