package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.files.finding.PartPlace;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;

class ResizingTest {

    private static final Path FILE = Path.of("one.yaml");

    private static final String TEXT =
            """
            # mine
            parts:
              tail-wire: {is: wire, gauge: AWG 22, length: 1 m}   # measured twice
              bare-wire: {is: wire, length: 1 m}
              panel-breaker: {is: breaker, rating: 5 A}
            links:
              lead: from battery to bus, fuse 40 A class high-current, wire AWG 8 1.2 m (measured), via j1, wire
            feeds:
              radio: from bus, breaker 5 A (guess), return tail-ground
            """;

    private static PartPlace at(String path, String item) {
        int offset = 0;
        if (!item.isEmpty()) {
            String line =
                    TEXT.lines()
                            .filter(
                                    l ->
                                            l.contains(
                                                    path.substring(path.indexOf('.') + 1)
                                                            + ": from"))
                            .findFirst()
                            .orElseThrow();
            offset = line.indexOf(item) - line.indexOf("from");
        }
        return new PartPlace(FILE, 1, 1, path, offset);
    }

    private static String resized(
            Map<String, PartPlace> places, Map<String, String> awg, Map<String, Double> amps)
            throws EditRefused {
        return new Resizing(YamlDocument.of(FILE, TEXT), places).with(awg, amps).text();
    }

    @Test
    void aWireThatIsAPartGetsItsGaugeInPlaceOrAdded() throws EditRefused {
        String text =
                resized(
                        Map.of(
                                "tail-wire", at("parts.tail-wire", ""),
                                "bare-wire", at("parts.bare-wire", "")),
                        Map.of("tail-wire", "18", "bare-wire", "00"),
                        Map.of());
        assertEquals(
                TEXT.replace("gauge: AWG 22", "gauge: AWG 18")
                        .replace("length: 1 m}\n  panel", "length: 1 m, gauge: AWG 2/0}\n  panel"),
                text);
    }

    @Test
    void wiresInARunKeepLengthAndOrigin() throws EditRefused {
        String text =
                resized(
                        Map.of(
                                "lead-wire",
                                at("links.lead", "wire AWG"),
                                "lead-wire-2",
                                new PartPlace(FILE, 1, 1, "links.lead", last())),
                        Map.of("lead-wire", "6", "lead-wire-2", "10"),
                        Map.of());
        assertEquals(
                TEXT.replace(
                        "wire AWG 8 1.2 m (measured), via j1, wire\n",
                        "wire AWG 6 1.2 m (measured), via j1, wire AWG 10\n"),
                text);
    }

    private static int last() {
        String line = TEXT.lines().filter(l -> l.contains("lead: from")).findFirst().orElseThrow();
        return line.lastIndexOf("wire") - line.indexOf("from");
    }

    @Test
    void aWireThatNobodyWroteStandsBeforeTheReturn() throws EditRefused {
        String text =
                resized(
                        Map.of("radio-wire", at("feeds.radio", "")),
                        Map.of("radio-wire", "20"),
                        Map.of());
        assertEquals(
                TEXT.replace(", return tail-ground", ", wire AWG 20, return tail-ground"), text);
    }

    @Test
    void protectorsGetTheirRatingAndKeepTheirClass() throws EditRefused {
        String text =
                resized(
                        Map.of(
                                "lead-fuse", at("links.lead", "fuse"),
                                "radio-breaker", at("feeds.radio", "breaker"),
                                "panel-breaker", at("parts.panel-breaker", "")),
                        Map.of(),
                        Map.of("lead-fuse", 60.0, "radio-breaker", 7.5, "panel-breaker", 10.0));
        assertEquals(
                TEXT.replace("fuse 40 A class", "fuse 60 A class")
                        .replace("breaker 5 A (guess)", "breaker 7.5 A (guess)")
                        .replace("rating: 5 A", "rating: 10 A"),
                text);
    }

    @Test
    void whatTheFileDoesNotAskForIsLeftAlone() throws EditRefused {
        assertEquals(TEXT, resized(Map.of(), Map.of("ghost-wire", "4"), Map.of()));
    }
}
