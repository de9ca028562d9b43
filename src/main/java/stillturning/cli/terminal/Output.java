package stillturning.cli.terminal;

import java.util.List;
import stillturning.report.Cautions;
import stillturning.report.TerminalColour;
import stillturning.report.TerminalColour.Ink;

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

    /** A heading, an empty line above it. */
    public Output section(String heading) {
        return line("").line(paint.on(heading, Ink.STRONG));
    }

    /** What was found about one thing, line by line below its title. */
    public Output findings(String title, List<String> lines) {
        line(Paragraph.of("  ", title));
        lines.forEach(line -> line(Paragraph.of("    ", line)));
        return this;
    }

    /** What stands under everything that may end up in an aircraft. */
    public Output caution() {
        return line("").line(Paragraph.of("", Cautions.SHORT));
    }

    /** A text as it is. */
    public void raw(String text) {
        context.out().print(text);
    }
}
