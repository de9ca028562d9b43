package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Terminal;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramSymbol;

/**
 * A candidate as a diagram, and what each symbol and line of it stands for.
 *
 * @param meanings by the id of a symbol
 * @param strands in the order of the diagram's lines
 */
public record DrawnCandidate(
        Diagram diagram, Map<String, Meaning> meanings, List<DrawnStrand> strands) {

    private static final String LINE = "line ";

    /**
     * What a symbol stands for.
     *
     * @param part id of its part; empty for a joint that is no part
     * @param nets numbers of the nets at its ports, in the candidate's circuit
     * @param grounds id of the symbol that this is the ground of; empty for any other symbol
     * @param terminals what can be joined at each port, by its name
     */
    public record Meaning(
            Optional<String> part,
            List<Integer> nets,
            Optional<String> grounds,
            Map<String, Terminal> terminals) {
        public Meaning {
            terminals = Map.copyOf(terminals);
            nets = List.copyOf(nets);
        }
    }

    /**
     * What a line stands for.
     *
     * @param wire id of the wire; empty where two ports are joined directly
     */
    public record DrawnStrand(Optional<String> wire, int fromNet, int toNet) {}

    public DrawnCandidate {
        meanings = Collections.unmodifiableMap(new LinkedHashMap<>(meanings));
        strands = List.copyOf(strands);
    }

    /** What a symbol stands for. */
    Meaning meaning(String symbol) {
        Meaning meaning = meanings.get(symbol);
        if (meaning == null) {
            throw new IllegalArgumentException(symbol + " is no symbol of the drawing");
        }
        return meaning;
    }

    /** The terminal at a port of a symbol, if it is one of a part's. */
    public Optional<Terminal> terminalAt(String symbol, String port) {
        return Optional.ofNullable(meanings.get(symbol))
                .flatMap(f -> Optional.ofNullable(f.terminals().get(port)));
    }

    /** Every symbol and line that stands for a part, the symbols first. */
    public List<String> keysOf(String part) {
        List<String> keys = new ArrayList<>();
        diagram.symbols().stream()
                .map(DiagramSymbol::id)
                .filter(id -> meaning(id).part().filter(part::equals).isPresent())
                .forEach(keys::add);
        for (int i = 0; i < strands.size(); i++) {
            if (strands.get(i).wire().filter(part::equals).isPresent()) {
                keys.add(LINE + i);
            }
        }
        return List.copyOf(keys);
    }

    /** The part that a symbol belongs to, or the wire that a line ({@code line 3}) is. */
    public Optional<String> partAt(String key) {
        if (key.startsWith(LINE)) {
            int number = Integer.parseInt(key.substring(LINE.length()));
            return strands.get(number).wire();
        }
        return Optional.ofNullable(meanings.get(key)).flatMap(Meaning::part);
    }
}
