package stillturning.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.cli.StudyCheck.Flying;
import stillturning.files.Assumption;
import stillturning.files.Expanded;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.NormalFlightTexts;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
import stillturning.sizing.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.yaml.notation.Origin;

/** A check for a person. */
final class CheckText {

    private final StudyCheck check;
    private final Output out;

    CheckText(StudyCheck check, Output out) {
        this.check = check;
        this.out = out;
    }

    void tell(boolean expanded) {
        check.read().study().ifPresentOrElse(this::sound, this::problems);
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
        int candidates = study.candidates().size();
        out.line(
                study.heading().title()
                        + ": no problem in "
                        + candidates
                        + (candidates == 1 ? " candidate" : " candidates"));
    }

    private void problems() {
        out.line(ProblemText.of(check.read().problems()))
                .line("")
                .line(ProblemText.counted(check.read().problems()));
    }

    private void remarks() {
        if (!check.read().remarks().isEmpty()) {
            out.section("Worth a second look");
            check.read().remarks().forEach(r -> out.line(Paragraph.of("  ", r.toString())));
        }
    }

    private void normalFlight() {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", 30),
                                Column.words("engine", 10),
                                Column.words("buses", 24),
                                Column.words("sources deliver", 22),
                                Column.words("shows although nothing is wrong", 18)));
        check.flying().forEach(flying -> table.row(row(flying)));
        out.section("Normal flight, nothing wrong").lines(table.lines(out.paint()));
        check.flying().stream()
                .filter(flying -> flying.normal().isEmpty())
                .forEach(f -> out.line(Paragraph.of("", f.candidate().id() + ": " + f.reason())));
        unwell();
    }

    private void unwell() {
        List<Flying> unwell = check.flying().stream().filter(f -> !f.findings().isEmpty()).toList();
        if (!unwell.isEmpty()) {
            out.section("Unwell with nothing wrong")
                    .line(Paragraph.of("", NormalFlightTexts.MEANING));
            unwell.forEach(f -> out.findings(f.candidate().title(), f.findings()));
        }
    }

    private void sizes() {
        List<SizingReport> wrong =
                check.sizes().stream().filter(report -> report.wrong() > 0).toList();
        if (!wrong.isEmpty()) {
            out.section("Sizes that break a limit, with nothing wrong")
                    .line(Paragraph.of("", "Command size shows the rest, and what failures add."));
            SizeText text = new SizeText(check.read(), out);
            wrong.forEach(r -> out.findings(r.candidate().title(), text.wrong(r)));
        }
    }

    private static List<Cell> row(Flying flying) {
        Candidate candidate = flying.candidate();
        Cell title = new Cell(candidate.title(), Ink.STRONG);
        if (flying.normal().isEmpty()) {
            Cell none = new Cell("");
            return List.of(title, new Cell("not found", Ink.ALARM), none, none, none);
        }
        NormalFlight normal = flying.normal().get();
        return List.of(
                title,
                normal.engineRuns() ? new Cell("runs") : new Cell("STOPS", Ink.ALARM),
                new Cell(listed(normal.busVolts(), " V")),
                new Cell(listed(normal.sourceAmps(), " A")),
                normal.cuesShowing().isEmpty()
                        ? new Cell("nothing")
                        : new Cell(String.join(", ", normal.cuesShowing()), Ink.WARNING));
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
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("guessed in", 32),
                                Column.words("at", 40),
                                Column.words("value", 24)));
        String above = "";
        for (Assumption guess : guesses) {
            String file = guess.file().equals(above) ? "" : guess.file();
            table.row(List.of(new Cell(file), new Cell(guess.path()), new Cell(guess.text())));
            above = guess.file();
        }
        if (!guesses.isEmpty()) {
            out.line("").lines(table.lines(out.paint()));
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
            for (Expanded.Made made : line.parts()) {
                out.line("    " + made.id() + " (" + made.kind() + ")");
                if (!made.values().isEmpty()) {
                    out.line(Paragraph.of("      ", String.join(", ", made.values())));
                }
            }
        }
    }
}
