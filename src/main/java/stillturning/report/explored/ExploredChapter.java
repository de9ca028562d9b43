package stillturning.report.explored;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Room;
import stillturning.report.page.Document.Chapter;

/** What else was looked at, as a chapter of the page and of the document. */
public final class ExploredChapter {

    private static final Room ROOM = new Room(180, 120);

    private ExploredChapter() {}

    /**
     * The chapter: what was found, its picture below the table, how it is made, and what was not
     * looked at.
     */
    public static Chapter of(ExploredFront explored) {
        List<Block> blocks = new ArrayList<>(new FrontBlocks(explored).all());
        if (!explored.front().isEmpty()) {
            blocks.add(2, new Drawing(FrontPicture.of(explored), ROOM));
        }
        return new Chapter("explored", "What else was looked at", blocks);
    }
}
