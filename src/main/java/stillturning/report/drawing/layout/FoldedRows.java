package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.diagram.Diagram;

/**
 * Which symbols lie in which row of layers, where layers are folded to suit a paper. It is kept
 * while a diagram is edited: where else it would be cut depends on the height of every layer, so
 * that one symbol more or less could move half of it.
 *
 * @param rows number of the row from the top, by symbol
 */
record FoldedRows(Map<String, Integer> rows) {

    FoldedRows {
        rows = Map.copyOf(rows);
    }

    /** The rows in which a diagram was laid out: a new one begins where layers go back left. */
    static FoldedRows of(Diagram diagram, PlacedDiagram placed) {
        Map<String, Box> boxes = placed.boxes();
        Map<String, Integer> layers = LayeredLayout.layers(diagram);
        Map<Integer, Double> lefts = new TreeMap<>();
        layers.forEach((id, layer) -> merge(lefts, layer, boxes.get(id)));
        Map<Integer, Integer> rowOf = new HashMap<>();
        int row = 0;
        double before = Double.NEGATIVE_INFINITY;
        for (Map.Entry<Integer, Double> layer : lefts.entrySet()) {
            row += layer.getValue() < before ? 1 : 0;
            before = layer.getValue();
            rowOf.put(layer.getKey(), row);
        }
        Map<String, Integer> rows = new HashMap<>();
        layers.forEach((id, layer) -> rows.put(id, rowOf.getOrDefault(layer, 0)));
        return new FoldedRows(rows);
    }

    private static void merge(Map<Integer, Double> lefts, int layer, @Nullable Box box) {
        if (box != null) {
            lefts.merge(layer, box.x(), Math::min);
        }
    }

    /** The layers before which another diagram is cut, to leave symbols in their rows. */
    List<Integer> cuts(Diagram diagram) {
        int last = rows.values().stream().mapToInt(row -> row).max().orElse(0);
        Map<String, Integer> layers = last == 0 ? Map.of() : LayeredLayout.layers(diagram);
        List<Integer> cuts = new ArrayList<>();
        for (int row = 0; row < last; row++) {
            cuts.add(cutBelow(row, layers));
        }
        return cuts.stream().filter(cut -> cut > 0).distinct().sorted().toList();
    }

    /** The cut that leaves the most symbols on their side of it; 0 for none. */
    private int cutBelow(int row, Map<String, Integer> layers) {
        int last = layers.values().stream().mapToInt(layer -> layer).max().orElse(0);
        int best = 0;
        long most = staying(row, 0, layers);
        for (int cut = 1; cut <= last; cut++) {
            long staying = staying(row, cut, layers);
            if (staying > most) {
                most = staying;
                best = cut;
            }
        }
        return best;
    }

    private long staying(int row, int cut, Map<String, Integer> layers) {
        return layers.entrySet().stream()
                .filter(e -> rows.containsKey(e.getKey()))
                .filter(e -> e.getValue() < cut == rows.getOrDefault(e.getKey(), 0) <= row)
                .count();
    }
}
