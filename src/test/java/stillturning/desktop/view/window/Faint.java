package stillturning.desktop.view.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Text;
import stillturning.desktop.view.picture.PictureView;
import stillturning.desktop.view.picture.PlotView;

/**
 * Finds words that are too faint to read. Web Content Accessibility Guidelines 2.1, 1.4.3: contrast
 * of at least 4.5 to 1; what cannot be used is left out there too.
 */
final class Faint {

    private static final double LEAST = 4.5;

    private final List<String> found = new ArrayList<>();

    private Faint() {}

    /** What is too faint below a node, in words; to be used on the screen's thread. */
    static List<String> in(Node root) {
        Faint faint = new Faint();
        faint.look(root, Color.WHITE);
        return faint.found;
    }

    private void look(Node node, Color behind) {
        boolean picture = node instanceof PictureView || node instanceof PlotView;
        if (!node.isVisible() || node.isDisabled() || picture) {
            return;
        }
        Color ground =
                node instanceof Region region ? over(region.getBackground(), behind) : behind;
        if (node instanceof Text text
                && node.getParent() instanceof Labeled labeled
                && !text.getText().isBlank()
                && text.getFill() instanceof Color fill) {
            double contrast = contrast(mixed(fill, ground), ground);
            if (contrast < LEAST) {
                found.add(
                        String.format(
                                Locale.ROOT,
                                "\u201C%s\u201D %s has %.1f to 1",
                                text.getText(),
                                labeled.getStyleClass(),
                                contrast));
            }
        }
        if (node instanceof Parent parent) {
            List.copyOf(parent.getChildrenUnmodifiable()).forEach(child -> look(child, ground));
        }
    }

    private static Color over(Background background, Color behind) {
        Color seen = behind;
        if (background != null) {
            for (BackgroundFill fill : background.getFills()) {
                seen = mixed(fill.getFill(), seen);
            }
        }
        return seen;
    }

    private static Color mixed(Paint paint, Color behind) {
        return paint instanceof Color colour
                ? behind.interpolate(
                        Color.color(colour.getRed(), colour.getGreen(), colour.getBlue()),
                        colour.getOpacity())
                : behind;
    }

    /** Contrast of two colours, by the formula of WCAG 2.1. */
    static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color of) {
        return 0.2126 * linear(of.getRed())
                + 0.7152 * linear(of.getGreen())
                + 0.0722 * linear(of.getBlue());
    }

    private static double linear(double share) {
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
