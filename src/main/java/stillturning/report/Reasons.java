package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.model.CriterionName;
import stillturning.quantity.Formats;
import stillturning.ranking.Comparison;
import stillturning.ranking.Difference;
import stillturning.ranking.GateVerdict;
import stillturning.ranking.RankingResult;
import stillturning.ranking.Standing;

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
        clauses.add(
                standing.missedGates().isEmpty()
                        ? "meets every requirement"
                        : "misses " + gates(standing.missedGates()) + ", but the others miss more");
        ranking.whyFirst()
                .filter(comparison -> comparison.candidate().equals(standing.name()))
                .ifPresent(comparison -> clauses.addAll(beside(comparison)));
        return String.join("; ", clauses);
    }

    private String whyNot(Standing standing) {
        Comparison comparison = ranking.compare(standing.name(), ranking.leader().name());
        List<String> clauses = new ArrayList<>();
        if (!standing.missedGates().isEmpty()) {
            clauses.add("misses " + gates(standing.missedGates()));
        }
        clauses.addAll(beside(comparison));
        if (!standing.dominatedBy().isEmpty()) {
            clauses.add("no better in anything than " + titles(standing.dominatedBy()));
        }
        return String.join("; ", clauses);
    }

    private List<String> beside(Comparison comparison) {
        List<String> clauses = new ArrayList<>();
        String other = title(comparison.reference());
        if (!comparison.better().isEmpty()) {
            clauses.add("ahead of \"" + other + "\" in " + differences(comparison.better()));
        }
        if (!comparison.worse().isEmpty()) {
            clauses.add("behind \"" + other + "\" in " + differences(comparison.worse()));
        }
        return clauses;
    }

    private static String gates(List<GateVerdict> missed) {
        return missed.stream()
                .map(g -> "\"" + g.gate() + "\" (" + g.reason() + ")")
                .collect(Collectors.joining(" and "));
    }

    private String differences(List<Difference> differences) {
        return differences.stream()
                .limit(NAMED)
                .map(
                        d ->
                                d.criterion()
                                        + " ("
                                        + value(d.criterion(), d.value())
                                        + " against "
                                        + value(d.criterion(), d.referenceValue())
                                        + ")")
                .collect(Collectors.joining(", "));
    }

    private String value(String criterion, double value) {
        return criterion(criterion)
                .map(name -> Shown.value(name, value, currency()))
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
        return candidates.stream()
                .map(c -> "\"" + title(c) + "\"")
                .collect(Collectors.joining(" or "));
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
