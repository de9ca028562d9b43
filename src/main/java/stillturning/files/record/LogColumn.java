package stillturning.files.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of a log that is read.
 *
 * @param position in a line, from 0
 * @param factor by which a number in it is multiplied to be in s, V or A
 */
record LogColumn(ColumnContent of, int position, double factor) {

    private static final Pattern HEAD =
            Pattern.compile("(?<name>\\p{L}+)[\\s_]*[(\\[/]?\\s*(?<unit>\\p{L}*)\\s*[)\\]]?");

    /** What is read. */
    enum ColumnContent {
        TIME(
                List.of("time", "t", "elapsed"),
                Map.of("s", 1.0, "sec", 1.0, "ms", 1e-3, "min", 60.0, "h", 3600.0),
                "time (s)"),
        VOLTS(List.of("voltage", "u", "v"), Map.of("v", 1.0, "mv", 1e-3), "voltage (V)"),
        AMPS(List.of("current", "i"), Map.of("a", 1.0, "ma", 1e-3), "current (A)");

        @SuppressWarnings("ImmutableEnumChecker") // made by List.of
        private final List<String> names;

        @SuppressWarnings("ImmutableEnumChecker") // made by Map.of
        private final Map<String, Double> units;

        private final String example;

        ColumnContent(List<String> names, Map<String, Double> units, String example) {
            this.names = names;
            this.units = units;
            this.example = example;
        }

        /** A head that would be understood. */
        String example() {
            return example;
        }

        String units() {
            return String.join(", ", new TreeSet<>(units.keySet()));
        }

        private OptionalDouble factor(String unit) {
            Double factor = units.get(unit);
            return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor);
        }
    }

    /** Names that say their unit themselves. */
    private static final Map<String, ColumnContent> TELLING =
            Map.of(
                    "seconds", ColumnContent.TIME,
                    "volts", ColumnContent.VOLTS,
                    "volt", ColumnContent.VOLTS,
                    "amps", ColumnContent.AMPS,
                    "amperes", ColumnContent.AMPS,
                    "ampere", ColumnContent.AMPS);

    /** What a head says: of what, and a factor of its unit if it is known. */
    record StatedColumn(ColumnContent of, String unit, OptionalDouble factor) {}

    /** What the head of a column says; empty if it is none of those that are read. */
    static Optional<StatedColumn> said(String head) {
        Matcher words = HEAD.matcher(head.strip().toLowerCase(Locale.ROOT));
        if (!words.matches()) {
            return Optional.empty();
        }
        String name = words.group("name");
        String unit = words.group("unit");
        ColumnContent telling = TELLING.get(name);
        if (telling != null) {
            return Optional.of(
                    new StatedColumn(
                            telling,
                            unit,
                            unit.isEmpty() ? OptionalDouble.of(1) : telling.factor(unit)));
        }
        return Arrays.stream(ColumnContent.values())
                .filter(of -> of.names.contains(name))
                .findFirst()
                .map(of -> new StatedColumn(of, unit, of.factor(unit)));
    }
}
