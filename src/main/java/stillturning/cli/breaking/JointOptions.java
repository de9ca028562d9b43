package stillturning.cli.breaking;

import stillturning.cli.joint.Resumption;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What the command line says about failures together and hidden. */
final class JointOptions {

    private static final int USUAL_ORDER = 2;
    private static final int MOST = 3;

    @Option(
            names = "--pairs",
            description =
                    "Every smallest set of events that together end the engine, how likely that is"
                            + " and what it hangs on; and the pair to know. Takes a minute or more.")
    private boolean pairs;

    @Option(
            names = "--order",
            paramLabel = "1|2|3",
            description =
                    "With --pairs: events in a set at most; 2 if not given. With 3 it may take hours.")
    private Optional<Integer> order = Optional.empty();

    @Option(
            names = "--latent",
            description =
                    "Failures of which nobody sees anything: with what else they end the engine,"
                            + " and what reveals them. Takes a minute or more.")
    private boolean latent;

    @Option(
            names = "--causes",
            description =
                    "What fails several parts at once, and what it does; by shape alone, how each"
                            + " thing that the engine needs is supplied.")
    private boolean causes;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description =
                    "With --pairs or --latent: keep finished work in this file, and go on where it"
                            + " stopped.")
    private Optional<String> resume = Optional.empty();

    boolean pairs() {
        return pairs;
    }

    boolean latent() {
        return latent;
    }

    boolean causes() {
        return causes;
    }

    boolean any() {
        return pairs || latent || causes;
    }

    /** Largest sets asked about. */
    int order() {
        return order.orElse(USUAL_ORDER);
    }

    /** Where finished work is kept, if anywhere. */
    Optional<Resumption> kept(FoundStudy found, CommandContext context) {
        return resume.map(file -> Resumption.of(file, found.read().fingerprint(), context));
    }

    /**
     * @throws Refusal if options are given that do not go together
     */
    void refuseWhatContradicts() {
        if ((pairs ? 1 : 0) + (latent ? 1 : 0) + (causes ? 1 : 0) > 1) {
            throw new Refusal("--pairs, --latent and --causes are three questions; ask one");
        }
        if (order.isPresent() && !pairs) {
            throw new Refusal("--order needs --pairs");
        }
        if (resume.isPresent() && !pairs && !latent) {
            throw new Refusal("--resume needs --pairs or --latent");
        }
        if (order() < 1 || order() > MOST) {
            throw new Refusal("sets have 1, 2 or 3 events, so --order " + order() + " is none");
        }
    }
}
