package stillturning.report.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Standing;
import stillturning.model.goal.ValueScale;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.ResultText;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** From where to where each criterion's values run, and what lies beyond. */
public final class ScaleTexts {

    /** What points are. */
    public static final String METHOD =
            "A criterion's points are its weight times what its value is worth: nothing at"
                    + " \"acceptable\" (as bad as could be accepted) and beyond, half at"
                    + " \"halfway\", everything at \"enough\" (as good as is needed) and beyond."
                    + " No candidate moves a scale. Write your own as \"criteria\" in study.yaml.";

    private final Assessment assessment;
    private final RankingResult ranking;
    private final UnitSystem units;

    /** Texts of a ranked assessment. */
    public ScaleTexts(Assessment assessment, RankingResult ranking, UnitSystem units) {
        this.assessment = assessment;
        this.ranking = ranking;
        this.units = units;
    }

    private record Row(ValueScale scale, double weight) {}

    /** A line for each criterion. */
    public Table<?> table() {
        List<ValueScale> scales = assessment.study().scales();
        List<Row> rows =
                IntStream.range(0, scales.size())
                        .mapToObj(i -> new Row(scales.get(i), ranking.scales().get(i).weight()))
                        .toList();
        return new Table<>(
                List.of(
                        Column.<Row>words("criterion", 36, r -> r.scale.criterion().words()),
                        Column.<Row>figures("weight", 6, r -> Formats.percent(r.weight)),
                        Column.<Row>figures("acceptable", 10, r -> text(r, r.scale.acceptable())),
                        Column.<Row>figures("halfway", 10, r -> text(r, r.scale.middle())),
                        Column.<Row>figures("enough", 10, r -> text(r, r.scale.enough())),
                        Column.<Row>words("from", 36, r -> r.scale.because())),
                rows);
    }

    /** Who lies beyond an end, and so counts as the end; a sentence for each end. */
    public List<String> beyond() {
        List<String> sentences = new ArrayList<>();
        List<ValueScale> scales = assessment.study().scales();
        for (int i = 0; i < scales.size(); i++) {
            ValueScale scale = scales.get(i);
            who(i, Scale.ScalePlace.BEYOND_BEST, scale)
                    .ifPresent(
                            who ->
                                    sentences.add(
                                            scale.criterion().words()
                                                    + ": better than is needed, and counts as "
                                                    + text(scale, scale.enough())
                                                    + ": "
                                                    + who
                                                    + "."));
            who(i, Scale.ScalePlace.BEYOND_WORST, scale)
                    .ifPresent(
                            who ->
                                    sentences.add(
                                            scale.criterion().words()
                                                    + ": worse than could be accepted, and counts"
                                                    + " as "
                                                    + text(scale, scale.acceptable())
                                                    + ": "
                                                    + who
                                                    + "."));
        }
        return List.copyOf(sentences);
    }

    private Optional<String> who(int criterion, Scale.ScalePlace place, ValueScale scale) {
        Scale applied = ranking.scales().get(criterion).scale();
        String names =
                ranking.standings().stream()
                        .filter(s -> applied.placeOf(value(s, criterion)) == place)
                        .map(s -> title(s.name()) + " (" + text(scale, value(s, criterion)) + ")")
                        .collect(Collectors.joining(", "));
        return names.isEmpty() ? Optional.empty() : Optional.of(names);
    }

    private static double value(Standing standing, int criterion) {
        return standing.contributions().get(criterion).value();
    }

    private String text(Row row, double value) {
        return text(row.scale, value);
    }

    private String text(ValueScale scale, double value) {
        return ResultText.value(
                scale.criterion(), value, assessment.study().heading().currency(), units);
    }

    private String title(String candidate) {
        return "\""
                + assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate)
                + "\"";
    }
}
