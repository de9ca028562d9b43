package stillturning.cli.size;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.PaperOption;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.PageFile;
import stillturning.dossier.ProgramVersion;
import stillturning.report.Cautions;
import stillturning.report.page.Document.Imprint;
import stillturning.report.pdf.PaperSize;
import stillturning.report.pdf.PdfSetter;
import stillturning.report.sizes.SleeveLabels;
import stillturning.sizing.result.SizingReport;

/** Labels of wires on sheets to print. */
final class LabelOptions {

    @Option(
            names = "--labels",
            paramLabel = "FILE",
            description =
                    "With --candidate: write sheets of labels for both ends of every wire into this"
                            + " PDF, to cut out and put under clear sleeving.")
    private Optional<String> labels = Optional.empty();

    @Mixin private PaperOption paper = new PaperOption();

    /**
     * Refuses what cannot be, before anything is computed.
     *
     * @throws Refusal if so
     */
    void check(boolean oneCandidate) {
        if (labels.isPresent() && !oneCandidate) {
            throw new Refusal("--labels needs --candidate NAME: labels are of one candidate");
        }
        if (labels.isEmpty() && paper.isGiven()) {
            throw new Refusal("--paper needs --labels");
        }
    }

    /**
     * Writes the sheets if somebody asked for them.
     *
     * @return the file's name as it is shown
     */
    Optional<String> written(FoundStudy found, List<SizingReport> reports, CommandContext context) {
        PaperSize size = paper.size();
        return labels.flatMap(
                name ->
                        reports.stream()
                                .findFirst()
                                .map(report -> write(name, imprint(found), report, size, context)));
    }

    private static String write(
            String name,
            Imprint imprint,
            SizingReport report,
            PaperSize size,
            CommandContext context) {
        Path path = context.path(name);
        String shown = context.shown(path);
        PageFile file = new PageFile(path);
        if (file.isAnothers()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with --labels");
        }
        try {
            file.write(PdfSetter.sleeves(SleeveLabels.of(report), imprint, size));
            return shown;
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --labels");
        }
    }

    private static Imprint imprint(FoundStudy found) {
        return new Imprint(
                found.study().heading().title(),
                found.study().heading().about(),
                "",
                ProgramVersion.words(),
                found.read().fingerprint(),
                Cautions.SHORT);
    }
}
