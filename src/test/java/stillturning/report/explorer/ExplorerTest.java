package stillturning.report.explorer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import stillturning.assess.Assessment;
import stillturning.report.ReportSamples;
import stillturning.report.explorer.NumberedTexts.NumberedText;
import stillturning.report.html.HtmlPage;
import stillturning.report.html.PageContents;
import stillturning.report.page.ExplorerSection;

class ExplorerTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();
    private static final ExplorerSection SECTION = Explorer.of(ASSESSMENT);

    @Test
    void theSameAssessmentGivesTheSameBytes() {
        assertEquals(SECTION, Explorer.of(ReportSamples.assessment()));
    }

    @Test
    void nothingInTheDataCanEndItsElement() {
        assertFalse(SECTION.data().contains("<") || SECTION.data().contains("&"));
    }

    @Test
    void thePageSaysThatItNeedsAScriptAndStaysWellFormed() throws Exception {
        String text =
                HtmlPage.of(
                        ASSESSMENT,
                        ReportSamples.sources(),
                        new PageContents(
                                Optional.empty(),
                                List.of(),
                                List.of(),
                                Optional.empty(),
                                new PageContents.FrontMatter("", List.of()),
                                List.of(),
                                Optional.of(SECTION),
                                Optional.empty()));
        Document page =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(text)));
        assertEquals(1, page.getElementsByTagName("noscript").getLength());
        assertTrue(text.contains("<section id=\"explore\" hidden=\"hidden\""));
        assertTrue(text.contains("default-src &#39;none&#39;"), text.substring(0, 500));
        assertTrue(text.contains(SECTION.hash()));
    }

    @Test
    void changesNameWhatIsOtherwiseInRuns() {
        assertEquals("", DrawingCode.changes("llll", "llll"));
        assertEquals("d0-2,4f5D7", DrawingCode.changes("lllblldl", "dddbdfdD"));
    }

    @Test
    void aTextIsKeptOnceAndTheMostUsedComesFirst() {
        Map<String, Object> tree =
                NumberedTexts.numbered(
                        Map.of(
                                "all",
                                List.of(
                                        new NumberedText("rare"),
                                        new NumberedText("often"),
                                        new NumberedText("often"))));
        assertEquals(List.of("often", "rare"), tree.get("texts"));
        assertEquals(List.of(1, 0, 0), tree.get("all"));
    }
}
