package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
 * A switch turned by a key: {@code in} is joined to {@code on} at on and at start, to {@code start}
 * at start only. From start it springs back to on, so nobody can leave it there: a candidate's
 * {@code positions.starting} holds it while the engine is started. Common practice, no published
 * source.
 *
 * @param ohms resistance of a closed contact (ohm)
 */
public record KeySwitch(Tag tag, double ohms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "key-switch",
                    "key switch",
                    "key switches",
                    73,
                    Values.class,
                    "measure from in to on and to start in each position");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a key switch. */
    @Describes("Key with off, on and start, from which it springs back.")
    public record Values(
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Current that its contacts are rated for, resistive load.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> rating)
            implements ContactValues {

        @Override
        public KeySwitch part(Tag tag, PartSurroundings site) {
            return new KeySwitch(tag, resistance);
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
                new PoleContact("on", "in", "on", Set.of("on", "start")),
                new PoleContact("start", "in", "start", Set.of("start")));
    }

    @Override
    public List<FailureMode> failureModes() {
        Contact start = contacts().contacts().get(1);
        return List.of(
                contacts().open("stuck-open"),
                FailureMode.of("stuck-closed", "stuck closed on", contacts().weldedAt("on")),
                FailureMode.of("start-stuck-closed", Faults.metalFor(start, ohms)),
                contacts().shortToGround());
    }

    @Override
    public String entry() {
        return "in";
    }

    @Override
    public String exit() {
        return "on";
    }

    @Override
    public boolean mayDangle(String terminal) {
        return terminal.equals("start");
    }

    @Override
    public boolean carriesSeveral() {
        return true;
    }

    @Override
    public List<Lever> levers() {
        List<String> positions = List.of("off", "on", "start");
        return List.of(Lever.ofContacts(id(), positions, "on").springingBackFrom("start"));
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.SWITCH, "");
    }
}
