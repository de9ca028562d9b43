package stillturning.report.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.oneline.CandidateDrawing;

class FreeRowsTest {

    private static Map<String, Integer> order(Diagram diagram) {
        Map<String, Integer> order = new HashMap<>();
        diagram.symbols().forEach(symbol -> order.put(symbol.id(), order.size()));
        return order;
    }

    static Stream<Diagram> shipped() {
        return Stream.of("first-steps", "sandpiper")
                .map(study -> StudyReader.read(Path.of("architectures", study)))
                .map(read -> read.study().orElseThrow())
                .flatMap(FreeRowsTest::drawings);
    }

    private static Stream<Diagram> drawings(Study study) {
        return study.candidates().stream().map(c -> CandidateDrawing.of(c, study));
    }

    /** What a person wrote first stands above, wherever no line hinders it. */
    @ParameterizedTest(name = "{index}")
    @MethodSource("shipped")
    void rowsOfOneBarAreInTheOrderOfTheFile(Diagram diagram) {
        PlacedDiagram placed = LayeredLayout.of(diagram);
        assertTrue(FreeRows.inOrder(placed, order(diagram)).isEmpty(), diagram.id());
    }

    @Test
    void theOrderOfTheFileIsTheOrderOnThePaper() {
        Diagram diagram =
                shipped().filter(d -> d.id().equals("drawing-one-bus")).findFirst().orElseThrow();
        Map<String, Box> boxes = LayeredLayout.of(diagram).boxes();
        List<String> fromTop =
                diagram.symbols().stream()
                        .map(DiagramSymbol::id)
                        .filter(id -> List.of("computer", "pump", "radio", "lights").contains(id))
                        .toList();
        assertEquals(List.of("computer", "pump", "radio", "lights"), fromTop);
        for (int i = 1; i < fromTop.size(); i++) {
            Box above = boxes.getOrDefault(fromTop.get(i - 1), new Box(0, 0, 0, 0));
            Box below = boxes.getOrDefault(fromTop.get(i), new Box(0, 0, 0, 0));
            assertTrue(above.bottom() <= below.y(), fromTop.get(i));
        }
    }

    /** Buses crossed by feeds of others: nothing is sorted at the price of a crossing. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noOrderIsBoughtByACrossing(long seed) {
        Diagram diagram = RandomDiagrams.of(seed, 10 + (int) seed, seed % 4 == 0);
        PlacedDiagram sorted = LayeredLayout.of(diagram);
        PlacedDiagram found = LayeredLayout.once(diagram, Map.of(), Map.of(), Folding.NONE);
        assertTrue(FreeRows.crossings(sorted) <= FreeRows.crossings(found));
    }
}
