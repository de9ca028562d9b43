package stillturning.report.groundtest;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.quantity.UnitSystem;
import stillturning.reliability.groundtest.NotShown;
import stillturning.reliability.groundtest.Stage;
import stillturning.reliability.groundtest.TestStep;
import stillturning.report.groundtest.PlannedTest.AskedReading;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** The tables of a plan. */
public final class GroundTestTables {

    /** To be ticked once what must happen has happened. */
    private static final String BOX = "\u2610";

    /** To write on; the unit stays with it where a line breaks. */
    private static final String BLANK = "____\u00A0";

    private GroundTestTables() {}

    /** Steps to go through with a pencil. */
    static Table<TestStep> steps(PlannedTest test, Stage stage) {
        StepWords said = new StepWords(test);
        return new Table<>(
                List.of(
                        figures("no.", 3, step -> String.valueOf(step.number())),
                        words("do", 20, said::act),
                        words(
                                "must happen",
                                34,
                                step -> said.expected(stage.configuration(), step.expected())),
                        words(
                                "must read",
                                20,
                                step ->
                                        step.readings().stream()
                                                .map(said::reading)
                                                .collect(Collectors.joining("; "))),
                        words(
                                "read",
                                9,
                                step ->
                                        step.readings().stream()
                                                .map(r -> BLANK + StepWords.unit(r.of()))
                                                .collect(Collectors.joining(" "))),
                        words("ok", 2, step -> BOX)),
                stage.steps());
    }

    /**
     * A row for each step and reading, with a cell for what is measured: what a spreadsheet fills
     * in.
     */
    public static Table<AskedReading> form(PlannedTest test) {
        StepWords said = new StepWords(test);
        List<Column<AskedReading>> columns =
                List.of(
                        figures("step", 4, asked -> String.valueOf(asked.step())),
                        words(
                                "aircraft",
                                16,
                                asked -> StepWords.configuration(asked.stage().configuration())),
                        words("do", 30, asked -> act(said, asked)),
                        words("must happen", 40, asked -> expected(said, asked)),
                        words("measure", 20, asked -> asked.reading().at()),
                        words("unit", 4, asked -> StepWords.unit(asked.reading().of())),
                        figures(
                                "predicted",
                                9,
                                asked ->
                                        StepWords.shown(
                                                asked.reading().of(), asked.reading().predicted())),
                        figures("least", 9, asked -> StepWords.least(asked.reading())),
                        figures("most", 9, asked -> StepWords.most(asked.reading())),
                        words("measured", 9, asked -> ""),
                        words("happened", 9, asked -> ""));
        return new Table<>(
                "ground-test",
                "Ground test plan",
                columns,
                test.readings(),
                List.of(),
                UnitSystem.METRIC);
    }

    private static String act(StepWords said, AskedReading asked) {
        return step(asked).map(said::act).orElse("all as in flight");
    }

    private static String expected(StepWords said, AskedReading asked) {
        return step(asked)
                .map(step -> said.expected(asked.stage().configuration(), step.expected()))
                .orElse("");
    }

    private static Optional<TestStep> step(AskedReading asked) {
        return asked.stage().steps().stream()
                .filter(step -> step.number() == asked.step())
                .findFirst();
    }

    /** Every single failure: the steps that show it, or why none does. */
    public static Table<Failing> failures(PlannedTest test) {
        StepWords said = new StepWords(test);
        return new Table<>(
                "ground-test-failures",
                "Which step shows which failure",
                List.of(
                        words("failure", 40, (Failing f) -> said.failure(f.failure())),
                        words("shown by step", 14, Failing::steps),
                        words("why not", 40, Failing::why)),
                Failing.of(test),
                List.of(),
                UnitSystem.METRIC);
    }

    /**
     * A failure, and what shows it.
     *
     * @param steps their numbers; empty for none
     * @param why why none does; empty where one does
     */
    public record Failing(String failure, String steps, String why) {

        static List<Failing> of(PlannedTest test) {
            List<String> shown =
                    test.plan().steps().stream()
                            .flatMap(step -> step.shows().stream())
                            .distinct()
                            .toList();
            return Stream.concat(
                            shown.stream().map(name -> new Failing(name, by(test, name), "")),
                            test.plan().notShown().stream().map(Failing::not))
                    .toList();
        }

        private static String by(PlannedTest test, String failure) {
            return test.plan().steps().stream()
                    .filter(step -> step.shows().contains(failure))
                    .map(step -> String.valueOf(step.number()))
                    .collect(Collectors.joining(", "));
        }

        private static Failing not(NotShown not) {
            return new Failing(
                    not.failure(),
                    "",
                    StepWords.why(not.why())
                            + not.harm().map(h -> ": " + h.part() + " " + h.words()).orElse(""));
        }
    }
}
