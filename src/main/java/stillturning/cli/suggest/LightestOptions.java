package stillturning.cli.suggest;

import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.Tally;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.KeptChanges;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.dossier.suggest.LightestFound;
import stillturning.files.edit.ChangeRefused;
import stillturning.model.Candidate;

/** What is asked about every trouble at once. */
final class LightestOptions {

    @Option(
            names = "--lightest",
            description =
                    "For each hard requirement that is missed, and each single failure that loses"
                            + " the engine, the lightest change alone; of every candidate where none"
                            + " is named. --most and --minutes are of each candidate.")
    private boolean lightest;

    @Option(
            names = "--keep",
            paramLabel = "FILE",
            description =
                    "With --lightest: keep what is found in this file, for --again and explain"
                            + " --mends.")
    private Optional<String> keep = Optional.empty();

    @Option(
            names = "--again",
            paramLabel = "FILE",
            description =
                    "Look for nothing: tell what --lightest --keep has kept in this file, each"
                            + " change assessed again.")
    private Optional<String> again = Optional.empty();

    /** Whether every trouble is asked about. */
    boolean asked() {
        return lightest || again.isPresent();
    }

    /**
     * Refuses, before anything is computed, what cannot be done.
     *
     * @throws Refusal if the file to keep it in holds something else
     */
    void claim(CommandContext context) {
        if (keep.isPresent() && !asked()) {
            throw new Refusal("--keep keeps what --lightest finds; add --lightest");
        }
        keep.ifPresent(file -> KeptChanges.claim(file, context));
    }

    /**
     * What is found, or was.
     *
     * @param found the study with the candidates that are asked about
     */
    LightestAnswer answer(
            FoundStudy found,
            SearchLimits limits,
            Optional<Integer> minutes,
            CommandContext context) {
        LightestFound all =
                again.map(file -> KeptChanges.again(file, found, context))
                        .orElseGet(() -> looked(found, limits, minutes, context));
        return new LightestAnswer(
                all.mends(), keep.map(file -> KeptChanges.keep(file, all, found, context)));
    }

    private static LightestFound looked(
            FoundStudy found,
            SearchLimits limits,
            Optional<Integer> minutes,
            CommandContext context) {
        try (Progress progress = Progress.telling(context)) {
            return new LightestChanges(found.reader(), found.read())
                    .of(
                            found.study().candidates(),
                            limits,
                            candidate ->
                                    new Clock(
                                            minutes, done -> progress.tell(told(candidate, done))));
        } catch (ChangeRefused e) {
            throw new Refusal(e.why());
        }
    }

    private static String told(Candidate candidate, Tally done) {
        return candidate.id()
                + ": "
                + done.tried()
                + " drawings looked at, "
                + done.met()
                + (done.met() == 1 ? " mends" : " mend")
                + " something";
    }
}
