package stillturning.report.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Standing;
import stillturning.model.goal.CriterionName;
import stillturning.report.ResultText;

/** What the one that is behind would have to be, by one criterion, to draw level. */
final class NeededValue {

    private static final int HALVINGS = 60;

    private final PairQuestion pair;
    private final Standing ahead;
    private final Standing behind;

    NeededValue(PairQuestion pair, Standing ahead, Standing behind) {
        this.pair = pair;
        this.ahead = ahead;
        this.behind = behind;
    }

    /** One sentence with every single value that would do, and one with what it has unused. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (behind.missedGates().size() > ahead.missedGates().size()) {
            return sentences;
        }
        List<String> values = values();
        String name = "\"" + PairBlocks.title(pair.two().of(behind.name()).orElseThrow()) + "\"";
        sentences.add(
                values.isEmpty()
                        ? "No single value of "
                                + name
                                + " makes it draw level: it would have to be worth more by several"
                                + " criteria, or by something that none of them counts."
                        : "To draw level, "
                                + name
                                + " would have to have one of: "
                                + String.join("; ", values)
                                + "; or be worth as much by something that no criterion counts.");
        pair.two().of(behind.name()).stream()
                .flatMap(a -> pair.controllers(a).stream())
                .flatMap(use -> ControllerWords.unused(use).stream())
                .forEach(sentences::add);
        return sentences;
    }

    private List<String> values() {
        double gap = ahead.total() - behind.total();
        List<String> values = new ArrayList<>();
        List<AppliedScale> scales = pair.ranking().scales();
        for (int i = 0; i < scales.size(); i++) {
            AppliedScale scale = scales.get(i);
            Contribution now = behind.contributions().get(i);
            needed(scale, now, gap).map(v -> words(scale, now, v)).ifPresent(values::add);
        }
        return values;
    }

    /** Found by halving, between the value and the end at which nothing more is gained. */
    static Optional<Double> needed(AppliedScale applied, Contribution now, double gap) {
        Scale scale = applied.scale();
        double worth = applied.weight() > 0 ? now.worth() + gap / applied.weight() : 2;
        if (!(worth <= 1) || !Double.isFinite(now.value())) {
            return Optional.empty();
        }
        double less = now.value();
        double enough = scale.best();
        for (int n = 0; n < HALVINGS; n++) {
            double middle = (less + enough) / 2;
            if (scale.worthOf(middle) < worth) {
                less = middle;
            } else {
                enough = middle;
            }
        }
        return Optional.of(enough);
    }

    private String words(AppliedScale scale, Contribution now, double value) {
        CriterionName criterion = criterion(scale.criterion());
        return scale.criterion()
                + " "
                + shown(criterion, value)
                + " instead of "
                + shown(criterion, now.value());
    }

    private static CriterionName criterion(String words) {
        for (CriterionName name : CriterionName.values()) {
            if (name.words().equals(words)) {
                return name;
            }
        }
        throw new IllegalArgumentException("no criterion is called " + words);
    }

    private String shown(CriterionName criterion, double value) {
        return ResultText.value(criterion, value, pair.two().study().heading().currency());
    }
}
