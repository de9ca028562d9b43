package stillturning.report.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads SVG text back with the parser of the platform. */
public final class XmlText {
    private XmlText() {}

    public static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    public static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    public static List<String> attributes(Document document, String attribute) {
        return elements(document, "*").stream()
                .filter(element -> element.hasAttribute(attribute))
                .map(element -> element.getAttribute(attribute))
                .toList();
    }
}
