package stillturning.desktop.view.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Stroke;

/** Makes nodes of marks, and gives nodes that are there already another state. */
final class MarkNodes {
    private static final String FAMILY = "DejaVu Sans";

    private final UnaryOperator<String> colours;

    /**
     * @param colours from those of the picture to those on the screen
     */
    MarkNodes(UnaryOperator<String> colours) {
        this.colours = colours;
    }

    List<Node> of(List<Mark> marks) {
        List<Node> nodes = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Path path) {
                nodes.add(put(path, new SVGPath()));
            } else if (mark instanceof Mark.Text text) {
                nodes.add(put(text, new Text()));
            } else if (mark instanceof Mark.PartMarks part) {
                throw new IllegalArgumentException("a part holds another part: " + part);
            }
        }
        return nodes;
    }

    /** Whether the nodes could be made to show the marks, which leaves them where they are. */
    boolean renewed(List<Node> nodes, List<Mark> marks) {
        if (nodes.size() != marks.size()) {
            return false;
        }
        for (int i = 0; i < marks.size(); i++) {
            if (!renewed(nodes.get(i), marks.get(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean renewed(Node node, Mark mark) {
        if (mark instanceof Mark.Path path && node instanceof SVGPath shape) {
            put(path, shape);
            return true;
        }
        if (mark instanceof Mark.Text text && node instanceof Text words) {
            put(text, words);
            return true;
        }
        if (mark instanceof Mark.PartMarks part) {
            throw new IllegalArgumentException("a part holds another part: " + part);
        }
        return false;
    }

    private Node put(Mark.Path mark, SVGPath shape) {
        Stroke pen = mark.pen();
        shape.setContent(mark.data());
        shape.setFill(paint(pen.fill()));
        shape.setStroke(pen.width() > 0 ? paint(pen.stroke()) : null);
        shape.setStrokeWidth(pen.width());
        shape.setStrokeLineJoin(StrokeLineJoin.ROUND);
        shape.setStrokeLineCap(StrokeLineCap.BUTT);
        if (!shape.getStrokeDashArray().equals(pen.dashes())) {
            shape.getStrokeDashArray().setAll(pen.dashes());
        }
        return shape;
    }

    private Node put(Mark.Text mark, Text words) {
        Mark.Type type = mark.type();
        FontWeight weight = type.bold() ? FontWeight.BOLD : FontWeight.NORMAL;
        Font font = Font.font(FAMILY, weight, type.size());
        if (!font.equals(words.getFont())) {
            words.setFont(font);
        }
        words.setTextOrigin(VPos.BASELINE);
        words.setText(mark.words());
        words.setFill(paint(type.colour()));
        double width = mark.anchor() == Mark.Anchor.START ? 0 : words.getLayoutBounds().getWidth();
        words.setX(
                switch (mark.anchor()) {
                    case START -> mark.x();
                    case MIDDLE -> mark.x() - width / 2;
                    case END -> mark.x() - width;
                });
        words.setY(mark.y());
        return words;
    }

    private Paint paint(String colour) {
        return colour.equals(Stroke.NO_FILL) ? Color.TRANSPARENT : Color.web(colours.apply(colour));
    }
}
