package stillturning.parts.source;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.Exchangeable;
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
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Element;
import stillturning.parts.element.Management;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.quantity.Dimension;
import stillturning.quantity.Formats;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GoesWith;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.Key;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;
import stillturning.quantity.field.SetsSize;

/**
 * A battery between {@code plus} and {@code minus}.
 *
 * @param cells cells in series
 * @param capacity at 25 °C, with its age
 * @param ohms internal resistance full and at 25 °C, with its age (ohm)
 * @param chargeAtStart state of charge at the start of the flight, 0 to 1
 */
public record Battery(
        Tag tag,
        OpenCircuit openCircuit,
        int cells,
        @MeasuredBy("discharge it, full, at its rated current to its end voltage and take the time")
                Capacity capacity,
        double ohms,
        double chargeAtStart,
        Optional<Management> management)
        implements Exchangeable, Part {

    static final PartKind KIND =
            new PartKind(
                    "battery",
                    "battery",
                    "batteries",
                    10,
                    Values.class,
                    "measure its voltage at rest and while cranking");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What it is made of. */
    public enum Chemistry {
        LEAD_ACID(RestVoltage.LEAD_ACID, 6),
        @Key("lifepo4")
        LITHIUM_IRON_PHOSPHATE(RestVoltage.LITHIUM_IRON_PHOSPHATE, 4);

        @SuppressWarnings("ImmutableEnumChecker") // a record of immutable values
        private final RestVoltage curve;

        private final int cellsOfTwelveVolts;

        Chemistry(RestVoltage curve, int cellsOfTwelveVolts) {
            this.curve = curve;
            this.cellsOfTwelveVolts = cellsOfTwelveVolts;
        }
    }

    /** What is known of a battery. */
    @Describes("Stores charge.")
    public record Values(
            Chemistry chemistry,
            @Describes("12 V or 24 V.")
                    @GrowsWithVolts
                    @SetsSize
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double nominal,
            @SetsSize @OfDimension(value = Dimension.CHARGE, above = "0 Ah") double capacity,
            @Describes("Discharge time at which the capacity is rated.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    double ratedOver,
            @Describes("Peukert exponent, 1 for none.")
                    @Bounds(least = 1, most = 2)
                    @MeasuredBy(
                            "discharge it at its rated and at ten times its rated current and"
                                    + " compare the times")
                    double peukert,
            @Describes("Internal resistance.")
                    @GoesWith("nominal")
                    @GoesWith(value = "capacity", power = -1)
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy(
                            "two known loads at its poles: the difference of the voltages over that"
                                    + " of the currents")
                    double resistance,
            @Describes("Share of its capacity that age has left.")
                    @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    @MeasuredBy(
                            "discharge it, full, at its rated current and divide the charge it gave"
                                    + " by its rating")
                    double health,
            @Describes("State of charge at the start of the flight.")
                    @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %")
                    @MeasuredBy(
                            "its voltage after some hours at rest, held against the maker's curve")
                    double charge,
            Optional<ManagementValues> management)
            implements PartValues {

        @Override
        public Battery part(Tag tag, PartSurroundings site) {
            double blocks = nominal / NOMINAL_VOLTS;
            if (blocks != 1 && blocks != 2) {
                throw new IllegalArgumentException(
                        "battery: nominal " + nominal + " V is neither 12 V nor 24 V");
            }
            return new Battery(
                            tag,
                            new OpenCircuit(chemistry.curve, blocks),
                            (int) (chemistry.cellsOfTwelveVolts * blocks),
                            new Capacity(capacity, ratedOver / SECONDS_PER_HOUR, peukert),
                            resistance,
                            charge,
                            management.map(m -> m.made(blocks)))
                    .aged(health);
        }
    }

    private static final double NOMINAL_VOLTS = 12;
    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * Share of its capacity that a worn-out battery keeps. Common practice, no published source.
     */
    private static final double WORN_OUT = 0.2;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("plus", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(cell(openCircuit));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                // torn off its terminals; between them water passes too little to matter
                FailureMode.of("disconnects-itself", Faults.open("cell"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.HUNG)
                        .alsoCalled("management disconnects", "open"),
                FailureMode.of("one-cell-shorted", new Put(cell(without(1)))),
                FailureMode.of("half-shorted-inside", new Put(cell(without(cells / 2))))
                        .alsoCalled("internal short", "shorted inside"),
                FailureMode.of("capacity-lost", new Put(aged(WORN_OUT).cell(openCircuit)))
                        .inspectedBy("capacity test at a known current, against time"));
    }

    @Override
    public String entry() {
        return "plus";
    }

    @Override
    public String exit() {
        return "plus";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    /**
     * The same battery with a share of its capacity left, from above 0 to 1. Its resistance grows
     * as its capacity shrinks: to have lost a fifth of either charge or power is the usual end of
     * its life (from memory, unverified), and both are taken to go together.
     */
    public Battery aged(double health) {
        return new Battery(
                tag,
                openCircuit,
                cells,
                capacity.times(health),
                ohms / health,
                chargeAtStart,
                management);
    }

    /** What is left when so many cells are bridged, by a strap, a plate or a hole. */
    private OpenCircuit without(int bridged) {
        double rest = (cells - bridged) / (double) cells;
        return new OpenCircuit(openCircuit.curve(), openCircuit.factor() * rest);
    }

    @Override
    public Optional<Part> inPlaceOf(Part other) {
        Tag there = other.tag();
        Tag same = new Tag(there.id(), there.label(), there.zone(), tag.burden());
        return Optional.<Part>of(
                        new Battery(
                                same,
                                openCircuit,
                                cells,
                                capacity,
                                ohms,
                                chargeAtStart,
                                management))
                .filter(here -> other.kind().equals(KIND));
    }

    private Cell cell(OpenCircuit open) {
        return new Cell(
                "cell",
                "plus",
                "minus",
                open,
                capacity,
                ohms,
                chargeAtStart,
                tag.burden().kilograms(),
                management);
    }

    @Override
    public List<String> sourceTerminals() {
        return List.of("plus");
    }

    @Override
    public boolean endsBatteryLead() {
        return true;
    }

    @Override
    public boolean runsProgram() {
        return management.isPresent();
    }

    @Override
    public String detail() {
        return Detail.number(capacity.coulombs() / SECONDS_PER_HOUR) + " Ah usable";
    }

    @Override
    public List<Symbol> symbols() {
        return List.of(
                Symbol.of(
                        this,
                        Figure.BATTERY,
                        Formats.ampHours(capacity.coulombs()),
                        List.of(Pin.at(PinEdge.RIGHT, "plus"), Pin.at(PinEdge.LEFT, "minus"))));
    }
}
