package stillturning.model;

import org.jspecify.annotations.Nullable;

/** A named point of a part, written {@code part.name}. */
public record Terminal(String part, String name) {
    // the key of most look-ups: what a record brings along is slow in code compiled quickly
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Terminal that && part.equals(that.part) && name.equals(that.name);
    }

    @Override
    public int hashCode() {
        return 31 * part.hashCode() + name.hashCode();
    }

    @Override
    public String toString() {
        return part + "." + name;
    }
}
