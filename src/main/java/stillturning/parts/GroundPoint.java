package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;

/**
 * A place where returns meet. On the structure its {@code stud} is bolted to the aircraft's metal;
 * otherwise its {@code lead} goes on to another ground point or a battery.
 *
 * @param ohms resistance of the joint (ohm)
 */
public record GroundPoint(Tag tag, boolean onStructure, double ohms) implements Part {

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
                FailureMode.of("open", Faults.open("joint")),
                FailureMode.of("high resistance", Faults.badContact(joint())));
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
}
