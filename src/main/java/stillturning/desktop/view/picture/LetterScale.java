package stillturning.desktop.view.picture;

import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Label;
import stillturning.desktop.view.Labels;

/** How much larger than usual a person wants letters, and what that makes of a picture. */
final class LetterScale {

    /** Smallest letters that can be read where others have their usual size (pixels). */
    private static final double SMALLEST = 9;

    private static final double USUAL = 13;
    private static final double LARGEST_AT_FIRST = 1.2;

    private final Label letter = Labels.measure();

    /** To be put where the letters are. */
    Node node() {
        return letter;
    }

    void onChange(Runnable changed) {
        letter.fontProperty().addListener((of, before, now) -> changed.run());
    }

    /** Times the usual size. */
    double times() {
        return letter.getFont().getSize() / USUAL;
    }

    /**
     * Pixels for each unit of a picture at which all of its letters can be read.
     *
     * @param smallest its smallest letters (units), if it has any
     */
    double readable(OptionalDouble smallest) {
        return times() * SMALLEST / smallest.orElse(SMALLEST);
    }

    /** Pixels for each unit beyond which a picture is not enlarged unless it is asked for. */
    double largest() {
        return LARGEST_AT_FIRST * times();
    }
}
