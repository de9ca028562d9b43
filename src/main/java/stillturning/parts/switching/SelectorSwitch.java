package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.parts.Alteration;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Element;
import stillturning.parts.switching.Poles.PoleContact;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A rotary switch that joins {@code common} to {@code 1}, to {@code 2} or to both: off, 1, both and
 * 2 in this order, make before break, so that between 1 and 2 both are joined and nothing goes
 * dark. Both ways lead through one wiper. As battery switches are built; common practice, no
 * published source.
 *
 * @param ohms resistance of a closed contact (ohm)
 */
public record SelectorSwitch(Tag tag, double ohms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "selector-switch",
                    "selector switch",
                    "selector switches",
                    72,
                    Values.class,
                    "measure from common to 1 and to 2 in each position");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a selector switch. */
    @Describes("Rotary switch: off, 1, both or 2, make before break.")
    public record Values(
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Current that its contacts are rated for, resistive load.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> rating)
            implements ContactValues {

        @Override
        public SelectorSwitch part(Tag tag, PartSurroundings site) {
            return new SelectorSwitch(tag, resistance);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return contacts().terminals();
    }

    @Override
    public List<Element> elements() {
        return List.copyOf(contacts().contacts());
    }

    private Poles contacts() {
        return Poles.of(
                1,
                ohms,
                new PoleContact("1", "common", "1", Set.of("1", "both")),
                new PoleContact("2", "common", "2", Set.of("2", "both")));
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(contacts().open("wiper-open"));
        for (Contact contact : contacts().contacts()) {
            String name = contact.name();
            Alteration gone = Faults.open(name);
            modes.add(FailureMode.of("contact-open", "contact " + name + " open", List.of(gone)));
            modes.add(
                    FailureMode.of(
                            "stuck-closed", "stuck closed " + name, contacts().weldedAt(name)));
        }
        modes.add(contacts().shortToGround());
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return "1";
    }

    @Override
    public String exit() {
        return "common";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    @Override
    public Optional<String> across(String terminal) {
        return contacts().across(terminal);
    }

    @Override
    public Optional<String> wayHint() {
        return Optional.of("write the way, such as " + id() + ".1");
    }

    @Override
    public boolean carriesSeveral() {
        return true;
    }

    @Override
    public boolean endsBatteryLead() {
        return true;
    }

    @Override
    public List<Lever> levers() {
        return List.of(Lever.ofContacts(id(), List.of("off", "1", "both", "2"), "1"));
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.SWITCH, "");
    }
}
