package stillturning.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.bench.Bench;
import stillturning.bench.Thorough;
import stillturning.model.EngineLogic;
import stillturning.model.Installation;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Boxes;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.Document.Imprint;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Sleeves;
import stillturning.report.page.Sleeves.Sleeve;
import stillturning.report.sizes.SizeTables;
import stillturning.report.table.Column;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

class PdfSetterTest {

    private static final double POINTS_PER_INCH = 72;
    private static final double MILLIMETRES_PER_INCH = 25.4;

    /** The narrowest margin of a sheet, 9 mm of a card, less what a letter may hang over (pt). */
    private static final double MARGIN = 8.5 / MILLIMETRES_PER_INCH * POINTS_PER_INCH;

    /** Markup, a control character, marks that turn the direction, a lone surrogate, no blank. */
    private static final String HOSTILE =
            "<script>alert(1)</script>&amp;\"'\u0007\u202Eesrever\u2066\uD800" + "x".repeat(300);

    private static Document document(String name, String date) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(name));
        blocks.add(new Words("\u03A9 \u00B5 \u2264 \u2265 \u2192 " + name));
        blocks.add(new Points(List.of(name, "second")));
        blocks.add(new Facts(List.of(new Fact(name, name))));
        blocks.add(new Boxes(List.of(name)));
        blocks.add(
                Grid.of(
                        IntStream.range(0, 120).boxed().toList(),
                        List.of(
                                Column.words("row of the long table", 10, i -> "row " + i),
                                Column.words("name", 10, i -> name),
                                Column.figures("amps", 10, i -> i + ".25"))));
        Imprint imprint = new Imprint(name, "about " + name, date, "v1", "f00d", "A caution.");
        return new Document(
                imprint,
                List.of(new Chapter("front", "Answer", List.of(new Words(name)))),
                List.of(new Chapter("one", "Chapter " + name, blocks)),
                List.of(
                        new Chapter(
                                "card",
                                "Card",
                                List.of(
                                        new Boxes(List.of("Master: on", name)),
                                        new Words("move ".repeat(60) + name)))));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(read);
        }
    }

    @Test
    void nothingInTheStyleSheetIsMisunderstood() {
        List<String> complaints = new ArrayList<>();
        PdfSetter.pdf(document("plain", "2030-06-15"), PaperSize.A4, complaints::add);
        assertEquals(List.of(), complaints);
    }

    @Test
    void theSameDocumentAndDateGiveTheSameBytes() {
        byte[] first = PdfSetter.pdf(document("plain", "2030-06-15"), PaperSize.A4);
        assertArrayEquals(first, PdfSetter.pdf(document("plain", "2030-06-15"), PaperSize.A4));
        byte[] undated = PdfSetter.pdf(document("plain", ""), PaperSize.A4);
        assertArrayEquals(undated, PdfSetter.pdf(document("plain", ""), PaperSize.A4));
    }

    @Test
    void namesAreShownAndNotObeyed() throws IOException {
        String text = text(PdfSetter.pdf(document(HOSTILE, ""), PaperSize.A4));
        assertTrue(text.contains("<script>"), text);
        assertTrue(text.contains("&amp;"), text);
        assertFalse(text.contains("\u202E") || text.contains("\u2066"), text);
        assertTrue(text.contains("esrever"), text);
        String set = PdfSetter.text(document(HOSTILE, ""), PaperSize.A4);
        assertFalse(set.contains("<script>"), set);
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void everyLetterLiesOnThePaper(PaperSize paper) throws IOException {
        assertEquals(List.of(), outside(PdfSetter.pdf(document(HOSTILE, ""), paper)));
    }

    /** Letters that do not lie within their page, less what would be cut by its margin. */
    private static List<String> outside(byte[] pdf) throws IOException {
        List<String> outside = new ArrayList<>();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    boolean inside =
                            letter.getXDirAdj() >= MARGIN
                                    && letter.getXDirAdj() + letter.getWidthDirAdj()
                                            <= letter.getPageWidth() - MARGIN
                                    && letter.getYDirAdj() >= 0
                                    && letter.getYDirAdj() <= letter.getPageHeight();
                    if (!inside && !letter.getUnicode().isBlank()) {
                        outside.add(letter.getUnicode() + " on page " + getCurrentPageNo());
                    }
                    super.processTextPosition(letter);
                }
            }.getText(read);
        }
        return outside;
    }

    // ISO 216: A4 is 210 mm by 297 mm, A5 148 mm by 210 mm; Letter is 8.5 in by 11 in (from memory)
    @Test
    void sheetsHaveTheSizesOfThePaperAndCardsThatOfAKneeboard() throws IOException {
        assertSizes(PaperSize.A4, 210, 297);
        assertSizes(PaperSize.LETTER, 8.5 * MILLIMETRES_PER_INCH, 11 * MILLIMETRES_PER_INCH);
    }

    private static void assertSizes(PaperSize paper, double wide, double high) throws IOException {
        try (PDDocument read = Loader.loadPDF(PdfSetter.pdf(document("plain", ""), paper))) {
            PDPage first = read.getPage(0);
            assertSize(wide, high, first.getMediaBox());
            PDPage last = read.getPage(read.getNumberOfPages() - 1);
            assertSize(148, 210, last.getMediaBox());
        }
    }

    private static void assertSize(double wide, double high, PDRectangle box) {
        assertEquals(wide, box.getWidth() / POINTS_PER_INCH * MILLIMETRES_PER_INCH, 0.1);
        assertEquals(high, box.getHeight() / POINTS_PER_INCH * MILLIMETRES_PER_INCH, 0.1);
    }

    @Test
    void pagesAreCountedAndHeadsOfATableComeBackOnEachOfItsPages() throws IOException {
        try (PDDocument read = Loader.loadPDF(PdfSetter.pdf(document("plain", ""), PaperSize.A4))) {
            int pages = read.getNumberOfPages();
            String text = new PDFTextStripper().getText(read);
            assertTrue(text.contains("page 1 of " + pages), text);
            assertTrue(text.contains("page 3 of " + pages), text);
            int heads = text.split("row of the long table", -1).length - 1;
            assertTrue(heads >= 2, heads + " heads");
            assertTrue(text.contains("\u03A9 \u00B5 \u2264 \u2265 \u2192"), text);
        }
    }

    private static Sleeves labels(String name) {
        return new Sleeves(
                "Candidate",
                IntStream.range(0, 70)
                        .mapToObj(
                                i ->
                                        new Sleeve(
                                                i % 7 == 0 ? name : "wire-" + i,
                                                "AWG 22",
                                                "place " + i + " here",
                                                i % 9 == 0 ? name : "place " + i + " there"))
                        .toList());
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void labelsOfWiresAreWholeOnTheirSheets(PaperSize paper) throws IOException {
        List<String> complaints = new ArrayList<>();
        Imprint imprint = document(HOSTILE, "").imprint();
        String name = "a-wire-with-a-name-that-nobody-would-write-on-a-sleeve-of-any-length";
        byte[] pdf = PdfSetter.sleeves(labels(name), imprint, paper, complaints::add);
        assertEquals(List.of(), complaints);
        assertArrayEquals(pdf, PdfSetter.sleeves(labels(name), imprint, paper));
        assertEquals(List.of(), outside(pdf));
        String text = text(pdf).replaceAll("\\s", "");
        for (int i = 0; i < 70; i++) {
            assertTrue(text.contains("atplace" + i + "here"), i + text);
        }
        assertEquals(10 + 8, text.split(name, -1).length - 1);
        try (PDDocument read = Loader.loadPDF(pdf)) {
            double wide = paper == PaperSize.A4 ? 210 : 8.5 * MILLIMETRES_PER_INCH;
            double high = paper == PaperSize.A4 ? 297 : 11 * MILLIMETRES_PER_INCH;
            assertTrue(read.getNumberOfPages() > 1);
            for (PDPage page : read.getPages()) {
                assertSize(wide, high, page.getMediaBox());
            }
        }
    }

    private static final int LOADS = 100;

    /** 100 loads, each with a breaker and a wire: 300 parts beside battery and bus. */
    private static Bench largeBench() {
        String[] studs =
                IntStream.range(0, LOADS).mapToObj(i -> "stud-" + i).toArray(String[]::new);
        Bench bench = new Bench().battery("battery", 60, 0.005, 1).bus("bus", studs);
        for (int i = 0; i < LOADS; i++) {
            bench.breaker("breaker-" + i, 5)
                    .wire("wire-" + i, 2, 0.03)
                    .load("consumer-" + i, DemandKind.CONSTANT_CURRENT, 0.1, Bench.HARDY)
                    .join("bus", "stud-" + i, "breaker-" + i, "in")
                    .join("breaker-" + i, "out", "wire-" + i, "a")
                    .join("wire-" + i, "b", "consumer-" + i, "plus");
        }
        return bench.join("battery", "plus", "bus", "stud-0")
                .engine(EngineLogic.allOf(List.of(new EngineLogic.One("consumer-0"))), true);
    }

    /** Tables break between rows with their heads again, and the drawing fits its sheet. */
    @Thorough
    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void aCandidateOf300PartsPaginates(PaperSize paper) throws IOException, UntoldStory {
        Bench bench = largeBench();
        SizingReport report =
                Sizing.of(
                        bench.study(),
                        bench.candidate(),
                        Installation.USUAL,
                        SurveyDepth.NOTHING_WRONG);
        List<Block> blocks = new ArrayList<>();
        SizeTables.of(report).forEach(table -> blocks.add(new Block.Grid(table)));
        SizeTables.lists(report).forEach(table -> blocks.add(new Block.Grid(table)));
        blocks.add(
                new Block.Drawing(
                        OneLine.of(CandidateDrawing.of(bench.candidate(), bench.study())),
                        new Block.Room(245, 165)));
        Document large =
                new Document(
                        document("plain", "").imprint(),
                        List.of(),
                        List.of(new Chapter("sizes", "Sizes", blocks)),
                        List.of());
        byte[] pdf = PdfSetter.pdf(large, paper);
        assertEquals(List.of(), outside(pdf));
        String text = text(pdf);
        for (int i = 0; i < LOADS; i++) {
            assertTrue(text.contains("breaker-" + i) && text.contains("wire-" + i), "" + i);
        }
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertTrue(read.getNumberOfPages() > 10, read.getNumberOfPages() + " pages");
        }
    }

    @Test
    void namesOnLabelsAreShownAndNotObeyed() throws IOException {
        Imprint imprint = document("plain", "").imprint();
        byte[] pdf = PdfSetter.sleeves(labels(HOSTILE), imprint, PaperSize.A4);
        assertEquals(List.of(), outside(pdf));
        assertTrue(text(pdf).contains("<script>"));
    }

    // ISO 14289-1 (PDF/UA-1) asks for a structure tree, a language and a title that is shown; ISO
    // 19005-3 (PDF/A-3) for embedded fonts and a part in the metadata (both from memory)
    @Test
    void itIsTaggedNamedAndHasChaptersToGoTo() throws IOException {
        try (PDDocument read =
                Loader.loadPDF(PdfSetter.pdf(document("plain", "2030-06-15"), PaperSize.A4))) {
            assertNotNull(read.getDocumentCatalog().getStructureTreeRoot());
            assertEquals("en", read.getDocumentCatalog().getLanguage());
            assertTrue(read.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            assertEquals(
                    "Answer",
                    read.getDocumentCatalog().getDocumentOutline().getFirstChild().getTitle());
            String metadata =
                    new String(
                            read.getDocumentCatalog().getMetadata().toByteArray(),
                            StandardCharsets.UTF_8);
            assertTrue(metadata.contains("pdfuaid:part"), metadata);
            assertTrue(metadata.contains("<pdfaid:part>3"), metadata);
            assertTrue(metadata.contains("2030-06-15T00:00:00"), metadata);
            for (PDPage page : read.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
            }
        }
    }
}
