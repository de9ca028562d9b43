package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.CriterionDifference;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;

/** Why a candidate stands where it does, in a sentence made from its own results. */
public final class Reasons {

    /** At most so many criteria are named on either side. */
    private static final int NAMED = 3;

    private final Assessment assessment;
    private final RankingResult ranking;

    /** Reasons in a ranked assessment. */
    public Reasons(Assessment assessment, RankingResult ranking) {
        this.assessment = assessment;
        this.ranking = ranking;
    }

    /** One sentence for a candidate that was ranked. */
    public String of(String candidate) {
        Standing standing = ranking.standing(candidate);
        String own = standing.rank() == 1 ? whyFirst(standing) : whyNot(standing);
        return capital(own) + ".";
    }

    private String whyFirst(Standing standing) {
        List<String> clauses = new ArrayList<>();
        clauses.add(requirements(standing));
        if (standing.equals(ranking.leader())) {
            ranking.whyFirst().ifPresent(comparison -> clauses.addAll(beside(comparison)));
        } else {
            clauses.addAll(beside(ranking.compare(standing.name(), ranking.leader().name())));
        }
        if (!standing.dominatedBy().isEmpty()) {
            clauses.add("no better in anything than " + titles(standing.dominatedBy()));
        }
        return String.join("; ", clauses);
    }

    /** What a first one misses, held against what the others miss. */
    private String requirements(Standing first) {
        int missed = first.missedGates().size();
        boolean alone = ranking.standings().size() == 1;
        if (!assessment.asksForAnything()) {
            return "nothing is required";
        }
        String own = missed == 0 ? "meets every requirement" : misses(first);
        List<Standing> level =
                ranking.standings().stream()
                        .filter(s -> !s.equals(first) && s.missedGates().size() == missed)
                        .toList();
        if (alone || level.isEmpty()) {
            String only = missed == 0 ? ", as the only one" : "; every other misses more";
            return alone ? own : own + only;
        }
        boolean tied = level.stream().anyMatch(s -> s.rank() == first.rank());
        return own
                + (missed == 0 ? ", as " : ", as many as ")
                + (level.size() == 1
                        ? titles(List.of(level.get(0).name()))
                        : level.size() + " others")
                + (level.size() == 1 ? " does" : " do")
                + (tied ? ", and has no fewer points" : ", and has more points");
    }

    private String whyNot(Standing standing) {
        Comparison comparison = ranking.compare(standing.name(), ranking.leader().name());
        List<String> clauses = new ArrayList<>();
        if (!standing.missedGates().isEmpty()) {
            clauses.add(misses(standing));
        }
        clauses.addAll(beside(comparison));
        if (!standing.dominatedBy().isEmpty()) {
            clauses.add("no better in anything than " + titles(standing.dominatedBy()));
        }
        return clauses.isEmpty()
                ? "behind " + titles(List.of(comparison.reference())) + " by less than figures show"
                : String.join("; ", clauses);
    }

    private List<String> beside(Comparison comparison) {
        List<String> clauses = new ArrayList<>();
        String other = titles(List.of(comparison.reference()));
        String better = differences(comparison.better());
        String worse = differences(comparison.worse());
        if (!better.isEmpty()) {
            clauses.add("ahead of " + other + " in " + better);
        }
        if (!worse.isEmpty()) {
            clauses.add("behind " + (better.isEmpty() ? other : "it") + " in " + worse);
        }
        return clauses;
    }

    private static String misses(Standing standing) {
        List<String> gates =
                standing.missedGates().stream()
                        .map(g -> "\"" + g.gate() + "\" (" + g.reason() + ")")
                        .toList();
        return "misses " + listed(gates, "and");
    }

    /** The largest differences; those that a reader could not tell apart are left out. */
    public String differences(List<CriterionDifference> differences) {
        List<String> named =
                differences.stream()
                        .filter(d -> !value(d, d.value()).equals(value(d, d.referenceValue())))
                        .limit(NAMED)
                        .map(this::difference)
                        .toList();
        return listed(named, "and");
    }

    private String difference(CriterionDifference d) {
        return d.criterion()
                + " ("
                + value(d, d.value())
                + " against "
                + value(d, d.referenceValue())
                + ")";
    }

    private String value(CriterionDifference difference, double value) {
        return criterion(difference.criterion())
                .map(name -> ResultText.value(name, value, currency()))
                .orElse(Formats.significant(value, 3));
    }

    private String currency() {
        return assessment.study().heading().currency();
    }

    private static Optional<CriterionName> criterion(String words) {
        for (CriterionName name : CriterionName.values()) {
            if (name.words().equals(words)) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    private String titles(List<String> candidates) {
        return listed(candidates.stream().map(c -> "\"" + title(c) + "\"").toList(), "or");
    }

    private static String listed(List<String> items, String last) {
        int end = items.size() - 1;
        return end < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, end)) + " " + last + " " + items.get(end);
    }

    private String title(String candidate) {
        return assessment
                .of(candidate)
                .map(Appraisal::candidate)
                .map(c -> c.title())
                .orElse(candidate);
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
