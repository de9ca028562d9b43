package stillturning.report.explored;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.goal.CriterionName;
import stillturning.report.explored.ExploredFront.ExploredLayout;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;
import stillturning.report.json.JsonType;
import stillturning.report.json.JsonTypes;

/** What a search for simpler layouts found, for other programs. */
public final class FrontJson {

    private record Of(ExploredFront explored, ExploredLayout layout) {}

    private record Value(CriterionName criterion, double value) {}

    private static final JsonType<CriterionName> CRITERION = JsonTypes.word(CriterionName.class);

    private static final JsonShape<Value> VALUE =
            JsonShape.<Value>named("layoutValue")
                    .field("criterion", CRITERION, Value::criterion)
                    .number("value", Value::value)
                    .says("Seconds, kilograms, or the study's currency; null if without limit.");

    private static final JsonShape<Of> LAYOUT =
            JsonShape.<Of>named("foundLayout")
                    .text("id", o -> o.layout.id())
                    .text("from", o -> o.layout.from())
                    .says("Title of the drawing that it is made from.")
                    .texts("changes", o -> o.layout.steps())
                    .says("In their order; none of a drawing as it is.")
                    .maybe(
                            "wrongSizes",
                            JsonTypes.WHOLE,
                            o -> number(o.explored.beside().brokenLimits(), o))
                    .says("Limits of sizes that it breaks; null if it could not be sized.")
                    .maybe(
                            "endingPairs",
                            JsonTypes.WHOLE,
                            o -> number(o.explored.beside().pairs(), o))
                    .says(
                            "Pairs of failures that end its engine, neither alone; null if not"
                                    + " asked.")
                    .list("values", VALUE, o -> values(o.explored, o.layout));

    private static final JsonShape<Of> DRAWING =
            JsonShape.<Of>named("drawing")
                    .text("id", d -> d.layout.id())
                    .flag("onFront", d -> d.explored.isOnFront(d.layout))
                    .texts("missed", d -> d.explored.missed(d.layout))
                    .says("Hard requirements that it misses.")
                    .texts(
                            "outdoneBy",
                            d ->
                                    d.explored.outdoing(d.layout).stream()
                                            .map(ExploredLayout::id)
                                            .toList())
                    .list("values", VALUE, d -> values(d.explored, d.layout));

    private static final JsonShape<Map.Entry<String, Integer>> MISSED =
            JsonShape.<Map.Entry<String, Integer>>named("refusals")
                    .text("requirement", Map.Entry::getKey)
                    .whole("layouts", Map.Entry::getValue);

    /** The document of what was found. */
    public static final JsonDocument<ExploredFront> EXPLORED =
            new JsonDocument<>(
                    "Layouts that nothing outdoes",
                    "What a search from the candidates of a study found, change by change.",
                    JsonDocument.<ExploredFront>start()
                            .text("study", e -> e.assessment().study().id())
                            .field("by", JsonTypes.list(CRITERION), e -> e.by().criteria())
                            .says("What layouts were compared by.")
                            .list(
                                    "front",
                                    LAYOUT,
                                    e -> e.front().stream().map(l -> new Of(e, l)).toList())
                            .list(
                                    "drawings",
                                    DRAWING,
                                    e -> e.drawings().stream().map(d -> new Of(e, d)).toList())
                            .flag("whole", e -> e.search().whole())
                            .says("Whether all within the limit of changes was looked at.")
                            .whole("mostChanges", e -> e.search().mostSteps())
                            .whole("tried", e -> e.search().tally().tried())
                            .whole("met", e -> e.search().tally().met())
                            .says("Layouts that meet every hard requirement.")
                            .list(
                                    "refused",
                                    MISSED,
                                    e -> List.copyOf(e.search().tally().missed().entrySet()))
                            .says("Layouts by the requirement that they were found to miss first.")
                            .whole("outdone", e -> e.search().tally().outdone())
                            .says("Layouts not tried because they cannot be on the front.")
                            .whole("twice", e -> e.search().tally().twice())
                            .whole("undrawable", e -> e.search().tally().refused())
                            .whole("untried", e -> e.search().tally().left())
                            .says("Changes known and not tried."));

    private FrontJson() {}

    private static Optional<Number> number(Map<String, Integer> numbers, Of of) {
        return Optional.ofNullable(numbers.get(of.layout.id()));
    }

    private static List<Value> values(ExploredFront explored, ExploredLayout layout) {
        return Arrays.stream(CriterionName.values())
                .map(c -> new Value(c, explored.value(layout, c)))
                .toList();
    }
}
