package stillturning.yaml.notation;

import java.util.List;
import stillturning.quantity.Dimension;

/** How a person may be asked for what stands at one place of a document. */
public sealed interface FieldInput {

    /** The same where each text must be the name of something that is there. */
    default FieldInput naming(Name name) {
        return name;
    }

    /** How a person may be asked for several of it. */
    default FieldInput several(String separator) {
        return new Several(this, separator);
    }

    /** The words of which one is to be written; empty where there is no such list. */
    default List<String> words() {
        return List.of();
    }

    /** What a person is told to write; empty if nothing is. */
    default String advice(String example) {
        return "";
    }

    /** Whether it is written in a form of its own and not in a line. */
    default boolean hasFormOfItsOwn() {
        return false;
    }

    /**
     * A number with its unit.
     *
     * @param range what it must be, in words; empty if nothing is said
     * @param withOrigin whether it may say how far off it may be and where it comes from
     */
    record Measured(Dimension dimension, String range, boolean withOrigin) implements FieldInput {
        @Override
        public String advice(String example) {
            return range.isEmpty()
                    ? "Such as " + example + "."
                    : "Write " + range + ", such as " + example;
        }
    }

    /**
     * A number without unit.
     *
     * @param range what it must be, in words
     */
    record PlainNumber(String range) implements FieldInput {
        @Override
        public String advice(String example) {
            return "Write " + range + ".";
        }
    }

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

        @Override
        public List<String> words() {
            return names;
        }
    }

    /** Any text. */
    record AnyText() implements FieldInput {}

    /** A text in a notation of its own, such as this. */
    record NotationText(String example) implements FieldInput {
        @Override
        public String advice(String written) {
            return "Such as: " + example;
        }
    }

    /** Several on one line. */
    record Several(FieldInput each, String separator) implements FieldInput {
        @Override
        public FieldInput naming(Name name) {
            return new Several(name, separator);
        }
    }

    /** Something with fields or items of its own, for which there is a form of its own. */
    record NestedForm() implements FieldInput {
        @Override
        public boolean hasFormOfItsOwn() {
            return true;
        }

        @Override
        public FieldInput several(String separator) {
            return this;
        }
    }
}
