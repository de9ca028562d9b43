package stillturning.desktop.view.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.Group;
import javafx.scene.Node;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Picture;

/** All nodes of a picture; the next picture changes only what differs from the last. */
final class PictureNodes {
    private final Group root = new Group();
    private Map<String, PartNode> parts = new LinkedHashMap<>();
    private MarkNodes maker;

    PictureNodes(UnaryOperator<String> colours) {
        maker = new MarkNodes(colours);
        root.setAutoSizeChildren(false);
    }

    Group root() {
        return root;
    }

    void recolour(UnaryOperator<String> colours) {
        maker = new MarkNodes(colours);
        parts.values().forEach(part -> part.renew(maker));
    }

    void show(Picture picture) {
        Map<String, PartNode> next = new LinkedHashMap<>();
        for (Mark.PartMarks part : partsOf(picture)) {
            PartNode known = parts.get(part.key());
            if (known == null) {
                next.put(part.key(), new PartNode(part, maker));
            } else {
                known.show(part, maker);
                next.put(part.key(), known);
            }
        }
        parts = next;
        List<Node> order = new ArrayList<>(next.values());
        if (!root.getChildren().equals(order)) {
            root.getChildren().setAll(order);
        }
    }

    Optional<PartNode> part(String key) {
        return Optional.ofNullable(parts.get(key));
    }

    /** Marks that belong to nothing become parts without a name, one for each stretch of them. */
    private static List<Mark.PartMarks> partsOf(Picture picture) {
        List<Mark.PartMarks> all = new ArrayList<>();
        List<Mark> loose = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.PartMarks part) {
                flush(all, loose);
                int times = seen.merge(part.key(), 1, Integer::sum);
                all.add(
                        times == 1
                                ? part
                                : new Mark.PartMarks(
                                        part.key() + '\n' + times, part.title(), part.marks()));
            } else if (mark instanceof Mark.Path || mark instanceof Mark.Text) {
                loose.add(mark);
            }
        }
        flush(all, loose);
        return all;
    }

    private static void flush(List<Mark.PartMarks> all, List<Mark> loose) {
        if (!loose.isEmpty()) {
            all.add(new Mark.PartMarks("\n" + all.size(), "", List.copyOf(loose)));
            loose.clear();
        }
    }
}
