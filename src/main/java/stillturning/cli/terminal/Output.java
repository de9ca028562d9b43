package stillturning.cli.terminal;

import java.util.List;
import stillturning.report.Cautions;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;

/** Results written to the screen, section by section. */
public final class Output {

    private final CommandContext context;
    private final TerminalColour paint;

    public Output(CommandContext context) {
        this.context = context;
        this.paint = context.colour() ? TerminalColour.ANSI : TerminalColour.NONE;
    }

    public TerminalColour paint() {
        return paint;
    }

    public Output line(String line) {
        context.out().print(line + "\n");
        return this;
    }

    public Output lines(List<String> lines) {
        lines.forEach(this::line);
        return this;
    }

    /** Sentences, broken into lines. */
    public Output paragraph(String text) {
        return paragraph("", text);
    }

    /** Sentences, broken into lines that start under the end of the lead. */
    public Output paragraph(String lead, String text) {
        return line(Paragraph.of(lead, text));
    }

    /** A heading, an empty line above it. */
    public Output section(String heading) {
        return line("").line(paint.on(heading, Ink.STRONG));
    }

    /** What was found about one thing, in lines to stand under its title. */
    public record TitledLines(String title, List<String> lines) {
        public TitledLines {
            lines = List.copyOf(lines);
        }
    }

    /** What was found about some things under a heading; nothing where nothing was found. */
    public void findings(String heading, String meaning, List<TitledLines> findings) {
        List<TitledLines> told = findings.stream().filter(f -> !f.lines.isEmpty()).toList();
        if (!told.isEmpty()) {
            section(heading).paragraph(meaning);
        }
        for (TitledLines finding : told) {
            paragraph("  ", finding.title);
            finding.lines.forEach(line -> paragraph("    ", line));
        }
    }

    /** What stands under everything that may end up in an aircraft. */
    public Output caution() {
        return line("").paragraph(Cautions.SHORT);
    }

    /** An answer: as JSON, or in words with the caution under them. */
    public void answer(Answer answer, boolean json) {
        if (json) {
            raw(answer.json());
        } else {
            answer.print(this);
            caution();
        }
    }

    /** A text as it is. */
    public void raw(String text) {
        context.out().print(text);
    }
}
