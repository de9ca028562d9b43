package stillturning.files.goal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.entry.StudyEntry;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;

/**
 * Weights by swing: what it is worth to go from what is acceptable to what is enough by one
 * criterion, against the criterion where that is worth most, which has 100.
 *
 * @see "D. von Winterfeldt, W. Edwards, Decision Analysis and Behavioral Research (1986), chapter 8
 *     (from memory)"
 */
public final class Swings {

    /** Of the most important one. */
    public static final double MOST = 100;

    private static final Pattern ONE = Pattern.compile("(\\S+)\\s+(\\d+(?:\\.\\d+)?)");

    private Swings() {}

    /** Weights as they were said, or what is wrong with them. */
    public record StatedWeights(List<Study.Weight> weights, List<String> mistakes) {
        public StatedWeights {
            weights = List.copyOf(weights);
            mistakes = List.copyOf(mistakes);
        }
    }

    /** Reads swings such as "weight 100, cost 40"; what is not named does not count. */
    public static StatedWeights said(String text) {
        Map<CriterionName, Double> swings = new EnumMap<>(CriterionName.class);
        List<String> mistakes = new ArrayList<>();
        for (String piece : text.split(",", -1)) {
            Matcher one = ONE.matcher(piece.strip());
            Optional<CriterionName> criterion =
                    one.matches() ? StudyEntry.criterion(one.group(1)) : Optional.empty();
            if (criterion.isEmpty()) {
                mistakes.add(
                        "\""
                                + piece.strip()
                                + "\" gives no criterion a swing; write one of "
                                + String.join(", ", PreferencesReader.keys())
                                + " with a number from 0 to 100 after it");
            } else if (swings.put(criterion.get(), Double.parseDouble(one.group(2))) != null) {
                mistakes.add("\"" + one.group(1) + "\" is there twice; leave one of them out");
            }
        }
        if (mistakes.isEmpty()) {
            mistake(swings).ifPresent(mistakes::add);
        }
        return new StatedWeights(weights(swings), mistakes);
    }

    /** What is wrong with swings by criterion. */
    static Optional<String> mistake(Map<CriterionName, Double> swings) {
        double most = swings.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return most == MOST
                ? Optional.empty()
                : Optional.of(
                        "the largest swing is not 100; give 100 to the way that you would go first,"
                                + " and the others their share of that");
    }

    /** The weights that swings come to; in the order of the criteria. */
    static List<Study.Weight> weights(Map<CriterionName, Double> swings) {
        List<Study.Weight> weights = new ArrayList<>();
        new EnumMap<>(swings).forEach((c, swing) -> weights.add(new Study.Weight(c, swing)));
        return weights;
    }
}
