package stillturning.report.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stillturning.story.Endurance;

/** Numbers and names as JSON has them. */
final class JsonNumbers {
    private static final MathContext DIGITS = new MathContext(6);

    /** Far below anything that is volts, seconds, kilograms or a share here. */
    private static final double NOISE = 1e-9;

    private JsonNumbers() {}

    /** A number to six digits, noise of the solver as 0; null where JSON has none. */
    static @Nullable Double number(double value) {
        if (Math.abs(value) < NOISE) {
            return 0.0;
        }
        return Double.isFinite(value)
                ? Double.valueOf(new BigDecimal(value).round(DIGITS).doubleValue())
                : null;
    }

    /** A chance or a ratio of chances, however small, to six digits; null where JSON has none. */
    static @Nullable Double chance(double value) {
        return Double.isFinite(value)
                ? Double.valueOf(new BigDecimal(value).round(DIGITS).doubleValue())
                : null;
    }

    /** Whether the electrical system ends it. */
    static boolean limited(Endurance endurance) {
        return endurance.fold(
                lasts -> true,
                notLimited -> false,
                landed -> false,
                atLeast -> true,
                untold -> true);
    }

    /** A constant's name in lower case with hyphens. */
    static String kebab(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Values by the names of constants. */
    static <E extends Enum<E>, V, W> Map<String, W> byWord(
            Map<E, V> values, Function<V, W> written) {
        Map<String, W> named = new LinkedHashMap<>();
        values.forEach((constant, value) -> named.put(kebab(constant), written.apply(value)));
        return named;
    }
}
