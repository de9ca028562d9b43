package stillturning.report.export;

import java.util.LinkedHashMap;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.parts.Part;
import stillturning.report.page.Printable;

/**
 * A candidate as GraphML.
 *
 * @see "GraphML 1.0, graphml.graphdrawing.org, from memory"
 */
public final class GraphMl {

    private static final String HEAD =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <graphml xmlns="http://graphml.graphdrawing.org/xmlns">
            <key id="what" for="node" attr.name="what" attr.type="string"/>
            <key id="name" for="node" attr.name="name" attr.type="string"/>
            <key id="label" for="node" attr.name="label" attr.type="string"/>
            <key id="kind" for="node" attr.name="kind" attr.type="string"/>
            <key id="zone" for="node" attr.name="zone" attr.type="string"/>
            <key id="mass" for="node" attr.name="mass_kg" attr.type="double"/>
            <key id="terminal" for="edge" attr.name="terminal" attr.type="string"/>
            """;

    private final Candidate candidate;
    private final Circuit circuit;
    private final StringBuilder text = new StringBuilder(HEAD);

    private GraphMl(Candidate candidate) {
        this.candidate = candidate;
        this.circuit = candidate.circuit();
    }

    /** Its text; the same candidate, the same text. */
    public static String of(Candidate candidate) {
        return new GraphMl(candidate).text();
    }

    private String text() {
        text.append("<graph id=\"")
                .append(escaped(candidate.id()))
                .append("\" edgedefault=\"undirected\">\n");
        for (int net = 0; net < circuit.nets(); net++) {
            vertex("net-" + net, Map.of("what", net == 0 ? "structure" : "net"));
        }
        Map<String, String> vertices = new LinkedHashMap<>();
        for (Part part : candidate.parts()) {
            String vertex = "part-" + vertices.size();
            vertices.put(part.id(), vertex);
            vertex(vertex, said(part));
        }
        circuit.netOf()
                .forEach((terminal, net) -> edge(vertices, terminal.part(), terminal.name(), net));
        return text.append("</graph>\n</graphml>\n").toString();
    }

    private static Map<String, String> said(Part part) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put("what", "part");
        said.put("name", part.id());
        said.put("label", part.tag().label());
        said.put("kind", part.kind().name());
        said.put("zone", part.tag().zone());
        said.put("mass", String.valueOf(part.tag().burden().kilograms()));
        return said;
    }

    private void vertex(String id, Map<String, String> said) {
        text.append("<node id=\"").append(id).append("\">");
        said.forEach(
                (key, value) ->
                        text.append("<data key=\"")
                                .append(key)
                                .append("\">")
                                .append(escaped(value))
                                .append("</data>"));
        text.append("</node>\n");
    }

    private void edge(Map<String, String> vertices, String part, String terminal, int net) {
        String vertex = vertices.get(part);
        if (vertex != null) {
            text.append("<edge source=\"")
                    .append(vertex)
                    .append("\" target=\"net-")
                    .append(net)
                    .append("\"><data key=\"terminal\">")
                    .append(escaped(terminal))
                    .append("</data></edge>\n");
        }
    }

    private static String escaped(String words) {
        return Printable.of(words)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
