package stillturning.parts;

import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Added;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.curve.WireHeating;

/** A length of stranded copper between {@code a} and {@code b}. */
public record Wire(Tag tag, Cable cable, double metres, double ohms) implements Part {

    public Wire {
        if (!(metres > 0) || Double.isInfinite(metres)) {
            throw new IllegalArgumentException(
                    tag.id() + ": a wire of " + metres + " m is not above 0");
        }
    }

    @Override
    public List<String> terminals() {
        return List.of("a", "b");
    }

    @Override
    public List<Element> elements() {
        return List.of(copper("wire", "a", "b", ohms));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("wire")),
                FailureMode.of(
                        "chafed to ground",
                        new Put(copper("wire", "a", "chafe", ohms / 2)),
                        new Added(copper("far end", "chafe", "b", ohms / 2)),
                        Faults.shortToStructure("chafe")));
    }

    private Conductor copper(String name, String from, String to, double ohms) {
        return new Conductor(
                name,
                from,
                to,
                ohms,
                Optional.of(new WireHeating(cable.circularMils(), cable.bundleAmps())));
    }

    @Override
    public String entry() {
        return "a";
    }

    @Override
    public String exit() {
        return "b";
    }
}
