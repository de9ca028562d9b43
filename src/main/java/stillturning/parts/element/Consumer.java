package stillturning.parts.element;

/** A load, or the electronics inside a part, between {@code from} (plus) and {@code to} (minus). */
public record Consumer(String name, String from, String to, Demand demand, Tolerance tolerance)
        implements Element {
    /** Whether it does the work of a load, and feeds itself. */
    public boolean isOwnSource() {
        return demand.selfPowered();
    }

    @Override
    public Role role() {
        return Role.LOAD;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
