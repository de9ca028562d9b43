package stillturning.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Refusal;
import stillturning.report.guide.Guide;
import stillturning.report.guide.GuidePage;

/** Answers the questions that people ask of the program. */
@Command(
        name = "guide",
        description = "Tell how to ask a question, with an example.",
        footer = {"  stillturning guide", "  stillturning guide how-long"})
final class GuideCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(
            arity = "0..*",
            paramLabel = "WORDS",
            description = "Name of a page, or words to look for; without them all questions.")
    private List<String> words = List.of();

    GuideCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (words.isEmpty()) {
            list(Guide.pages());
            return ExitCode.FINE;
        }
        String asked = String.join(" ", words);
        List<GuidePage> found = Guide.asked(asked);
        if (found.isEmpty()) {
            throw new Refusal(
                    "no page of the guide speaks of \""
                            + asked
                            + "\"; 'stillturning guide' lists the questions");
        }
        if (found.size() == 1) {
            context.out().print(found.get(0).text());
        } else {
            list(found);
        }
        return ExitCode.FINE;
    }

    private void list(List<GuidePage> pages) {
        pages.forEach(
                page ->
                        context.out()
                                .printf(Locale.ROOT, "%-14s %s%n", page.name(), page.question()));
        context.out().println();
        context.out().println("'stillturning guide NAME' shows one of them.");
    }
}
