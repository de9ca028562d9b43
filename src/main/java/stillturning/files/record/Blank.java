package stillturning.files.record;

import stillturning.quantity.Dimension;

/**
 * Something that can be filled in.
 *
 * @param path place inside the form, keys joined with points
 * @param notation how it is written
 * @param beside what stands beside it as a comment, on one line
 */
public record Blank(String path, Notation notation, String beside) {

    /** How a blank is filled in. */
    public enum Notation {
        VOLTS("12.4 V", Dimension.VOLTAGE),
        AMPS("5.2 A", Dimension.CURRENT),
        SECONDS("0.3 s", Dimension.TIME),
        CAPACITY("16.2 Ah", Dimension.CHARGE),
        OHMS("11 mohm", Dimension.RESISTANCE),
        /** A current, and the voltage at which it flowed. */
        AMPS_AT_VOLTS("1.3 A at 12.6 V", Dimension.CURRENT),
        /** Voltages lost, each with the current that lost them. */
        VOLTS_AT_AMPS("0.12 V at 10 A, 0.24 V at 20 A", Dimension.VOLTAGE),
        /** Whether what must happen happened. */
        RESULT("passed", Dimension.RATIO);

        private final String example;
        private final Dimension dimension;

        Notation(String example, Dimension dimension) {
            this.example = example;
            this.dimension = dimension;
        }

        /** Something that it might be filled in with. */
        public String example() {
            return example;
        }

        Dimension dimension() {
            return dimension;
        }
    }

    /** Key of it alone. */
    String key() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Path of what it is in. */
    String group() {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }
}
