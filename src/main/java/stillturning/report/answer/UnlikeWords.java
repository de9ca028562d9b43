package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.Exchange;
import stillturning.assess.exchange.Group;
import stillturning.assess.ranking.RankingResult;
import stillturning.model.Candidate;
import stillturning.report.Spoken;
import stillturning.report.pair.ValueMarks;

/** In what the first one and the next differ that is no matter of layout. */
final class UnlikeWords {

    private static final int NAMED = 3;

    private final Assessment assessment;
    private final RankingResult ranking;
    private final Optional<ValueMarks> marks;

    UnlikeWords(Assessment assessment, RankingResult ranking, Optional<ValueMarks> marks) {
        this.assessment = assessment;
        this.ranking = ranking;
        this.marks = marks;
    }

    /** One sentence; none where there is no next one. */
    List<String> sentences() {
        if (ranking.standings().size() < 2) {
            return List.of();
        }
        List<String> unlike = new ArrayList<>();
        Map<Group, List<String>> differences = Exchange.differences(candidate(0), candidate(1));
        differences.forEach(
                (group, parts) -> {
                    if (!group.isLayout()) {
                        unlike.add(group.words() + " (" + some(parts) + ")");
                    }
                });
        boolean layout = differences.keySet().stream().anyMatch(Group::isLayout);
        Spoken spoken = new Spoken(candidate(0));
        String so =
                unlike.isEmpty()
                        ? "It and the next differ in nothing but their layout"
                        : "It and the next differ in "
                                + String.join(" and ", unlike)
                                + (layout ? ", which is no layout" : " and not in layout");
        return List.of(
                spoken.sentence(so)
                        + marks.map(m -> "; " + m.words("it", "the next")).orElse("")
                        + ".");
    }

    private Candidate candidate(int place) {
        return assessment.of(ranking.standings().get(place).name()).orElseThrow().candidate();
    }

    private static String some(List<String> parts) {
        int left = parts.size() - NAMED;
        return String.join(", ", parts.subList(0, Math.min(NAMED, parts.size())))
                + (left > 0 ? " and " + left + " more" : "");
    }
}
