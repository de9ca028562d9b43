package stillturning.report.oneline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.EngineLogic;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.switching.SelectorSwitch;
import stillturning.report.ReportSamples;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.layout.OneLine;

class CandidateDrawingTest {

    private static final Study STUDY = ReportSamples.study("Two benches", "");
    private static final Candidate CANDIDATE = STUDY.candidate("engine-bus").orElseThrow();
    private static final Diagram DIAGRAM = CandidateDrawing.of(CANDIDATE, STUDY);

    @Test
    void currentGoesFromLeftToRight() {
        Set<String> lines = lines(DIAGRAM);
        for (String line :
                List.of(
                        "battery -> master-contactor",
                        "alternator -> main-bus",
                        "master-contactor -> main-bus",
                        "main-bus -> engine-diode",
                        "engine-diode -> engine-bus",
                        "engine-bus -> coils-breaker",
                        "coils-breaker -> coils",
                        "main-bus -> radio-breaker",
                        "radio-breaker -> radio")) {
            assertTrue(lines.contains(line), line + " is not in " + lines);
        }
    }

    @Test
    void aCoilThatItsOwnContactsFeedHangsBelowThemByItsSwitch() {
        assertTrue(lines(DIAGRAM).contains("master -> master-contactor"));
        assertEquals(Glyph.CONTACTOR_CLOSED, symbol("master-contactor").glyph());
    }

    @Test
    void switchesStandAsInFlight() {
        assertEquals(Glyph.SWITCH_CLOSED, symbol("master").glyph());
        assertEquals(Glyph.SWITCH_OPEN, symbol("engine-feed").glyph());
    }

    @Test
    void aContactorWhoseCoilGetsNothingIsOpen() {
        Bench bench =
                new Bench()
                        .engine(new EngineLogic.One("coils"), true)
                        .battery("battery", 12, 0.01, 1.2)
                        .contactor("starter-contactor")
                        .closedSwitch("starter-switch", "off")
                        .load("coils", DemandKind.CONSTANT_POWER, 3, Bench.HARDY)
                        .load("starter", DemandKind.CONSTANT_CURRENT, 100, Bench.HARDY)
                        .join("battery", "plus", "starter-contactor", "in")
                        .join("starter-contactor", "out", "starter", "plus")
                        .join("battery", "plus", "starter-switch", "in")
                        .join("starter-switch", "out", "starter-contactor", "coil-plus")
                        .join("starter-contactor", "coil-minus", "ground", "stud")
                        .join("battery", "plus", "coils", "plus");
        Diagram diagram = CandidateDrawing.of(bench.candidate(), bench.study());
        assertEquals(Glyph.CONTACTOR_OPEN, symbol(diagram, "starter-contactor").glyph());
        assertTrue(lines(diagram).contains("starter-switch -> starter-contactor-coil"));
    }

    /** Two batteries to a selector at 2, and either the alternative feed or none by a relay. */
    @Test
    void eachWayOfASelectorAndOfAChangeoverRelayStandsAsInFlight() {
        Bench bench =
                new Bench()
                        .engine(new EngineLogic.One("coils"), true)
                        .battery("one", 20, 0.02, 1)
                        .battery("two", 20, 0.02, 1)
                        .part(new SelectorSwitch(Bench.tag("source"), 5e-4))
                        .lever("source", "2")
                        .part(Shelf.changeoverRelay("relay"))
                        .part(Shelf.chargeRelay("charge", 13.3, 12.8))
                        .load("coils", DemandKind.CONSTANT_POWER, 3, Bench.HARDY)
                        .join("one", "plus", "source", "1")
                        .join("two", "plus", "source", "2")
                        .join("one", "plus", "charge", "in")
                        .join("two", "plus", "charge", "out")
                        .join("charge", "minus", "ground", "stud")
                        .join("source", "common", "relay", "normally-open")
                        .join("source", "common", "relay", "coil-plus")
                        .join("relay", "coil-minus", "ground", "stud")
                        .join("one", "plus", "relay", "normally-closed")
                        .join("relay", "common", "coils", "plus");
        Diagram diagram = CandidateDrawing.of(bench.candidate(), bench.study());
        assertEquals(Glyph.SWITCH_OPEN, symbol(diagram, "source-1").glyph());
        assertEquals(Glyph.SWITCH_CLOSED, symbol(diagram, "source-2").glyph());
        assertEquals(Glyph.CONTACTOR_OPEN, symbol(diagram, "relay-normally-closed").glyph());
        assertEquals(Glyph.CONTACTOR_CLOSED, symbol(diagram, "relay-normally-open").glyph());
        assertEquals(Glyph.CONTACTOR_CLOSED, symbol(diagram, "charge").glyph());
        assertEquals("coil of relay", symbol(diagram, "relay-coil").label());
    }

    @Test
    void whatTheEngineNeedsIsMarked() {
        assertTrue(symbol("coils").label().startsWith(Pieces.ENGINE_MARK));
        assertEquals("radio", symbol("radio").label());
    }

    @Test
    void wiresAreLinesOrWordsAtTheSymbolThatTheyAreJoinedTo() {
        assertTrue(symbol("engine-diode").detail().contains("AWG 18, 1.5 m"));
        assertTrue(DIAGRAM.symbols().stream().noneMatch(s -> s.id().equals("engine-wire")));
    }

    @Test
    void returnsAreSignsWithTheNameOfTheGround() {
        List<DiagramSymbol> signs =
                DIAGRAM.symbols().stream().filter(s -> s.glyph() == Glyph.EARTH).toList();
        // battery, alternator, the coil's switch, and three loads
        assertEquals(6, signs.size());
        assertTrue(signs.stream().allMatch(s -> s.label().equals("ground")), signs.toString());
    }

    @Test
    void theDemonstrationCandidatesAreDrawnInFull() {
        Study study = StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();
        for (Candidate candidate : study.candidates()) {
            Diagram diagram = CandidateDrawing.of(candidate, study);
            Set<String> ids =
                    diagram.symbols().stream().map(DiagramSymbol::id).collect(Collectors.toSet());
            for (Part part : candidate.parts()) {
                boolean bare = part instanceof Wire || part instanceof GroundPoint;
                assertTrue(bare || ids.contains(part.id()), candidate.id() + " " + part.id());
            }
            assertEveryLoadIsFed(diagram);
            Picture picture = OneLine.of(diagram);
            assertTrue(picture.width() < 1950 && picture.height() < 900, candidate.id());
        }
    }

    /** Every load of the demonstration is fed in every candidate, so it has a line. */
    private static void assertEveryLoadIsFed(Diagram diagram) {
        Map<String, Integer> arriving = new HashMap<>();
        diagram.lines().forEach(l -> arriving.merge(l.toSymbol(), 1, Integer::sum));
        diagram.symbols().stream()
                .filter(s -> s.glyph() == Glyph.LOAD)
                .forEach(s -> assertTrue(arriving.containsKey(s.id()), s.id()));
    }

    private static DiagramSymbol symbol(String id) {
        return symbol(DIAGRAM, id);
    }

    private static DiagramSymbol symbol(Diagram diagram, String id) {
        return diagram.symbols().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    }

    private static Set<String> lines(Diagram diagram) {
        return diagram.lines().stream()
                .map(CandidateDrawingTest::words)
                .collect(Collectors.toSet());
    }

    private static String words(DiagramLine line) {
        return line.fromSymbol() + " -> " + line.toSymbol();
    }
}
