package stillturning.model;

/** A named point of a part, written {@code part.name}. */
public record Terminal(String part, String name) {
    @Override
    public String toString() {
        return part + "." + name;
    }
}
