package stillturning.parts;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.Pin;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Rectifier;
import stillturning.parts.element.Tolerance;

/**
 * Something that needs electricity, with one supply input ({@code plus}) or several ({@code a},
 * {@code b}, ...) combined by diodes inside it, and its return at {@code minus}.
 *
 * @param inputs names of its supply inputs
 */
public record Load(Tag tag, Demand demand, Tolerance tolerance, List<String> inputs)
        implements Part {

    static final PartKind KIND =
            new PartKind(
                    "load",
                    "load",
                    "loads",
                    150,
                    Optional.empty(),
                    "run it by itself, the other one off",
                    0);

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** Name of the element that does the load's work. */
    public static final String WORK = "work";

    private static final String INSIDE = "inside";
    private static final String INPUT = "measure the resistance of its inputs, out of circuit";
    private static final String INPUT_DIODE = "feed each input alone, measure at the other";

    /** Small Schottky diodes, 0.35 V at 3 A. Class of the data sheets read for the 1N582x. */
    private static final double SATURATION_AMPS = 2e-5;

    private static final double EMISSION_VOLTS = 0.0275;
    private static final double DIODE_OHMS = 0.01;

    public Load {
        inputs = List.copyOf(inputs);
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException(tag.id() + ": a load has at least one input");
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        List<String> all = new ArrayList<>(inputs);
        all.add("minus");
        return List.copyOf(all);
    }

    @Override
    public List<Element> elements() {
        if (inputs.size() == 1) {
            return List.of(new Consumer(WORK, inputs.get(0), "minus", demand, tolerance));
        }
        List<Element> elements = new ArrayList<>();
        elements.add(new Consumer(WORK, INSIDE, "minus", demand, tolerance));
        inputs.forEach(input -> elements.add(inputDiode(input)));
        return List.copyOf(elements);
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(
                FailureMode.of("stops-working", Faults.open(WORK))
                        .whateverItsSupply()
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED, Damage.HUNG));
        if (inputs.size() == 1) {
            modes.add(
                    FailureMode.of("input-short", Faults.shortBetween(inputs.get(0), "minus"))
                            .whateverItsSupply()
                            .inspectedBy(INPUT));
        } else {
            inputs.forEach(input -> modes.addAll(modesOf(input)));
        }
        return List.copyOf(modes);
    }

    private static List<FailureMode> modesOf(String input) {
        Rectifier diode = inputDiode(input);
        return List.of(
                FailureMode.of(
                                "input-short",
                                "input " + input + " short",
                                List.of(Faults.shortBetween(input, "minus")))
                        .inspectedBy(INPUT),
                FailureMode.of(
                                "input-diode-open",
                                diode.name() + " open",
                                List.of(Faults.open(diode.name())))
                        .inspectedBy(INPUT_DIODE),
                FailureMode.of(
                                "input-diode-shorted",
                                diode.name() + " shorted",
                                List.of(Faults.metalFor(diode, DIODE_OHMS)))
                        .inspectedBy(INPUT_DIODE));
    }

    @Override
    public String entry() {
        return inputs.get(0);
    }

    @Override
    public String exit() {
        return "minus";
    }

    @Override
    public boolean takesMany(String terminal) {
        return terminal.equals("minus");
    }

    @Override
    public boolean mayDangle(String terminal) {
        return inputs.size() > 1 && inputs.contains(terminal);
    }

    private static Rectifier inputDiode(String input) {
        return new Rectifier(
                "input diode " + input, input, INSIDE, SATURATION_AMPS, EMISSION_VOLTS, DIODE_OHMS);
    }

    @Override
    public Role role() {
        return Role.LOAD;
    }

    @Override
    public Optional<String> across(String terminal) {
        return Optional.empty();
    }

    @Override
    public boolean runsProgram() {
        return true;
    }

    @Override
    public List<Symbol> symbols() {
        Stream<Pin> fed =
                inputs.stream()
                        .map(i -> Pin.at(PinEdge.LEFT, i).saying(inputs.size() > 1 ? i : ""));
        List<Pin> pins = Stream.concat(fed, Stream.of(Pin.at(PinEdge.RIGHT, "minus"))).toList();
        return List.of(Symbol.of(this, Figure.CONSUMER, Detail.written(demand.amps(), "A"), pins));
    }
}
