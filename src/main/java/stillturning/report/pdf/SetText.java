package stillturning.report.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The text to be set, with what only paper needs. */
final class SetText {

    /** A word longer than this is broken anywhere, since it fits into no column. */
    private static final Pattern LONG_WORD = Pattern.compile("[^\\s-]{25,}");

    private static final String BROKEN = "word-wrap:break-word";

    private SetText() {}

    static Document of(String text) {
        Document parsed = parsed(text);
        describeDrawings(parsed);
        nameLinks(parsed);
        breakWords(parsed.getDocumentElement());
        return parsed;
    }

    private static Document parsed(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("the document's own text is not well-formed", e);
        }
    }

    /** A drawing is read out by its title and its description. */
    private static void describeDrawings(Document parsed) {
        for (Element svg : elements(parsed, "svg")) {
            String words =
                    first(svg, "title")
                            + (first(svg, "desc").isBlank() ? "" : ". ")
                            + first(svg, "desc");
            svg.setAttribute("alt", words.isBlank() ? "drawing" : words);
        }
    }

    private static String first(Element of, String name) {
        NodeList found = of.getElementsByTagNameNS("*", name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }

    private static void nameLinks(Document parsed) {
        for (Element link : elements(parsed, "a")) {
            if (!link.hasAttribute("title")) {
                link.setAttribute("title", link.getTextContent());
            }
        }
    }

    private static List<Element> elements(Document parsed, String name) {
        NodeList found = parsed.getElementsByTagNameNS("*", name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    /** Said of these alone, since every column that may break its words shrinks to one letter. */
    private static void breakWords(Node node) {
        if (isKept(node)) {
            return;
        }
        NodeList inside = node.getChildNodes();
        for (int i = 0; i < inside.getLength(); i++) {
            Node one = inside.item(i);
            if (one.getNodeType() != Node.TEXT_NODE) {
                breakWords(one);
            } else if (node instanceof Element element
                    && LONG_WORD.matcher(one.getNodeValue()).find()) {
                element.setAttribute("style", element.getAttribute("style") + ";" + BROKEN);
            }
        }
    }

    private static boolean isKept(Node node) {
        String name = node.getNodeName();
        return name.equals("svg") || name.equals("style") || name.equals("title");
    }
}
