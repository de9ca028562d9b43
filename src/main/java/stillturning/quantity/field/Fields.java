package stillturning.quantity.field;

import java.lang.reflect.RecordComponent;
import java.util.Locale;
import java.util.Optional;

/** What the fields of a record are called in a file. */
public final class Fields {

    private Fields() {}

    /** The key under which a record's component is written. */
    public static String keyOf(RecordComponent component) {
        return Optional.ofNullable(component.getAnnotation(Key.class))
                .map(Key::value)
                .orElse(hyphenated(component.getName()));
    }

    /**
     * {@code rideThrough}, {@code RideThrough} and {@code RIDE_THROUGH} are all {@code
     * ride-through}.
     */
    public static String hyphenated(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1-$2")
                .replace('_', '-')
                .toLowerCase(Locale.ROOT);
    }
}
