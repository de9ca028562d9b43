package stillturning.cli.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Output.TitledLines;
import stillturning.files.ReadStudy;
import stillturning.files.finding.PartPlace;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.Unguarded;
import stillturning.sizing.result.SizeFinding;

/**
 * What is a mistake in a candidate that can be computed all the same: a protector that lets its
 * wire burn. It comes before any answer, and with the exit code of a finding.
 */
public final class Mistakes {

    private final List<TitledLines> findings;

    private Mistakes(List<TitledLines> findings) {
        this.findings = List.copyOf(findings);
    }

    /** Those of a study's candidates. */
    public static Mistakes in(Study study, ReadStudy read) {
        return new Mistakes(
                study.candidates().stream()
                        .map(c -> new TitledLines(c.title(), lines(c, read)))
                        .filter(finding -> !finding.lines().isEmpty())
                        .toList());
    }

    private static List<String> lines(Candidate candidate, ReadStudy read) {
        Map<String, PartPlace> places =
                Optional.ofNullable(read.sizes().places().get(candidate.id())).orElse(Map.of());
        return Unguarded.of(candidate).stream().map(f -> line(candidate, f, places)).toList();
    }

    private static String line(Candidate candidate, SizeFinding f, Map<String, PartPlace> places) {
        String place =
                Optional.ofNullable(places.get(f.part())).map(p -> " (" + p + ")").orElse("");
        return FindingWords.about(candidate, f)
                + place
                + ": "
                + FindingWords.wrong(f)
                + ". Mend: "
                + FindingWords.mend(f);
    }

    /** Prints them and an empty line; nothing where there are none. */
    public void print(Output out) {
        if (findings.isEmpty()) {
            return;
        }
        out.findings(
                "WRONG before anything fails",
                "These wires burn before their protector opens. Mend this before anything else.",
                findings);
        out.line("");
    }

    /** What a command ends with that would end with this code if there were none. */
    public int exitCode(int own) {
        return own == ExitCode.FINE && !findings.isEmpty() ? ExitCode.REQUIREMENT_MISSED : own;
    }

    /** How many candidates have one. */
    public int candidates() {
        return findings.size();
    }
}
