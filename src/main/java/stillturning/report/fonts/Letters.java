package stillturning.report.fonts;

import static java.util.Objects.requireNonNull;

import java.io.InputStream;
import java.util.List;

/**
 * The letters that the program brings along, so that paper, pictures and screens look alike
 * everywhere.
 *
 * @param file its name
 * @param family what style sheets call it
 */
public record Letters(String file, String family, boolean bold) {

    private static final List<Letters> ALL =
            List.of(
                    new Letters("DejaVuSans.ttf", "DejaVu Sans", false),
                    new Letters("DejaVuSans-Bold.ttf", "DejaVu Sans", true),
                    new Letters("DejaVuSansMono.ttf", "DejaVu Sans Mono", false));

    /** Every one. */
    public static List<Letters> all() {
        return ALL;
    }

    /** Its file, to be closed by the caller. */
    public InputStream open() {
        return requireNonNull(Letters.class.getResourceAsStream(file), file);
    }
}
