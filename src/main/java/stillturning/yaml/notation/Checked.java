package stillturning.yaml.notation;

import java.util.Optional;
import stillturning.yaml.YamlValue;

/**
 * What a reader makes of the text of one field.
 *
 * @param value what to write; absent if the field is to be left out, or if there is a fault
 * @param fault the first thing wrong with it
 */
public record Checked(Optional<YamlValue> value, Optional<TextFault> fault) {

    /**
     * What is wrong with a text.
     *
     * @param offset index in the text, from 0, in code points
     */
    public record TextFault(int offset, String wrong, String right) {
        /** {@code "5" has no unit; write for example 5 A}. */
        @Override
        public String toString() {
            return wrong + "; " + right;
        }
    }

    public static Checked right(YamlValue value) {
        return new Checked(Optional.of(value), Optional.empty());
    }

    public static Checked leftOut() {
        return new Checked(Optional.empty(), Optional.empty());
    }

    public static Checked wrong(int offset, String wrong, String right) {
        return new Checked(Optional.empty(), Optional.of(new TextFault(offset, wrong, right)));
    }
}
