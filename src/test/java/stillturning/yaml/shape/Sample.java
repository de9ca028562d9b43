package stillturning.yaml.shape;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Key;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.BindResult;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.notation.Discriminator;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.GivenGauge;
import stillturning.yaml.notation.TextForm;

/** Record types and texts for the tests; all values invented. */
public final class Sample {

    private Sample() {}

    @Describes("An aircraft's electrics, as drawn.")
    public record Drawing(
            String title,
            @Default("no") boolean flown,
            @Bounds(least = 1, most = 4) int seats,
            @Bounds(least = 0, most = 2) @Default("1") double weighting,
            @Default("{}") Map<String, Part> parts,
            @Default("[]") List<Feed> feeds,
            Optional<String> remark) {}

    @Discriminator("is")
    sealed interface Part permits Battery, Wire, Source {}

    @Key("battery")
    record Battery(
            @Describes("Charge when new.")
                    @OfDimension(value = Dimension.CHARGE, above = "0 Ah", most = "1000 Ah")
                    Given capacity,
            @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %") @Default("100 %")
                    Quantity health,
            Chemistry chemistry)
            implements Part {}

    enum Chemistry {
        LEAD_ACID,
        @Key("LiFePO4")
        LITHIUM_IRON
    }

    record Wire(
            GivenGauge gauge, @OfDimension(value = Dimension.LENGTH, above = "0 m") Quantity length)
            implements Part {}

    sealed interface Source extends Part permits Alternator {}

    record Alternator(
            @OfDimension(Dimension.CURRENT) Given limit,
            @Key("regulated at")
                    @OfDimension(value = Dimension.VOLTAGE, least = "5 V")
                    @Default("14.2 V (automatic)")
                    Given setPoint,
            @OfDimension(Dimension.TEMPERATURE) @Default("[]") List<Given> ratedAt)
            implements Source {
        public Alternator {
            if (limit.quantity().si() > 500) {
                throw new IllegalArgumentException(
                        "no alternator gives " + limit.quantity().written() + "; check the limit");
            }
        }
    }

    /** {@code main-bus, breaker 5 A} or a mapping. */
    record Feed(
            String from,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Quantity breaker,
            @Default("[]") List<Feed> then) {

        static Optional<Feed> read(String text, TextForm.FaultReceiver faults) {
            int comma = text.indexOf(", breaker ");
            if (comma < 0) {
                faults.at(0, "no breaker is named", "write main-bus, breaker 5 A");
                return Optional.empty();
            }
            int at = comma + ", breaker ".length();
            return Given.read(text.substring(at), Dimension.CURRENT, faults.from(at))
                    .map(g -> new Feed(text.substring(0, comma), g.quantity(), List.of()));
        }
    }

    public static final Binder BINDER = new Binder().with(Feed.class, Feed::read);

    public static final String TEXT =
            """
            # an invented two-seater
            title: Sandpiper
            seats: 2

            parts:
              bat-1:            # behind the seats
                is: battery
                capacity: 20 Ah (data sheet, curve 3)
                chemistry: LiFePO4
              bus-feed: {is: wire, gauge: AWG 16, length: 3 ft}
              alt:
                is: alternator
                limit: '45 A (guess)'
                rated-at: [25 °C, 80 °C (measured)]
            feeds:
              - main-bus, breaker 5 A
              - from: main-bus
                breaker: 10 A
                then: ["aux-bus, breaker 2 A"]
            remark: on
            """;

    public static YamlDocument document(String text) {
        return YamlDocument.of(Path.of("folder", "two-battery.yaml"), text);
    }

    public static BindResult<Drawing> bind(String text) {
        return BINDER.bind(document(text), Drawing.class);
    }

    /** The problems of a text, one a line, as the user sees them. */
    static String problems(String text) {
        StringBuilder all = new StringBuilder();
        bind(text).problems().forEach(p -> all.append(p).append('\n'));
        return all.toString();
    }
}
