package stillturning.desktop.view.picture;

import java.util.Locale;

/** In what way something in a picture differs from another picture. */
public enum Difference {
    ADDED("new"),
    ALTERED("altered"),
    LEFT_OUT("goes");

    private final String words;

    Difference(String words) {
        this.words = words;
    }

    /** What a legend calls it. */
    public String words() {
        return words;
    }

    /** The end of the style class of its frame. */
    public String style() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
