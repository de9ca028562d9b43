package stillturning.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;

/** The question and the answer, in sentences. */
public final class AnswerWords {

    /** What is asked of every candidate. */
    public static final String QUESTION =
            "After each failure: is the propeller still turning, for how long, and what must the"
                    + " pilot do about it?";

    private AnswerWords() {}

    /** Who comes first, and what is to be said of it at once. */
    public static String lead(Assessment assessment) {
        return assessment
                .ranking()
                .map(ranking -> lead(assessment, ranking))
                .orElse("No candidate could be assessed.");
    }

    private static String lead(Assessment assessment, RankingResult ranking) {
        String leader = ranking.leader().name();
        String title = assessment.of(leader).map(a -> a.candidate().title()).orElse(leader);
        long missed =
                assessment.of(leader).stream()
                        .flatMap(a -> a.met().stream())
                        .filter(m -> !m.met())
                        .count();
        if (missed > 0) {
            return "No candidate meets every requirement; \""
                    + title
                    + "\" comes nearest and misses "
                    + missed
                    + ".";
        }
        FirstPlace first = new FirstPlace(assessment, ranking);
        String who =
                first.shared()
                        ? first.titles() + " share the first place"
                        : "\"" + title + "\" comes first";
        if (!assessment.asksForAnything()) {
            return who + "; the study sets no hard requirement, so none can be missed.";
        }
        return who + (first.shared() ? " and meet" : " and meets") + " every requirement.";
    }

    /** Why the first one is first; empty where nothing could be ranked. */
    public static String why(Assessment assessment) {
        return assessment.ranking().map(ranking -> why(assessment, ranking)).orElse("");
    }

    private static String why(Assessment assessment, RankingResult ranking) {
        return Stream.concat(
                        Stream.of(new Reasons(assessment, ranking).of(ranking.leader().name())),
                        new FirstPlace(assessment, ranking).sharing().stream())
                .collect(Collectors.joining(" "));
    }
}
