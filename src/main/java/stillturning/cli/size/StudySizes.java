package stillturning.cli.size;

import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.dossier.SizedCandidates;

/** Sizes of the candidates of a study, telling how far it is where somebody waits. */
public final class StudySizes {

    private StudySizes() {}

    public static SizedCandidates of(FoundStudy found, CommandContext context) {
        int candidates = found.study().candidates().size();
        try (Progress progress = Progress.over(candidates, "candidates sized", context)) {
            return SizedCandidates.of(
                    found.study(), found.read(), found.study().candidates(), progress);
        }
    }
}
