package stillturning.report.oneline;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stillturning.bench.Effort;
import stillturning.files.LenientReading;
import stillturning.files.PartCatalogue;
import stillturning.files.StudyReader;
import stillturning.model.HalfDrawn;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.joining.GroundPoint;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.drawing.layout.SymbolPosition;
import stillturning.yaml.YamlDocument;

class AtWorkTest {

    private static final StudyReader FIRST = StudyReader.open(Path.of("architectures/first-steps"));
    private static final int DELETIONS = Effort.cases(3, 10);

    private static HalfDrawn written(String text) {
        Path file = FIRST.document("one-bus").file();
        return drawing(FIRST.with(YamlDocument.of(file, text)).reading(), "one-bus");
    }

    private static HalfDrawn drawing(LenientReading reading, String id) {
        return requireNonNull(reading.candidates().get(id)).drawing().orElseThrow();
    }

    private static Set<String> shown(DrawnCandidate drawn) {
        Set<String> shown = new HashSet<>();
        drawn.meanings().values().forEach(f -> f.part().ifPresent(shown::add));
        drawn.strands().forEach(s -> s.wire().ifPresent(shown::add));
        return shown;
    }

    @Test
    void everyKindOfPartIsDrawnBeforeAnythingIsJoinedToIt() {
        for (PartCatalogue.CatalogueKind kind : PartCatalogue.shipped().kinds()) {
            for (PartCatalogue.PartClass of : kind.classes()) {
                HalfDrawn half =
                        written(
                                "parts: {x: {is: "
                                        + kind.word()
                                        + ", zone: panel, class: "
                                        + of.name()
                                        + "}}\n");
                DrawnCandidate drawn = CandidateDrawing.atWork(half);
                Sheet sheet = OneLine.laidOut(drawn.diagram());
                assertTrue(shown(drawn).contains("x"), kind.word());
                assertFalse(sheet.picture().marks().isEmpty());
            }
        }
    }

    @Test
    void anEmptyCandidateHasADrawing() {
        HalfDrawn nothing =
                new HalfDrawn("x", "X", List.of(), List.of(), Map.of(), List.of(), Set.of());
        DrawnCandidate drawn = CandidateDrawing.atWork(nothing);
        assertEquals(List.of(), drawn.diagram().symbols());
        assertTrue(OneLine.laidOut(drawn.diagram()).picture().width() > 0);
    }

    @Test
    void terminalsThatWaitForALineHavePlacesOfTheirOwn() {
        HalfDrawn half =
                written("parts: {b: {is: battery, zone: panel}, s: {is: switch, zone: panel}}\n");
        DrawnCandidate drawn = CandidateDrawing.atWork(half);
        Sheet sheet = OneLine.laidOut(drawn.diagram());
        assertEquals(new Terminal("b", "plus"), drawn.terminalAt("b", "plus").orElseThrow());
        assertEquals(new Terminal("s", "out"), drawn.terminalAt("s", "out").orElseThrow());
        for (DiagramSymbol symbol : drawn.diagram().symbols()) {
            SymbolPosition spot = requireNonNull(sheet.spots().get(symbol.id()));
            assertEquals(
                    symbol.ports().size(),
                    spot.ports().stream().map(SymbolPosition.LineLanding::at).distinct().count(),
                    symbol.id());
        }
        assertTrue(drawn.diagram().symbols().stream().anyMatch(s -> s.ports().get(0).loose()));
    }

    @Test
    void anUnjoinedRatingIsNotMadeUp() {
        DrawnCandidate drawn =
                CandidateDrawing.atWork(written("parts: {f: {is: fuse, zone: panel}}\n"));
        DiagramSymbol fuse =
                drawn.diagram().symbols().stream()
                        .filter(s -> s.id().equals("f"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("?", fuse.detail());
    }

    @Test
    void whateverLinesAreTakenOutThePartsStayOnThePaper() {
        SplittableRandom random = new SplittableRandom(3);
        for (Path study :
                List.of(Path.of("architectures/sandpiper"), Path.of("architectures/first-steps"))) {
            StudyReader reader = StudyReader.open(study);
            for (String id : reader.reading().candidates().keySet()) {
                YamlDocument whole = reader.document(id);
                for (int round = 0; round < DELETIONS; round++) {
                    YamlDocument less =
                            YamlDocument.of(whole.file(), thinner(whole.text(), random));
                    LenientReading reading = reader.with(less).reading();
                    assertAllShown(drawing(reading, id));
                }
            }
        }
    }

    private static void assertAllShown(HalfDrawn half) {
        DrawnCandidate drawn = CandidateDrawing.atWork(half);
        Set<String> shown = shown(drawn);
        for (Part part : half.parts()) {
            boolean strap = part instanceof Wire;
            assertTrue(strap || shown.contains(part.id()), half.id() + ": " + part.id());
        }
        drawn.meanings()
                .forEach(
                        (symbol, meaning) ->
                                meaning.terminals().values().forEach(t -> assertThere(half, t)));
        OneLine.laidOut(drawn.diagram());
    }

    private static void assertThere(HalfDrawn half, Terminal terminal) {
        Part part =
                half.parts().stream()
                        .filter(p -> p.id().equals(terminal.part()))
                        .findFirst()
                        .orElseThrow();
        assertTrue(part.terminals().contains(terminal.name()), terminal.toString());
        assertFalse(part instanceof GroundPoint && !terminal.name().equals("stud"));
    }

    private static String thinner(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            lines.remove(random.nextInt(lines.size()));
        }
        return String.join("\n", lines) + "\n";
    }
}
