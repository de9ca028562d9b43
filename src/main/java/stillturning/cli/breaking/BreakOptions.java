package stillturning.cli.breaking;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.verdict.Outcome;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.JointSearch;
import stillturning.story.Pilot;

/** What the command line says about failures. */
final class BreakOptions {

    /** Events in a set at most. */
    private static final int MOST = 3;

    @Option(
            names = "--failure",
            paramLabel = "WORDS",
            description =
                    "A part, a part and how it fails, \"charging lost\", \"master off\", or what"
                            + " takes several parts (\"heat in engine\"). Given twice or more: all"
                            + " of them at once.")
    List<String> failures = List.of();

    @Option(
            names = "--pilot",
            paramLabel = "planned|late|never",
            description =
                    "With --failure: the pilot keeps to the procedures (planned, if not given),"
                            + " takes three times as long (late), or does nothing (never)."
                            + " --json tells of all three.")
    Optional<Pilot> pilot = Optional.empty();

    @Option(
            names = "--ranges",
            description =
                    "With --failure: also say how sure the endurance is, every"
                            + " value being anywhere in its range, and which values it hangs on.")
    boolean ranges;

    @Option(
            names = "--pairs",
            description =
                    "Every smallest set of events that together end the engine, how likely that is"
                            + " and what it hangs on; and the pair to know. Takes a minute or more.")
    boolean pairs;

    @Option(
            names = "--order",
            paramLabel = "1|2|3",
            description =
                    "With --pairs: events in a set at most; 2 if not given. With 3 it may take hours.")
    Optional<Integer> order = Optional.empty();

    @Option(
            names = "--latent",
            description =
                    "Failures of which nobody sees anything: with what else they end the engine,"
                            + " and what reveals them. Takes a minute or more.")
    boolean latent;

    @Option(
            names = "--causes",
            description =
                    "What fails several parts at once, and what it does; by shape alone, how each"
                            + " thing that the engine needs is supplied.")
    boolean causes;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description =
                    "With --pairs or --latent: keep finished work in this file, and go on where it"
                            + " stopped.")
    Optional<String> resume = Optional.empty();

    @Option(
            names = "--plot",
            paramLabel = "FILE.svg|FILE.png",
            description =
                    "With --failure: draw the story into this file, replacing it; several stories"
                            + " into FILE-1, FILE-2 and so on. The numbers in the picture are those"
                            + " of the events as printed.")
    Optional<String> plot = Optional.empty();

    @Option(
            names = "--in",
            paramLabel = "PHASE",
            description =
                    "With --failure: let it come as this phase of the flight begins, and fly the"
                            + " rest of the flight.")
    Optional<String> phase = Optional.empty();

    @Option(
            names = "--every-phase",
            description =
                    "With --failure: let it come at every moment of the flight, as a table. Without:"
                            + " every failure that does worse elsewhere in the flight.")
    boolean everyPhase;

    @Option(
            names = "--cases",
            description =
                    "Only the cases that the study names, for each candidate: what they do, how"
                            + " long the engine runs with each kind of pilot, by when he must act.")
    boolean cases;

    @Option(
            names = "--all",
            description =
                    "Without --failure: list also what else is only counted, such as failures that"
                            + " leave the engine running.")
    boolean all;

    /** Largest sets asked about. */
    int largestSets() {
        return order.orElse(JointSearch.PAIRS);
    }

    /**
     * @throws Refusal if the sets asked about are too large, or none
     */
    void refuseOtherSets() {
        if (largestSets() < 1 || largestSets() > MOST) {
            throw new Refusal(
                    "sets have 1, 2 or 3 events, so --order " + largestSets() + " is none");
        }
    }

    /** The mildest outcome that is listed and not only counted. */
    Outcome mildest() {
        return all ? Outcome.NO_EFFECT : Outcome.INTERRUPTED;
    }
}
