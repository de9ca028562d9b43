package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.Pin;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.Tag;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A metal bar: feeds arrive at studs of their own, everything else leaves from {@code bar}.
 *
 * @param studs names of the feed studs
 * @param studOhms resistance of a stud's joint (ohm)
 */
public record Bus(Tag tag, List<String> studs, double studOhms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "bus",
                    "bus",
                    "buses",
                    40,
                    Values.class,
                    "look at its studs, measure from stud to stud");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a bus. */
    @Describes("Bar at which many lines meet.")
    public record Values(
            @Describes("Resistance of a stud's joint.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance)
            implements PartValues {

        @Override
        public Bus part(Tag tag, PartSurroundings site) {
            return new Bus(tag, site.arrivals(), resistance);
        }
    }

    public Bus {
        studs = List.copyOf(studs);
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        List<String> all = new ArrayList<>(studs);
        all.add("bar");
        return List.copyOf(all);
    }

    @Override
    public List<Element> elements() {
        return studs.stream()
                .<Element>map(stud -> new Conductor(stud, stud, "bar", studOhms))
                .toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(
                FailureMode.of("short-to-ground", Faults.shortToStructure("bar"))
                        .by(Damage.SCORCHED, Damage.SOAKED));
        for (String stud : studs) {
            modes.add(
                    FailureMode.of("open", stud + " open", List.of(Faults.open(stud)))
                            .by(Damage.TORN));
        }
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return studs.isEmpty() ? "bar" : studs.get(0);
    }

    @Override
    public String exit() {
        return "bar";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    @Override
    public boolean mayDangle(String terminal) {
        return true;
    }

    @Override
    public String entry(int arrival) {
        return studs.isEmpty() ? "bar" : studs.get(Math.min(arrival, studs.size() - 1));
    }

    @Override
    public Role role() {
        return Role.BUS;
    }

    @Override
    public Optional<String> across(String terminal) {
        return Optional.of("bar").filter(bar -> !bar.equals(terminal));
    }

    @Override
    public String detail() {
        return studs.size() == 1 ? "1 feed" : studs.size() + " feeds";
    }

    @Override
    public List<Symbol> symbols() {
        List<Pin> pins = terminals().stream().map(t -> Pin.at(PinEdge.BY_CURRENT, t)).toList();
        return List.of(Symbol.of(this, Figure.BUS, "", pins));
    }
}
