package stillturning.quantity.field;

import java.lang.reflect.RecordComponent;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the fields of a record are called in a file. */
public final class Fields {

    private static final Pattern WORD_ENDS = Pattern.compile("([a-z0-9])([A-Z])");

    private Fields() {}

    /** The key under which a record's component is written. */
    public static String keyOf(RecordComponent component) {
        return Optional.ofNullable(component.getAnnotation(Key.class))
                .map(Key::value)
                .orElseGet(() -> hyphenated(component.getName()));
    }

    /**
     * {@code rideThrough}, {@code RideThrough} and {@code RIDE_THROUGH} are all {@code
     * ride-through}.
     */
    public static String hyphenated(String name) {
        return WORD_ENDS
                .matcher(name)
                .replaceAll("$1-$2")
                .replace('_', '-')
                .toLowerCase(Locale.ROOT);
    }
}
