package stillturning.cli.terminal;

import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.report.pdf.PaperSize;

/** The paper that something is printed on. */
public final class PaperOption {

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "Paper of the document: a4 (usual) or letter.")
    private Optional<String> paper = Optional.empty();

    /** Whether somebody named one. */
    public boolean isGiven() {
        return paper.isPresent();
    }

    /**
     * The paper, A4 if nobody named one.
     *
     * @throws Refusal if it is none that is known
     */
    public PaperSize size() {
        return paper.map(
                        words ->
                                PaperSize.named(words)
                                        .orElseThrow(
                                                () ->
                                                        new Refusal(
                                                                "--paper "
                                                                        + words
                                                                        + " is no paper that is"
                                                                        + " known: a4 or letter")))
                .orElse(PaperSize.A4);
    }
}
