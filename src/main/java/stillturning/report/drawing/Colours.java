package stillturning.report.drawing;

import java.util.HashMap;
import java.util.Map;

/** Every colour of a picture, on light and on dark paper; none tells anything alone. */
public enum Colours {
    STROKE("#000000", "#e6e6e6"),
    PAPER("#ffffff", "#14171a"),
    MUTED("#767676", "#9a9fa5"),
    RED("#a3200d", "#ff9a87"),
    BLUE("#12508f", "#7fb9f5"),
    GREEN("#2f6322", "#8fcf7f"),
    VIOLET("#6b3d8f", "#cfa8ee"),
    GRID("#d4d4d4", "#3a4047"),
    SHADE("#ececec", "#23282e"),
    LIGHT_FILL("#dcdcdc", "#3d444b"),
    SOLID_FILL("#333333", "#cfd3d7");

    private static final Map<String, Colours> BY_LIGHT = new HashMap<>();

    static {
        for (Colours ink : values()) {
            BY_LIGHT.put(ink.light, ink);
        }
    }

    /** As a hexadecimal red-green-blue triple, like {@link #dark}. */
    public final String light;

    final String dark;

    Colours(String light, String dark) {
        this.light = light;
        this.dark = dark;
    }

    static Colours of(String light) {
        Colours ink = BY_LIGHT.get(light);
        if (ink == null) {
            throw new IllegalArgumentException(light + " is no colour of a picture");
        }
        return ink;
    }
}
