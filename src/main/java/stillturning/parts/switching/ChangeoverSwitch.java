package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.parts.FailureMode;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Element;
import stillturning.parts.switching.Poles.PoleContact;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A hand-moved switch without an off: {@code common} is joined to {@code a} or to {@code b}, break
 * before make. With two poles each terminal carries its pole's number ({@code a-2}). One blade a
 * pole makes both contacts, so that one which is welded keeps the other one open. Common practice,
 * no published source.
 *
 * <p>The gap of some tens of milliseconds while the blades move is not played: all change at one
 * instant, and {@code a} is never joined to {@code b}.
 *
 * @param ohms resistance of a closed contact (ohm)
 */
public record ChangeoverSwitch(Tag tag, int poles, double ohms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "changeover-switch",
                    "changeover switch",
                    "changeover switches",
                    71,
                    Values.class,
                    "measure across each pole in both positions");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a changeover switch. */
    @Describes("Lever that joins a circuit to one of two others, without an off between.")
    public record Values(
            @Bounds(least = 1, most = 2) int poles,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Current that its contacts are rated for, resistive load.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> rating)
            implements ContactValues {

        @Override
        public ChangeoverSwitch part(Tag tag, PartSurroundings site) {
            return new ChangeoverSwitch(tag, poles, resistance);
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
                poles,
                ohms,
                new PoleContact("a", "common", "a", Set.of("a")),
                new PoleContact("b", "common", "b", Set.of("b")));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                contacts().open("stuck-open"), stuck("a"), stuck("b"), contacts().shortToGround());
    }

    private FailureMode stuck(String side) {
        return FailureMode.of("stuck-closed", "stuck closed " + side, contacts().stuckAt(side));
    }

    @Override
    public String entry() {
        return terminals().get(1);
    }

    @Override
    public String exit() {
        return terminals().get(0);
    }

    @Override
    public boolean mayDangle(String terminal) {
        return true;
    }

    @Override
    public Optional<String> across(String terminal) {
        return contacts().across(terminal);
    }

    @Override
    public Optional<String> wayHint() {
        return Optional.of("write the way, such as " + id() + ".a");
    }

    @Override
    public boolean carriesSeveral() {
        return poles > 1;
    }

    @Override
    public String detail() {
        return poles + " pole, changeover";
    }

    @Override
    public List<Lever> levers() {
        return List.of(Lever.ofContacts(id(), List.of("a", "b"), "a"));
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.SWITCH, "");
    }
}
