package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A connector whose pin n joins {@code na} to {@code nb}.
 *
 * @param pinOhms resistance of a mated pin (ohm)
 */
public record Connector(Tag tag, int pins, double pinOhms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "connector",
                    "connector",
                    "connectors",
                    130,
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

    /** What is known of a connector. */
    @Describes("Plug and socket with one or many pins.")
    public record Values(
            @Bounds(least = 1, most = 200) int pins,
            @Describes("Resistance of a mated pin.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance)
            implements PartValues {

        @Override
        public Connector part(Tag tag, PartSurroundings site) {
            return new Connector(tag, pins, resistance);
        }
    }

    private static final Pattern PIN = Pattern.compile("(?<number>[0-9]+)(?<side>[ab])");

    public Connector {
        if (pins < 1) {
            throw new IllegalArgumentException(tag.id() + ": a connector has at least one pin");
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return IntStream.rangeClosed(1, pins)
                .boxed()
                .flatMap(pin -> Stream.of(pin + "a", pin + "b"))
                .toList();
    }

    @Override
    public List<Element> elements() {
        return IntStream.rangeClosed(1, pins).<Element>mapToObj(this::pin).toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(
                FailureMode.of(
                                "comes-apart",
                                "comes apart",
                                elements().stream().map(pin -> Faults.open(pin.name())).toList())
                        .by(Damage.TORN, Damage.SCORCHED));
        for (Element pin : elements()) {
            modes.add(
                    FailureMode.of(
                            "pin-open", pin.name() + " open", List.of(Faults.open(pin.name()))));
            modes.add(
                    FailureMode.of(
                                    "pin-high-resistance",
                                    pin.name() + " high resistance",
                                    List.of(Faults.badContact(pin)))
                            .by(Damage.SOAKED));
        }
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return "1a";
    }

    @Override
    public String exit() {
        return "1b";
    }

    @Override
    public boolean mayDangle(String terminal) {
        return true;
    }

    private Conductor pin(int pin) {
        return new Conductor("pin " + pin, pin + "a", pin + "b", pinOhms);
    }

    @Override
    public Role role() {
        return Role.CONNECTOR;
    }

    @Override
    public Optional<String> across(String terminal) {
        Matcher pin = PIN.matcher(terminal);
        return pin.matches()
                ? Optional.of(pin.group("number") + (pin.group("side").equals("a") ? "b" : "a"))
                : Optional.empty();
    }

    @Override
    public Optional<String> wayHint() {
        return pins > 1
                ? Optional.of("write the pin, such as " + id() + " pin 1")
                : Optional.empty();
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
    public String detail() {
        return pins + " pins";
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.CONNECTOR, "");
    }
}
