package stillturning.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * What the builder lays before a counsellor: two pages that stand alone, the chapters behind them,
 * and cards to cut out. One source of what is set on paper and on the page.
 *
 * @param front the two pages
 * @param cards of the size of a kneeboard, a side each
 */
public record Document(
        Imprint imprint, List<Chapter> front, List<Chapter> chapters, List<Chapter> cards) {

    /**
     * Which document it is.
     *
     * @param about what it is about, in a paragraph
     * @param date as somebody gave it; empty if nobody did
     * @param version of the program
     * @param fingerprint of the files that were read
     * @param caution stands at the foot of every page
     */
    public record Imprint(
            String title,
            String about,
            String date,
            String version,
            String fingerprint,
            String caution) {}

    /** One chapter. */
    public record Chapter(String anchor, String title, List<Block> blocks) {
        public Chapter {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * The same with one more chapter.
     *
     * @param after anchor of the chapter before it; at the end if there is none
     */
    public Document with(Chapter chapter, String after) {
        List<Chapter> more = new ArrayList<>(chapters);
        int at = more.stream().map(Chapter::anchor).toList().indexOf(after);
        more.add(at < 0 ? more.size() : at + 1, chapter);
        return new Document(imprint, front, more, cards);
    }

    public Document {
        front = List.copyOf(front);
        chapters = List.copyOf(chapters);
        cards = List.copyOf(cards);
    }
}
