package stillturning.yaml.notation;

import java.util.List;
import stillturning.quantity.Dimension;

/** How a person may be asked for what stands at one place of a document. */
public sealed interface FieldInput {

    /**
     * A number with its unit.
     *
     * @param range what it must be, in words; empty if nothing is said
     * @param withOrigin whether it may say how far off it may be and where it comes from
     */
    record Measured(Dimension dimension, String range, boolean withOrigin) implements FieldInput {}

    /**
     * A number without unit.
     *
     * @param range what it must be, in words
     */
    record PlainNumber(String range) implements FieldInput {}

    /** A wire gauge. */
    record Gauge() implements FieldInput {}

    /** One of these words. */
    record Choice(List<String> words) implements FieldInput {
        public Choice {
            words = List.copyOf(words);
        }
    }

    /**
     * The name of something that is there already.
     *
     * @param what what is named, such as "zone"
     * @param names what there is
     */
    record Name(String what, List<String> names) implements FieldInput {
        public Name {
            names = List.copyOf(names);
        }
    }

    /** Any text. */
    record AnyText() implements FieldInput {}

    /** A text in a notation of its own, such as this. */
    record OneLine(String example) implements FieldInput {}

    /** Several on one line. */
    record Several(FieldInput each, String separator) implements FieldInput {}

    /** Something with fields or items of its own, for which there is a form of its own. */
    record Group() implements FieldInput {}
}
