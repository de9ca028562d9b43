package stillturning.report.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.XmlText;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

class OneLineTest {

    private static String svg(Diagram diagram) {
        return OneLine.of(diagram).toSvg();
    }

    @Test
    void sameDiagramSameText() {
        assertEquals(svg(Examples.twoBatteries()), svg(Examples.twoBatteries()));
        assertEquals(svg(Examples.grouped()), svg(Examples.grouped()));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("stillturning.report.drawing.layout.LayeredLayoutTest#all")
    void textIsWellFormedAndHoldsEverySymbolAndLineOnce(Diagram diagram) throws Exception {
        Document document = XmlText.parsed(svg(diagram));
        List<String> parts = XmlText.attributes(document, "data-part");
        diagram.symbols()
                .forEach(
                        symbol ->
                                assertEquals(
                                        1,
                                        parts.stream().filter(symbol.id()::equals).count(),
                                        symbol.id()));
        IntStream.range(0, diagram.lines().size())
                .forEach(i -> assertTrue(parts.contains("line " + i), "line " + i));
        assertEquals(diagram.symbols().size() + diagram.lines().size(), parts.size());
    }

    @Test
    void allNamesBeginWithTheIdAndNoneOccursTwice() throws Exception {
        Document document = XmlText.parsed(svg(Examples.afterAFailure()));
        List<String> ids = XmlText.attributes(document, "id");
        assertEquals(ids.size(), new HashSet<>(ids).size());
        assertTrue(ids.stream().allMatch(id -> id.equals("failed") || id.startsWith("failed-")));
        assertTrue(
                XmlText.attributes(document, "class").stream()
                        .allMatch(name -> name.startsWith("failed-")));
        String style = XmlText.elements(document, "style").get(0).getTextContent();
        assertTrue(style.startsWith(".failed-"));
        assertFalse(style.replace("}.failed-", "").contains("}."));
    }

    @Test
    void titleAndDescriptionAreThereForReadersThatSpeak() throws Exception {
        Document document = XmlText.parsed(svg(Examples.oneBattery()));
        Element root = document.getDocumentElement();
        assertEquals("img", root.getAttribute("role"));
        assertEquals("one-title one-desc", root.getAttribute("aria-labelledby"));
        assertEquals(
                "One battery, breakers",
                XmlText.elements(document, "title").get(0).getTextContent());
        assertFalse(XmlText.elements(document, "desc").get(0).getTextContent().isBlank());
    }

    @ParameterizedTest
    @EnumSource(MarkState.class)
    void everyLookButThePlainOnesIsToldByPatternAndBadge(MarkState look) {
        assertEquals(!look.hasBadge(), look.dashes().isEmpty());
        assertEquals(
                !look.hasBadge(),
                new GlyphStrokes(new Point(0, 0), look.colour()).badge(look).isEmpty());
        long alike =
                List.of(MarkState.values()).stream()
                        .filter(MarkState::hasBadge)
                        .filter(other -> other.dashes().equals(look.dashes()))
                        .count();
        assertEquals(look.hasBadge() ? 1 : 0, alike);
    }

    @Test
    void legendExplainsTheLooksThatOccurAndNoOthers() {
        assertTrue(svg(Examples.afterAFailure()).contains(">over-voltage</text>"));
        assertFalse(svg(Examples.twoBatteries()).contains(">over-voltage</text>"));
    }

    @Test
    void hostileTextsAreOnlyText() throws Exception {
        String hostile = "</text><script>\"'&\u0000\u0007\uD800\n]]>";
        List<Port> in = List.of(new Port(hostile, Side.WEST, hostile));
        List<Port> out = List.of(new Port(hostile, Side.EAST, hostile));
        Diagram diagram =
                new Diagram(
                        "hostile",
                        hostile,
                        List.of(
                                new DiagramSymbol(hostile, Glyph.LOAD, hostile, hostile, in),
                                new DiagramSymbol("b", Glyph.BATTERY, hostile, hostile, out)),
                        List.of(new DiagramLine("b", hostile, hostile, hostile, hostile)));
        Document document = XmlText.parsed(svg(diagram));
        assertEquals(0, XmlText.elements(document, "script").size());
        assertEquals(4, XmlText.attributes(document, "data-part").size() + 1);
    }

    @Test
    void anEmptyDiagramIsAnEmptyPicture() throws Exception {
        Document document = XmlText.parsed(svg(new Diagram("none", "", List.of(), List.of())));
        assertEquals(0, XmlText.attributes(document, "data-part").size());
    }

    @Test
    void linesToNowhereAndDoubleNamesAreRefused() {
        List<Port> ports = List.of(new Port("in", Side.WEST));
        DiagramSymbol load = new DiagramSymbol("a", Glyph.LOAD, "", "", ports);
        assertRefused(List.of(load), new DiagramLine("a", "in", "b", "in", ""), "b");
        assertRefused(List.of(load), new DiagramLine("a", "out", "a", "in", ""), "no port out");
        assertRefused(
                List.of(load, load), new DiagramLine("a", "in", "a", "in", ""), "two symbols");
        assertThrows(
                IllegalArgumentException.class,
                () -> new Diagram("1 bad id", "", List.of(), List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new DiagramSymbol(
                                "a", Glyph.LOAD, "", "", List.of(ports.get(0), ports.get(0))));
    }

    private static void assertRefused(List<DiagramSymbol> symbols, DiagramLine line, String words) {
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> new Diagram("d", "", symbols, List.of(line)));
        assertTrue(String.valueOf(refusal.getMessage()).contains(words), words);
    }
}
