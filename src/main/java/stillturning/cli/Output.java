package stillturning.cli;

import java.util.List;
import stillturning.report.Cautions;
import stillturning.report.TerminalColour;
import stillturning.report.TerminalColour.Ink;

/** Results written to the screen, section by section. */
final class Output {

    private final CommandContext around;
    private final TerminalColour paint;

    Output(CommandContext around) {
        this.around = around;
        this.paint = around.colour() ? TerminalColour.ANSI : TerminalColour.NONE;
    }

    TerminalColour paint() {
        return paint;
    }

    Output line(String line) {
        around.out().print(line + "\n");
        return this;
    }

    Output lines(List<String> lines) {
        lines.forEach(this::line);
        return this;
    }

    /** A heading, an empty line above it. */
    Output section(String heading) {
        return line("").line(paint.on(heading, Ink.STRONG));
    }

    /** What was found about one thing, line by line below its title. */
    Output findings(String title, List<String> lines) {
        line(Paragraph.of("  ", title));
        lines.forEach(line -> line(Paragraph.of("    ", line)));
        return this;
    }

    /** What stands under everything that may end up in an aircraft. */
    Output caution() {
        return line("").line(Paragraph.of("", Cautions.SHORT));
    }

    /** A text as it is. */
    void raw(String text) {
        around.out().print(text);
    }
}
