package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * Two diodes on one heat sink: {@code in} feeds {@code out-1} and {@code out-2}, and neither output
 * feeds the other. The heat sink is live, as is usual where the anodes are bolted to it; from
 * memory, unverified.
 */
public record DiodeIsolator(Tag tag, DiodeLaw law) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "diode-isolator",
                    "diode isolator",
                    "diode isolators",
                    81,
                    Values.class,
                    "measure each diode both ways, out of circuit");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a diode isolator. */
    @Describes("Charges two batteries from one source, and keeps either from feeding the other.")
    public record Values(
            @Describes("Forward voltage of each diode at the stated current.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double drop,
            @Describes("Current at which the forward voltage is stated.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double at,
            @Describes("Series resistance of each diode.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance)
            implements PartValues {

        @Override
        public DiodeIsolator part(Tag tag, PartSurroundings site) {
            return new DiodeIsolator(tag, DiodeLaw.through(drop, at, resistance));
        }
    }

    private static final List<String> OUTPUTS = List.of("out-1", "out-2");

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("in", "out-1", "out-2");
    }

    @Override
    public List<Element> elements() {
        return OUTPUTS.stream().map(this::diode).toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(
                FailureMode.of(
                                "input-open",
                                "input open",
                                elements().stream().map(d -> Faults.open(d.name())).toList())
                        .by(Damage.TORN));
        // water bridges the live heat sink to the structure, heat chars what insulates it
        modes.add(
                FailureMode.of("short-to-ground", Faults.shortToStructure(entry()))
                        .by(Damage.SCORCHED, Damage.SOAKED));
        for (Element diode : elements()) {
            String name = diode.name();
            modes.add(FailureMode.of("diode-open", name + " open", List.of(Faults.open(name))));
            modes.add(
                    // a junction that gets too hot alloys through
                    FailureMode.of(
                                    "diode-shorted",
                                    name + " shorted",
                                    List.of(Faults.metalFor(diode, law.ohms())))
                            .by(Damage.SCORCHED));
        }
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return "in";
    }

    @Override
    public String exit() {
        return OUTPUTS.get(0);
    }

    private Element diode(String output) {
        return law.between("diode " + output.replace("out-", ""), entry(), output);
    }

    /** A run ends at it, and others start from its outputs. */
    @Override
    public Optional<String> across(String terminal) {
        return Optional.empty();
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    @Override
    public boolean carriesSeveral() {
        return true;
    }

    @Override
    public String detail() {
        return Detail.number(1000 * law.ohms()) + " mohm";
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.DIODE, "");
    }
}
