package stillturning.report.joint;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import stillturning.reliability.runup.Latent;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** One candidate's failures of which nobody sees anything. */
public final class LatentSheet {

    /** What is meant; stands once above them. */
    public static final String MEANING =
            "A latent failure is one of which the pilot sees nothing from the start of the engine to"
                    + " the landing. It matters if one more failure, or one event that takes several"
                    + " parts, then ends the engine. Checks are those of the run-up card.";

    static final String INSPECTING =
            "How to inspect is common practice, with no published source; how often follows from"
                    + " rates that are mostly recalled or guessed. The parts' own instructions come"
                    + " first.";

    private LatentSheet() {}

    /**
     * The blocks.
     *
     * @param all whether to list those that do not matter
     */
    public static List<Block> of(CombinedFindings found, boolean all) {
        EventNames names = new EventNames(found.joint().events());
        LatentRemedies hidden = new LatentRemedies(found);
        List<Latent> idle =
                found.card().latents().stream().filter(latent -> !latent.matters()).toList();
        List<Latent> matter = found.card().thatMatter();
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Words(
                        found.card().latents().size()
                                + " failures are latent; "
                                + matter.size()
                                + " of them end the engine with one more, and "
                                + matter.stream()
                                        .filter(l -> hidden.check(l.event()).isEmpty())
                                        .count()
                                + " of these no check reveals."));
        if (!matter.isEmpty()) {
            blocks.add(
                    Grid.of(
                            List.copyOf(hidden.thatMatter().values()),
                            List.of(
                                    words(
                                            "hidden",
                                            38,
                                            group ->
                                                    names.anyOf(
                                                            group.stream()
                                                                    .map(Latent::event)
                                                                    .toList())),
                                    words(
                                            "ends the engine with",
                                            42,
                                            group -> names.anyOf(group.get(0).with())),
                                    words(
                                            "revealed by",
                                            12,
                                            group -> hidden.revealedBy(group.get(0).event())))));
            inspections(hidden, blocks);
        }
        if (all && !idle.isEmpty()) {
            blocks.add(new Heading("Latent, but no single further failure ends the engine"));
            blocks.add(new Points(idle.stream().map(latent -> names.of(latent.event())).toList()));
        } else if (!idle.isEmpty()) {
            blocks.add(
                    new Note(
                            idle.size()
                                    + " more are latent and end nothing with one more; break --latent --all lists"
                                    + " them."));
        }
        return List.copyOf(blocks);
    }

    private static void inspections(LatentRemedies hidden, List<Block> blocks) {
        List<String> ways = List.copyOf(hidden.inspected().keySet());
        if (!ways.isEmpty()) {
            blocks.add(new Heading("How to look for what no check reveals"));
            List<String> lettered = new ArrayList<>();
            for (int i = 0; i < ways.size(); i++) {
                lettered.add((char) ('a' + i) + ": " + ways.get(i));
            }
            blocks.add(new Points(lettered));
            blocks.add(new Note(INSPECTING));
        }
    }
}
