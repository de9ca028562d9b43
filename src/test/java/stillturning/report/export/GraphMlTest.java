package stillturning.report.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import stillturning.model.Candidate;
import stillturning.report.ReportSamples;

class GraphMlTest {

    private static final Candidate CANDIDATE =
            ReportSamples.assessment().study().candidates().get(0);

    private static Document read(String text) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)));
    }

    @Test
    void everyPartAndTerminalIsReadBack() throws Exception {
        Document graph = read(GraphMl.of(CANDIDATE));
        int vertices = graph.getElementsByTagName("node").getLength();
        assertEquals(CANDIDATE.parts().size() + CANDIDATE.circuit().nets(), vertices);
        assertEquals(
                CANDIDATE.circuit().netOf().size(), graph.getElementsByTagName("edge").getLength());
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < vertices; i++) {
            ids.add(((Element) graph.getElementsByTagName("node").item(i)).getAttribute("id"));
        }
        assertEquals(vertices, ids.size());
        for (int i = 0; i < graph.getElementsByTagName("edge").getLength(); i++) {
            Element edge = (Element) graph.getElementsByTagName("edge").item(i);
            assertTrue(ids.contains(edge.getAttribute("source")), edge.getAttribute("source"));
            assertTrue(ids.contains(edge.getAttribute("target")), edge.getAttribute("target"));
        }
    }

    @Test
    void namesBreakNothing() throws Exception {
        Candidate hostile =
                new Candidate(
                        "<&\">\u0007\u202E",
                        "title",
                        "",
                        CANDIDATE.parts(),
                        CANDIDATE.joins(),
                        CANDIDATE.cockpit());
        Element graph = (Element) read(GraphMl.of(hostile)).getElementsByTagName("graph").item(0);
        assertTrue(graph.getAttribute("id").startsWith("<&\">"), graph.getAttribute("id"));
    }
}
