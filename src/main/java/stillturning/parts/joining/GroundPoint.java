package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.List;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Tag;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A place where returns meet. On the structure its {@code stud} is bolted to the aircraft's metal;
 * otherwise its {@code lead} goes on to another ground point or a battery.
 *
 * @param ohms resistance of the joint (ohm)
 */
public record GroundPoint(Tag tag, boolean onStructure, double ohms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "ground",
                    "ground point",
                    "ground points",
                    140,
                    Values.class,
                    "look at it, tug it, measure its resistance end to end");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a ground point. */
    @Describes("Point where returns come together.")
    public record Values(
            @Describes("Whether it is bolted to the metal that a chafed wire would touch.")
                    boolean onStructure,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance)
            implements PartValues {

        @Override
        public GroundPoint part(Tag tag, PartSurroundings site) {
            return new GroundPoint(tag, onStructure, resistance);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return onStructure ? List.of("stud") : List.of("stud", "lead");
    }

    @Override
    public List<Element> elements() {
        return List.of(joint());
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                // a bolt on metal does not mind heat
                FailureMode.of("open", Faults.open("joint")).by(Damage.TORN),
                FailureMode.of("high-resistance", Faults.badContact(joint())).by(Damage.SOAKED));
    }

    @Override
    public String entry() {
        return "stud";
    }

    @Override
    public String exit() {
        return onStructure ? "stud" : "lead";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    @Override
    public boolean mayDangle(String terminal) {
        return terminal.equals("stud");
    }

    private Conductor joint() {
        return new Conductor("joint", "stud", onStructure ? Element.STRUCTURE : "lead", ohms);
    }

    @Override
    public Role role() {
        return Role.GROUND;
    }

    @Override
    public boolean carriesSeveral() {
        return true;
    }

    @Override
    public boolean endsBatteryLead() {
        return true;
    }

    /** It is a sign at other symbols. */
    @Override
    public List<Symbol> symbols() {
        return List.of();
    }
}
