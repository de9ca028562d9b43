package stillturning.report.joint;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
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

    private static final int SHOWN = 10;

    private LatentSheet() {}

    /**
     * The blocks.
     *
     * @param all whether to list those that do not matter
     */
    public static List<Block> of(CombinedFindings found, boolean all) {
        LatentRemedies hidden = new LatentRemedies(found);
        EventNames names = new EventNames(found.joint().events());
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
            rows(found, all, blocks);
            inspections(hidden, all, blocks);
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

    /** What no check reveals comes first: it is found by looking, or by the next failure. */
    private static void rows(CombinedFindings found, boolean all, List<Block> blocks) {
        EventNames names = new EventNames(found.joint().events());
        LatentRemedies hidden = new LatentRemedies(found);
        List<List<Latent>> groups =
                hidden.thatMatter().values().stream()
                        .sorted(
                                Comparator.comparing(
                                        group -> hidden.check(group.get(0).event()).isPresent()))
                        .toList();
        int shown = all ? groups.size() : Math.min(SHOWN, groups.size());
        blocks.add(
                Grid.of(
                        groups.subList(0, shown),
                        List.of(
                                words("hidden", 32, group -> names.anyOf(events(group))),
                                words(
                                        "ends the engine with",
                                        32,
                                        group -> names.anyOf(group.get(0).with())),
                                words(
                                        "what reveals it",
                                        30,
                                        group -> hidden.remedy(group.get(0).event())))));
        if (shown < groups.size()) {
            blocks.add(
                    new Note(
                            (groups.size() - shown)
                                    + " more rows; break --latent --all lists them."));
        }
    }

    private static List<Integer> events(List<Latent> group) {
        return group.stream().map(Latent::event).toList();
    }

    private static void inspections(LatentRemedies hidden, boolean all, List<Block> blocks) {
        List<String> ways = List.copyOf(hidden.inspected().keySet());
        if (!ways.isEmpty() && !all) {
            blocks.add(new Note(INSPECTING));
        } else if (!ways.isEmpty()) {
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
