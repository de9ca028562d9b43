package stillturning.report.drawing;

import java.util.List;

/** The state of a symbol or line, told by stroke pattern and badge as well as by colour. */
public enum MarkState {
    PLAIN("", Colours.STROKE.light),
    LIVE("live", Colours.STROKE.light),
    DARK("dark", Colours.MUTED.light),
    STARVED("below its minimum", Colours.VIOLET.light),
    OVER_VOLTAGE("over-voltage", Colours.RED.light),
    ON_BACKUP("on backup", Colours.BLUE.light),
    FAILED("failed", Colours.RED.light);

    private final String words;
    private final String colour;

    MarkState(String words, String colour) {
        this.words = words;
        this.colour = colour;
    }

    /** What the legend calls it; empty for what needs no legend. */
    public String words() {
        return words;
    }

    /** Colour of strokes and texts, as a hexadecimal red-green-blue triple. */
    public String colour() {
        return colour;
    }

    /** Dash and gap lengths of wires in drawing units; empty for an unbroken stroke. */
    public List<Double> dashes() {
        return switch (this) {
            case PLAIN, LIVE -> List.of();
            case DARK -> List.of(1.5, 3.0);
            case STARVED -> List.of(5.0, 2.0, 1.0, 2.0);
            case OVER_VOLTAGE -> List.of(9.0, 2.0, 2.0, 2.0);
            case ON_BACKUP -> List.of(7.0, 3.0);
            case FAILED -> List.of(4.0, 2.0);
        };
    }

    public boolean hasBadge() {
        return this != PLAIN && this != LIVE;
    }
}
