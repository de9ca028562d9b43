package stillturning.report.paper;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stillturning.assess.verdict.Verdict;
import stillturning.report.EventLines;
import stillturning.report.PrintedNames;
import stillturning.report.StoryFacts;
import stillturning.report.StoryPlot;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Room;
import stillturning.report.page.Page.Fact;
import stillturning.story.Story;

/** One failure's story on paper: what happened, what it looked like, what came of it. */
final class StoryBlocks {

    /** So many events are told; those in between are many breakers alike. */
    private static final int EVENTS = 16;

    private static final Room PLOT = new Room(170, 78);

    /** What a reader of paper asks; the page has the rest. */
    private static final Set<String> TOLD =
            Set.of(
                    "but",
                    "first sign",
                    "pilot does",
                    "longest interruption",
                    "restart, the propeller standing still",
                    "note");

    private StoryBlocks() {}

    /**
     * The blocks.
     *
     * @param id prefix of the names inside the plot
     */
    static List<Block> of(String id, String heading, Verdict verdict, PrintedNames labels) {
        Story story = verdict.planned();
        List<EventLines.EventLine> lines = EventLines.of(story);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(heading));
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("what it comes to", VerdictWords.sentence(verdict)));
        StoryFacts.of(verdict).stream()
                .filter(f -> TOLD.contains(f.label()))
                .map(f -> new Fact(f.label(), labels.in(f.value())))
                .forEach(facts::add);
        blocks.add(new Facts(facts));
        blocks.add(
                Grid.of(
                        lines.stream().limit(EVENTS).toList(),
                        List.of(
                                figures("time", 10, EventLines.EventLine::time),
                                figures("no.", 4, line -> String.valueOf(line.number())),
                                words("event", 60, line -> labels.in(line.event())),
                                figures("because of", 6, StoryBlocks::because))));
        if (lines.size() > EVENTS) {
            blocks.add(
                    new Note((lines.size() - EVENTS) + " more events; the plot shows them all."));
        }
        blocks.add(
                new Drawing(
                        StoryPlot.picture(id, labels.of(verdict.failure()), story, labels::in),
                        PLOT));
        return blocks;
    }

    private static String because(EventLines.EventLine line) {
        return line.because() > 0 ? String.valueOf(line.because()) : "";
    }
}
