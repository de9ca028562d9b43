package stillturning.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.parts.Part.Role;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.element.Element;

class SymbolTest {

    static List<Part> everyKind() {
        return Shelf.everyKind();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void everyTerminalHasAPlaceInTheDrawing(Part part) {
        Set<String> pins =
                part.symbols().stream()
                        .flatMap(s -> s.pins().stream())
                        .map(Symbol.Pin::terminal)
                        .collect(Collectors.toSet());
        boolean lineOrSign = part.role() == Role.WIRE || part.role() == Role.GROUND;
        assertEquals(lineOrSign ? Set.of() : Set.copyOf(part.terminals()), pins);
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void symbolsOfOnePartDifferInName(Part part) {
        List<String> names = part.symbols().stream().map(Symbol::name).toList();
        assertEquals(Set.copyOf(names).size(), names.size());
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void aContactThatShowsIsOneOfThePart(Part part) {
        Set<String> elements =
                part.elements().stream().map(Element::name).collect(Collectors.toSet());
        List<String> strangers =
                part.symbols().stream()
                        .flatMap(s -> s.contact().stream())
                        .filter(contact -> !elements.contains(contact))
                        .toList();
        assertEquals(List.of(), strangers);
    }

    @Test
    void aKindThatSaysNothingIsABoxWithItsPinsAround() {
        Symbol symbol = new Unheard(Bench.tag("box")).symbols().get(0);
        assertEquals(Figure.BOX, symbol.figure());
        assertEquals(
                List.of(PinEdge.LEFT, PinEdge.BELOW, PinEdge.RIGHT),
                symbol.pins().stream().map(Symbol.Pin::edge).toList());
    }

    /** A kind of part that no room has heard of. */
    private record Unheard(Tag tag) implements Part {
        @Override
        public PartKind kind() {
            throw new UnsupportedOperationException("drawn without");
        }

        @Override
        public List<String> terminals() {
            return List.of("near", "under", "far");
        }

        @Override
        public List<Element> elements() {
            return List.of();
        }

        @Override
        public List<FailureMode> failureModes() {
            return List.of();
        }

        @Override
        public String entry() {
            return "near";
        }

        @Override
        public String exit() {
            return "far";
        }
    }
}
