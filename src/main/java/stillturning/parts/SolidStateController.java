package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Channel.Switching;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Tolerance;

/**
 * Solid-state controller: {@code supply}, {@code ground}, and an output a channel ({@code out-1},
 * ...), each with its own electronic trip, all run by one logic.
 *
 * @param logicDemand what its logic draws
 * @param logicTolerance what supply its logic needs
 */
public record SolidStateController(
        Tag tag, List<Output> outputs, Demand logicDemand, Tolerance logicTolerance)
        implements Part {

    /** One channel: its switch, its trip, and its state when logic or command path is lost. */
    public record Output(Switching switching, Trip trip, boolean closedByDefault) {}

    /** Name of a channel's logic once nothing commands it any more. */
    private static final String NOBODY = "";

    public SolidStateController {
        outputs = List.copyOf(outputs);
        if (outputs.isEmpty()) {
            throw new IllegalArgumentException(
                    tag.id() + ": a controller has at least one channel");
        }
    }

    @Override
    public List<String> terminals() {
        return Stream.concat(
                        Stream.of("supply", "ground"),
                        numbers().mapToObj(SolidStateController::outputName))
                .toList();
    }

    @Override
    public List<Element> elements() {
        List<Element> elements = new ArrayList<>();
        elements.add(new Consumer("logic", "supply", "ground", logicDemand, logicTolerance));
        numbers().forEach(n -> elements.add(channel(n, "logic")));
        return List.copyOf(elements);
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(FailureMode.of("logic dead", Faults.open("logic")));
        modes.add(
                new FailureMode(
                        "command path lost",
                        numbers().<Alteration>mapToObj(n -> new Put(channel(n, NOBODY))).toList()));
        numbers().forEach(n -> modes.addAll(channelModes(n)));
        return List.copyOf(modes);
    }

    /** The lever that commands a channel, as procedures and positions name it. */
    public String lever(int number) {
        return id() + "." + number;
    }

    /** Rating (A) of the channel at a terminal, if there is one. */
    public Optional<Double> ratedAmps(String terminal) {
        return numbers()
                .filter(n -> outputName(n).equals(terminal))
                .mapToObj(n -> outputs.get(n - 1).trip().ratedAmps())
                .findFirst();
    }

    /** Terminal of a channel's output. */
    public static String outputName(int number) {
        return "out-" + number;
    }

    @Override
    public String entry() {
        return "supply";
    }

    @Override
    public String exit() {
        return outputName(1);
    }

    @Override
    public boolean takesMany(String terminal) {
        return !terminal.startsWith("out-");
    }

    @Override
    public boolean mayDangle(String terminal) {
        return terminal.startsWith("out-");
    }

    private List<FailureMode> channelModes(int number) {
        Channel channel = channel(number, "logic");
        Conductor always =
                new Conductor(
                        channel.name(), channel.from(), channel.to(), channel.switching().ohms());
        return List.of(
                FailureMode.of(channel.name() + " off", Faults.open(channel.name())),
                FailureMode.of(
                        channel.name() + " trips for no reason", Faults.open(channel.name())),
                FailureMode.of(channel.name() + " stuck on", new Put(always)));
    }

    private Channel channel(int number, String logic) {
        Output output = outputs.get(number - 1);
        return new Channel(
                "channel " + number,
                "supply",
                outputName(number),
                output.switching,
                output.trip,
                logic,
                output.closedByDefault);
    }

    private IntStream numbers() {
        return IntStream.rangeClosed(1, outputs.size());
    }
}
