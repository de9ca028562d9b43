package stillturning.cli.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillturning.cli.check.StudyCheck.Flying;
import stillturning.cli.size.SizeText;
import stillturning.cli.study.Mistakes;
import stillturning.cli.study.ProblemText;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Output.TitledLines;
import stillturning.files.candidate.Expanded;
import stillturning.files.finding.FileRemark;
import stillturning.files.value.Assumption;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.MoveTexts;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.story.NormalFlight;
import stillturning.yaml.notation.Origin;

/** A check for a person. */
final class CheckText {

    private static final List<Column<Flying>> NORMAL_FLIGHT =
            List.of(
                    Column.<Flying>words("candidate", 30, f -> f.candidate().title())
                            .ink(f -> Ink.STRONG),
                    Column.<Flying>words("engine", 10, CheckText::engine)
                            .ink(f -> f.engineRuns() ? Ink.PLAIN : Ink.ALARM),
                    Column.words("buses", 24, f -> told(f, n -> listed(n.busVolts(), " V"))),
                    Column.words(
                            "sources deliver", 22, f -> told(f, n -> listed(n.sourceAmps(), " A"))),
                    Column.<Flying>words(
                                    "shows although nothing is wrong",
                                    18,
                                    f -> told(f, CheckText::cues))
                            .ink(
                                    f ->
                                            f.normal()
                                                    .filter(n -> !n.cuesShowing().isEmpty())
                                                    .map(n -> Ink.WARNING)
                                                    .orElse(Ink.PLAIN)));

    private final StudyCheck check;
    private final Output out;

    CheckText(StudyCheck check, Output out) {
        this.check = check;
        this.out = out;
    }

    void tell(boolean expanded) {
        check.read().study().ifPresentOrElse(this::sound, this::problems);
        givenUp();
        remarks();
        if (!check.flying().isEmpty()) {
            normalFlight();
            sizes();
            check.read().study().ifPresent(study -> assumptions());
        }
        if (expanded) {
            check.read().expanded().forEach(this::expanded);
        }
        out.caution();
    }

    private void sound(Study study) {
        Mistakes mistakes = check.mistakes(study);
        mistakes.print(out);
        int candidates = study.candidates().size();
        out.line(
                study.heading().title()
                        + (mistakes.candidates() > 0
                                ? ": no other problem in "
                                : ": no problem in ")
                        + candidates
                        + (candidates == 1 ? " candidate" : " candidates"));
    }

    private void problems() {
        out.line(ProblemText.of(check.read().problems()))
                .line("")
                .line(ProblemText.counted(check.read().problems()));
    }

    private void givenUp() {
        out.findings(
                "Given up in normal flight",
                "This flips to and fro without end although nothing fails. Cure it before anything"
                        + " else: every answer of this program is without it.",
                check.flying().stream()
                        .map(f -> new TitledLines(f.candidate().title(), f.givenUp()))
                        .toList());
    }

    private void remarks() {
        if (!check.read().remarks().isEmpty()) {
            out.section("Worth a second look");
            check.read().remarks().stream()
                    .collect(
                            Collectors.groupingBy(
                                    CheckText::said, LinkedHashMap::new, Collectors.toList()))
                    .values()
                    .forEach(alike -> out.paragraph("  ", oneForAll(alike)));
        }
    }

    private static List<String> said(FileRemark remark) {
        return List.of(remark.path(), remark.words());
    }

    /** What is said alike of several files, once. */
    private static String oneForAll(List<FileRemark> alike) {
        String others =
                alike.stream()
                        .skip(1)
                        .map(r -> r.file().getFileName() + ":" + r.line() + ":" + r.column())
                        .collect(Collectors.joining(", "));
        return alike.get(0) + (others.isEmpty() ? "" : "; so at " + others);
    }

    private void normalFlight() {
        out.section("Normal flight, nothing wrong")
                .lines(TextTable.lines(new Table<>(NORMAL_FLIGHT, check.flying()), out.paint()));
        check.flying().stream()
                .filter(flying -> flying.normal().isEmpty())
                .forEach(f -> out.paragraph(f.candidate().id() + ": " + f.reason()));
        StudyAssessment.unwell(
                check.flying().stream()
                        .map(f -> new TitledLines(f.candidate().title(), f.findings()))
                        .toList(),
                out);
        StudyAssessment.nearLimit(
                check.flying().stream()
                        .map(f -> new TitledLines(f.candidate().title(), f.nearLimit()))
                        .toList(),
                out);
        out.findings(
                MoveTexts.HEADING,
                MoveTexts.MEANING,
                check.flying().stream()
                        .map(
                                f ->
                                        new TitledLines(
                                                f.candidate().title(),
                                                MoveTexts.findings(
                                                        f.candidate(),
                                                        f.drill().stream().toList())))
                        .toList());
    }

    private void sizes() {
        SizeText text = new SizeText(check.read(), out);
        out.findings(
                "Sizes that break a limit, with nothing wrong",
                "Command size shows the rest, and what failures add.",
                check.sizes().stream()
                        .map(sized -> new TitledLines(sized.candidate().title(), text.wrong(sized)))
                        .toList());
    }

    private static String engine(Flying flying) {
        return flying.normal().map(n -> n.engineRuns() ? "runs" : "STOPS").orElse("not found");
    }

    private static String told(Flying flying, Function<NormalFlight, String> words) {
        return flying.normal().map(words).orElse("");
    }

    private static String cues(NormalFlight normal) {
        return normal.cuesShowing().isEmpty() ? "nothing" : String.join(", ", normal.cuesShowing());
    }

    // a space that does not break keeps number and unit on one line
    private static String listed(Map<String, Double> values, String unit) {
        return new TreeMap<>(values)
                .entrySet().stream()
                        .map(e -> e.getKey() + "\u00a0" + Formats.fixed(e.getValue(), 1) + unit)
                        .collect(Collectors.joining(", "));
    }

    private void assumptions() {
        List<Assumption> all = check.read().assumptions();
        out.section("Where the " + all.size() + " values come from");
        for (Origin origin : Origin.values()) {
            List<Assumption> of = all.stream().filter(a -> a.origin() == origin).toList();
            out.line(String.format(Locale.ROOT, "  %5d  %s", of.size(), words(origin, of)));
        }
        guesses(all.stream().filter(a -> a.origin() == Origin.GUESSED).toList());
    }

    private void guesses(List<Assumption> guesses) {
        List<Column<Assumption>> columns =
                List.of(
                        Column.<Assumption>words("guessed in", 32, Assumption::file).once(),
                        Column.words("at", 40, Assumption::path),
                        Column.words("value", 24, Assumption::text));
        if (!guesses.isEmpty()) {
            out.line("").lines(TextTable.lines(new Table<>(columns, guesses), out.paint()));
        }
    }

    private static String words(Origin origin, List<Assumption> of) {
        if (origin == Origin.CATALOGUE) {
            long guesses = of.stream().filter(Assumption::isGuess).count();
            return origin.words() + " (" + guesses + " of them guesses)";
        }
        return origin == Origin.STATED ? "stated without a source" : origin.words();
    }

    private void expanded(String candidate, List<Expanded> lines) {
        out.section(candidate + ": what its lines became");
        for (Expanded line : lines) {
            out.line("  " + line.path());
            for (Expanded.ExpandedPart made : line.parts()) {
                out.line("    " + made.id() + " (" + made.kind() + ")");
                if (!made.values().isEmpty()) {
                    out.paragraph("      ", String.join(", ", made.values()));
                }
            }
        }
    }
}
