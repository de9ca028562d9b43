package stillturning.parts.element;

import java.util.Optional;
import stillturning.parts.element.curve.Require;

/** A pair of contacts that is either metal or a gap. */
public record Contact(String name, String from, String to, double ohms, Control control)
        implements Element {

    public Contact {
        Require.positive(name, "contact resistance (ohm)", ohms);
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }

    @Override
    public Optional<Control> commandedBy() {
        return Optional.of(control);
    }

    @Override
    public boolean isStuckUnseen(boolean conducts) {
        return conducts;
    }

    @Override
    public Role role() {
        return Role.PATH;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
