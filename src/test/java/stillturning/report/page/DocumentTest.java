package stillturning.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.Document.Imprint;

class DocumentTest {

    private static Chapter chapter(String anchor) {
        return new Chapter(anchor, anchor, List.of());
    }

    private static List<String> anchors(Document document) {
        return document.chapters().stream().map(Chapter::anchor).toList();
    }

    @Test
    void aFurtherChapterStandsBehindTheOneThatIsNamedOrElseAtTheEnd() {
        Document document =
                new Document(
                        new Imprint("", "", "", "", "", ""),
                        List.of(),
                        List.of(chapter("loads"), chapter("sizes"), chapter("cautions")),
                        List.of());
        assertEquals(
                List.of("loads", "sizes", "ground-test", "cautions"),
                anchors(document.with(chapter("ground-test"), "sizes")));
        assertEquals(
                List.of("loads", "sizes", "cautions", "ground-test"),
                anchors(document.with(chapter("ground-test"), "nowhere")));
    }
}
