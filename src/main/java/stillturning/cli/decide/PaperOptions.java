package stillturning.cli.decide;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.terminal.PaperOption;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.ProgramVersion;
import stillturning.report.paper.PaperContents.Edition;
import stillturning.report.pdf.PaperSize;

/** What is asked of the document on paper. */
final class PaperOptions {

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            description =
                    "Write a document for paper into this file: two pages that stand alone, then"
                            + " the chapters behind them. Without --html no page is written then.")
    private Optional<String> pdf = Optional.empty();

    @Mixin private PaperOption paper = new PaperOption();

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "Date that stands on page and document; none if not given.")
    private Optional<String> date = Optional.empty();

    @Option(
            names = "--stories",
            paramLabel = "N",
            description =
                    "How many stories of the chosen candidate's worst failures the document tells"
                            + " (${DEFAULT-VALUE}).")
    private int stories = Edition.READ;

    /** The file to write, if one was asked for. */
    Optional<String> file() {
        if (pdf.isEmpty() && (paper.isGiven() || stories != Edition.READ)) {
            throw new Refusal("--paper and --stories need --pdf");
        }
        return pdf;
    }

    PaperSize size() {
        return paper.size();
    }

    Edition edition() {
        if (stories < 0) {
            throw new Refusal("--stories " + stories + " is below 0");
        }
        return new Edition(date.map(PaperOptions::day).orElse(""), ProgramVersion.words(), stories);
    }

    private static String day(String written) {
        return parsed(written)
                .map(LocalDate::toString)
                .orElseThrow(
                        () ->
                                new Refusal(
                                        "--date "
                                                + written
                                                + " is no day; write it as 2030-06-15 (ISO"
                                                + " 8601)"));
    }

    private static Optional<LocalDate> parsed(String written) {
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }
}
