package stillturning.parts.element;

import java.util.Optional;
import stillturning.parts.element.curve.Require;
import stillturning.parts.element.curve.WireHeating;

/**
 * Metal between two terminals: wire, stud, pin, bus bar.
 *
 * @param heating how it grows hot; empty where it is stout enough for whatever flows
 */
public record Conductor(
        String name, String from, String to, double ohms, Optional<WireHeating> heating)
        implements Element {

    public Conductor {
        Require.positive(name, "resistance (ohm)", ohms);
    }

    /** Stout metal. */
    public Conductor(String name, String from, String to, double ohms) {
        this(name, from, to, ohms, Optional.empty());
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }
}
