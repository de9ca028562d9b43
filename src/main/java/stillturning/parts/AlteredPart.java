package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import stillturning.parts.element.Element;

/**
 * A part as it would be if its elements were others, broken or not.
 *
 * @param change what becomes of each element
 */
public record AlteredPart(Part part, UnaryOperator<Element> change) implements Part {

    @Override
    public Tag tag() {
        return part.tag();
    }

    @Override
    public PartKind kind() {
        return part.kind();
    }

    @Override
    public List<String> terminals() {
        return part.terminals();
    }

    @Override
    public List<Element> elements() {
        return part.elements().stream().map(change).toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        return part.failureModes().stream().map(mode -> mode.altered(change)).toList();
    }

    @Override
    public String entry() {
        return part.entry();
    }

    @Override
    public String exit() {
        return part.exit();
    }

    @Override
    public String entry(int arrival) {
        return part.entry(arrival);
    }

    @Override
    public Role role() {
        return part.role();
    }

    @Override
    public boolean takesMany(String terminal) {
        return part.takesMany(terminal);
    }

    @Override
    public boolean mayDangle(String terminal) {
        return part.mayDangle(terminal);
    }

    @Override
    public Optional<String> across(String terminal) {
        return part.across(terminal);
    }

    @Override
    public Optional<String> wayHint() {
        return part.wayHint();
    }

    @Override
    public List<String> inputs() {
        return part.inputs();
    }

    @Override
    public List<String> sourceTerminals() {
        return part.sourceTerminals();
    }

    @Override
    public List<Lever> levers() {
        return part.levers();
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        return part.protection(terminal);
    }

    @Override
    public OptionalDouble mostAmps(String terminal) {
        return part.mostAmps(terminal);
    }

    @Override
    public boolean carriesSeveral() {
        return part.carriesSeveral();
    }

    @Override
    public boolean endsBatteryLead() {
        return part.endsBatteryLead();
    }

    @Override
    public boolean runsProgram() {
        return part.runsProgram();
    }

    @Override
    public int logics() {
        return part.logics();
    }

    @Override
    public String detail() {
        return part.detail();
    }

    @Override
    public List<Symbol> symbols() {
        return part.symbols();
    }
}
