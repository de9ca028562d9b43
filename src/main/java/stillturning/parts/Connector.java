package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;

/**
 * A connector whose pin n joins {@code na} to {@code nb}.
 *
 * @param pinOhms resistance of a mated pin (ohm)
 */
public record Connector(Tag tag, int pins, double pinOhms) implements Part {

    public Connector {
        if (pins < 1) {
            throw new IllegalArgumentException(tag.id() + ": a connector has at least one pin");
        }
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
                new FailureMode(
                        "comes apart",
                        elements().stream().map(pin -> Faults.open(pin.name())).toList()));
        for (Element pin : elements()) {
            modes.add(FailureMode.of(pin.name() + " open", Faults.open(pin.name())));
            modes.add(FailureMode.of(pin.name() + " high resistance", Faults.badContact(pin)));
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
}
