package stillturning.report.pair;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Words;

/** What an electronic controller does for which load, and what it brings along. */
final class ControllerWords {

    private static final int NAMED = 12;
    private static final String UNUSED = "unused";

    /** A function of a controller. */
    private record Row(String function, String use) {}

    private ControllerWords() {}

    /**
     * @param currency code of the prices
     */
    static List<Block> of(ControllerUse use, Appraisal appraisal, String currency) {
        return List.of(
                new Heading(
                        "What "
                                + use.controller().id()
                                + " does in \""
                                + appraisal.candidate().title()
                                + "\""),
                Grid.of(
                        functions(use),
                        List.of(words("function", 26, Row::function), words("for", 68, Row::use))),
                new Words(brings(use, appraisal, currency)),
                new Words(bypassed(use)));
    }

    /** Functions that nothing makes use of, as one sentence. */
    static Optional<String> unused(ControllerUse use) {
        List<String> idle =
                functions(use).stream()
                        .filter(row -> row.use().equals(UNUSED))
                        .map(Row::function)
                        .toList();
        return idle.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Functions of "
                                + use.controller().id()
                                + " that nothing makes use of here, and that would have to be worth"
                                + " it: "
                                + String.join(", ", idle)
                                + ".");
    }

    private static List<Row> functions(ControllerUse use) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("switching", list(use.served())));
        rows.add(
                new Row(
                        "protection, limits by program",
                        new TreeMap<>(use.byRating())
                                .entrySet().stream()
                                        .map(
                                                e ->
                                                        Formats.amps(e.getKey())
                                                                + ": "
                                                                + list(e.getValue()))
                                        .collect(Collectors.joining("; "))));
        rows.add(new Row("stays on without its logic", list(use.onByDefault())));
        rows.add(new Row("switched in a procedure", list(use.switchedInFlight())));
        rows.add(new Row("load shedding by itself", list(use.shedByItself())));
        rows.add(new Row("telling the pilot, status", list(use.watched())));
        return rows;
    }

    private static String list(List<String> names) {
        return names.isEmpty() ? UNUSED : PairBlocks.some(names, NAMED);
    }

    private static String brings(ControllerUse use, Appraisal appraisal, String currency) {
        String id = use.controller().id() + ": ";
        List<Verdict> own =
                appraisal.singles().stream()
                        .filter(v -> v.failure().name().startsWith(id))
                        .toList();
        String worst =
                own.stream()
                        .min((a, b) -> a.outcome().compareTo(b.outcome()))
                        .map(
                                v ->
                                        "; the worst is "
                                                + v.failure().name()
                                                + ": "
                                                + v.outcome().words())
                        .orElse("");
        return "It weighs "
                + Formats.mass(use.controller().tag().burden().kilograms(), UnitSystem.METRIC)
                + " and costs "
                + Formats.fixed(use.controller().tag().burden().price(), 0)
                + " "
                + currency
                + "; its "
                + use.byRating().values().stream().mapToInt(List::size).sum()
                + " lines share one supply and "
                + (use.controller().logics() == 1
                        ? "one logic with its program"
                        : use.controller().logics() + " logics with their programs")
                + ". It has "
                + own.size()
                + " single failures"
                + worst
                + ".";
    }

    private static String bypassed(ControllerUse use) {
        return use.bypassing().isEmpty()
                ? "All that the engine needs hangs on it."
                : "The engine is kept off it: "
                        + PairBlocks.some(use.bypassing(), NAMED)
                        + " get nothing of these functions; what protects and switches them comes"
                        + " beside it.";
    }
}
