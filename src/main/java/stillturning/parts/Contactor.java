package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;

/**
 * Contactor or relay: a coil ({@code coil-plus}, {@code coil-minus}) that closes {@code in} to
 * {@code out}.
 *
 * @param contactOhms resistance of the closed contacts (ohm)
 */
public record Contactor(Tag tag, Winding winding, double contactOhms) implements Part {

    /** Coil resistance (ohm), pull-in and drop-out voltage (V), and how long it takes (s). */
    public record Winding(double ohms, double pullInVolts, double dropOutVolts, double seconds) {}

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "coil-plus", "coil-minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(contact(), coil());
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("drops out", Faults.open("coil")),
                FailureMode.of("welded", Faults.metalFor(contact(), contactOhms)));
    }

    @Override
    public String entry() {
        return "in";
    }

    @Override
    public String exit() {
        return "out";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    private Contact contact() {
        return new Contact("contact", "in", "out", contactOhms, new Control.ByCoil("coil", true));
    }

    private Coil coil() {
        return new Coil(
                "coil",
                "coil-plus",
                "coil-minus",
                winding.ohms,
                winding.pullInVolts,
                winding.dropOutVolts,
                winding.seconds,
                winding.seconds);
    }
}
