package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.Alteration;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Protection;
import stillturning.parts.Protection.Chart;
import stillturning.parts.RatedChannel;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.Pin;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.Symbol.When;
import stillturning.parts.Tag;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Channel.Switching;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Tolerance;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.OfDimension;

/**
 * Solid-state controller: {@code supply}, {@code ground}, and an output a channel ({@code out-1},
 * ...), each with its own electronic trip, all run by one logic.
 *
 * @param logicDemand what its logic draws
 * @param logicTolerance what supply its logic needs
 */
public record SolidStateController(
        Tag tag, List<OutputChannel> outputs, Demand logicDemand, Tolerance logicTolerance)
        implements Part {

    static final PartKind KIND =
            new PartKind(
                    "controller",
                    "solid-state controller",
                    "solid-state controllers",
                    50,
                    Values.class,
                    "switch the channel, measure at its output");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a controller. */
    @Describes("Electronic channels in the place of switches and breakers, with one logic.")
    public record Values(
            @Example("[5 A, 5 A, 5 A, 5 A]")
                    @Describes("Its channels in order: \"10 A\", or \"10 A, default on\".")
                    List<RatedChannel> channels,
            @Describes("On-resistance of a channel.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance,
            @Describes("Current limit as a share of the channel's rating, in per cent.")
                    @OfDimension(value = Dimension.RATIO, above = "100 %")
                    double limit,
            @Describes("What its logic draws at the study's nominal voltage.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double logicDraws,
            @Describes("Lowest voltage of its logic.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double logicMinimum,
            @Describes("Keeps working this long below it.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double logicRideThrough,
            @Describes("Time that its logic takes to start.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double logicBoot)
            implements PartValues {

        @Override
        public SolidStateController part(Tag tag, PartSurroundings site) {
            return new SolidStateController(
                    tag,
                    channels.stream().map(this::output).toList(),
                    new Demand(Demand.DemandKind.CONSTANT_POWER, logicDraws, site.nominalVolts()),
                    new Tolerance(
                            logicMinimum,
                            logicMinimum,
                            logicRideThrough,
                            logicBoot,
                            Double.POSITIVE_INFINITY,
                            0));
        }

        private OutputChannel output(RatedChannel channel) {
            return new OutputChannel(
                    new Switching(resistance, channel.rating() * limit),
                    new Trip(
                            channel.rating(),
                            ProtectorCurves.ELECTRONIC_TRIP,
                            CHANNEL_COOLING_SECONDS),
                    channel.onByDefault());
        }
    }

    /** A channel's trip forgets its heat in this time. A guess. */
    private static final double CHANNEL_COOLING_SECONDS = 10;

    /** One channel: its switch, its trip, and its state when logic or command path is lost. */
    public record OutputChannel(Switching switching, Trip trip, boolean closedByDefault) {}

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
    public PartKind kind() {
        return KIND;
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
        modes.add(FailureMode.of("logic-dead", Faults.open("logic")).by(Damage.HUNG));
        modes.add(
                FailureMode.of(
                        "command-path-lost",
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
        List<Alteration> gone = List.of(Faults.open(channel.name()));
        return List.of(
                // none gives anything any more, whatever its default
                FailureMode.of("channel-off", channel.name() + " off", gone)
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.of(
                        "channel-trips-for-no-reason",
                        channel.name() + " trips for no reason",
                        gone),
                FailureMode.of(
                        "channel-stuck-on",
                        channel.name() + " stuck on",
                        List.of(new Put(always))));
    }

    private Channel channel(int number, String logic) {
        OutputChannel output = outputs.get(number - 1);
        return new Channel(
                "channel " + number,
                "supply",
                outputName(number),
                output.switching,
                output.trip,
                logic,
                output.closedByDefault,
                lever(number));
    }

    private IntStream numbers() {
        return IntStream.rangeClosed(1, outputs.size());
    }

    @Override
    public Optional<String> across(String terminal) {
        return Optional.empty();
    }

    @Override
    public List<Lever> levers() {
        return numbers()
                .mapToObj(n -> Lever.of(lever(n), "channel " + n, Lever.COMMANDED))
                .toList();
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        return ratedAmps(terminal).map(amps -> new Protection(Chart.BREAKER, amps));
    }

    @Override
    public int logics() {
        return 1;
    }

    @Override
    public String detail() {
        return outputs.size() + " channels";
    }

    @Override
    public List<Symbol> symbols() {
        Stream<Pin> inputs =
                Stream.of(
                        Pin.at(PinEdge.LEFT, "supply").saying("supply"),
                        Pin.at(PinEdge.BELOW, "ground"));
        List<Pin> pins = Stream.concat(inputs, numbers().mapToObj(this::pin)).toList();
        return List.of(Symbol.of(this, Figure.BOX, "", pins));
    }

    private Pin pin(int number) {
        double trip = outputs.get(number - 1).trip().ratedAmps();
        return Pin.at(PinEdge.RIGHT, outputName(number))
                .saying(number + " \u00B7 " + Detail.written(trip, "A"))
                .only(When.JOINED);
    }
}
