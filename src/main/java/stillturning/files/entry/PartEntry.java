package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard.Action;
import stillturning.quantity.Dimension;
import stillturning.quantity.WireGauge;
import stillturning.yaml.notation.Bounds;
import stillturning.yaml.notation.Describes;
import stillturning.yaml.notation.Discriminator;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Key;
import stillturning.yaml.notation.OfDimension;

/**
 * A part as written, in a candidate's file or in the catalogue. What is left out, the catalogue
 * fills in.
 */
@Describes("A part; what is left out comes from the catalogue's class.")
@Discriminator("is")
public sealed interface PartEntry
        permits PartEntry.BatteryEntry,
                PartEntry.AlternatorEntry,
                PartEntry.BusEntry,
                PartEntry.FuseEntry,
                PartEntry.BreakerEntry,
                PartEntry.SwitchEntry,
                PartEntry.ContactorEntry,
                PartEntry.DiodeEntry,
                PartEntry.GroundEntry,
                PartEntry.ConnectorEntry,
                PartEntry.ConverterEntry,
                PartEntry.GuardEntry,
                PartEntry.ControllerEntry,
                PartEntry.WireEntry {

    /** What a person calls it. */
    @Describes("What a person calls it; its name if not written.")
    Optional<String> label();

    /** Zone where it sits. */
    @Describes("Zone where it sits; that of what comes before it if not written.")
    Optional<String> zone();

    /** Class in the catalogue; the kind's first if not written. */
    @Describes("Class in the catalogue; the kind's first if not written.")
    Optional<String> ofClass();

    /** Weight. */
    @Describes("Weight.")
    Optional<Given> mass();

    /** Price. */
    @Describes("Price.")
    Optional<Price> price();

    /** A battery. */
    @Describes("Stores charge.")
    @Key("battery")
    record BatteryEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            Optional<Chemistry> chemistry,
            @Describes("12 V or 24 V.") @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> nominal,
            @OfDimension(value = Dimension.CHARGE, above = "0 Ah") Optional<Given> capacity,
            @Describes("Discharge time at which the capacity is rated.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Optional<Given> ratedOver,
            @Describes("Peukert exponent, 1 for none.") @Bounds(least = 1, most = 2)
                    Optional<Double> peukert,
            @Describes("Internal resistance.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Describes("Share of its capacity that age has left.")
                    @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Optional<Given> health,
            @Describes("State of charge at the start of the flight.")
                    @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %")
                    Optional<Given> charge,
            Optional<ManagementEntry> management)
            implements PartEntry {}

    /** What a battery is made of. */
    enum Chemistry {
        LEAD_ACID,
        @Key("lifepo4")
        LITHIUM_IRON_PHOSPHATE
    }

    /** An alternator with its regulator. */
    @Describes("Makes current while the engine turns it, with its regulator.")
    @Key("alternator")
    record AlternatorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("Current at full speed.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating,
            @Describes("Share of its rating by speed.") Optional<List<SpeedPoint>> output,
            @Describes("Voltage that its regulator holds without load.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> setPoint,
            @Describes("Fall of its voltage with current.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> droop,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> fieldResistance,
            @Describes("Where its magnetism comes from: field (a fed winding) or magnets.")
                    Optional<Excitation> excitation,
            @Describes("What becomes of it when no battery is joined to it.")
                    Optional<WithoutBattery> withoutBattery,
            @Describes("Highest voltage when it loses its battery while it charges it.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> dumpClamp,
            @Describes("... and how long that lasts.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> dumpLasts)
            implements PartEntry {}

    /** Where an alternator's magnetism comes from. */
    enum Excitation {
        FIELD,
        MAGNETS
    }

    /** A point of an alternator's output curve. */
    record SpeedPoint(
            @OfDimension(value = Dimension.ROTATION, least = "0 rpm") Given at,
            @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %") Given share) {}

    /** A bus bar. */
    @Describes("Bar at which many lines meet.")
    @Key("bus")
    record BusEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("Resistance of a stud's joint.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A fuse. */
    @Describes("Melts on too much current; not to be set again in flight.")
    @Key("fuse")
    record FuseEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Given> rating,
            @Describes("Voltage across it at its rating.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            Optional<Curve> curve,
            @Describes("Largest current that it interrupts.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> interrupts)
            implements PartEntry {}

    /** A circuit breaker. */
    @Describes("Opens on too much current; the pilot can pull it and push it in again.")
    @Key("breaker")
    record BreakerEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Given> rating,
            @Describes("Voltage across it at its rating.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            Optional<Curve> curve,
            @Describes("Largest current that it interrupts.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> interrupts)
            implements PartEntry {}

    /** Time–current curve of a protector. */
    enum Curve {
        BLADE_FUSE,
        HIGH_CURRENT_FUSE,
        THERMAL_BREAKER,
        ELECTRONIC_TRIP
    }

    /** A hand-operated switch. */
    @Describes("Lever that closes or opens a circuit by hand.")
    @Key("switch")
    record SwitchEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Bounds(least = 1, most = 4) Optional<Integer> poles,
            @Describes("single (off, on) or double (up, off, down).") Optional<Throws> throwing,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance,
            @Describes("Current that its contacts are rated for, resistive load.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating)
            implements PartEntry {}

    /** How many circuits one pole of a switch can close. */
    enum Throws {
        SINGLE,
        DOUBLE
    }

    /** A contactor or relay. */
    @Describes("Contacts for large currents, closed by a coil.")
    @Key("contactor")
    record ContactorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> coilResistance,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> pullIn,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> dropOut,
            @Describes("Time that its contacts take to move.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> delay,
            @Describes("Resistance of its closed contacts.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Describes("Current that its contacts carry continuously.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating)
            implements PartEntry {}

    /** A diode. */
    @Describes("Lets current through one way only.")
    @Key("diode")
    record DiodeEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("Forward voltage at the stated current.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            @Describes("Current at which the forward voltage is stated.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> at,
            @Describes("Series resistance.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A ground point. */
    @Describes("Point where returns come together.")
    @Key("ground")
    record GroundEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("Whether it is bolted to the metal that a chafed wire would touch.")
                    Optional<Boolean> onStructure,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance)
            implements PartEntry {}

    /** A connector. */
    @Describes("Plug and socket with one or many pins.")
    @Key("connector")
    record ConnectorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Bounds(least = 1, most = 200) Optional<Integer> pins,
            @Describes("Resistance of a mated pin.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A DC–DC converter. */
    @Describes("Makes a steady voltage of another one.")
    @Key("converter")
    record ConverterEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> output,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> droop,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Given> limit,
            @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Optional<Given> efficiency,
            @OfDimension(value = Dimension.POWER, least = "0 W") Optional<Given> idle,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> minimum,
            @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> restart)
            implements PartEntry {}

    /** Over-voltage protection in a feed. */
    @Describes("Acts when the voltage is too high.")
    @Key("overvoltage-guard")
    record GuardEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("disconnects (opens its feed) or shorts (joins its input to minus).")
                    Optional<Action> acts,
            @Describes("Acts when this is exceeded.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> trip,
            @Describes("... for longer than this.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> after,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance)
            implements PartEntry {}

    /** A solid-state controller. */
    @Describes("Electronic channels in the place of switches and breakers, with one logic.")
    @Key("controller")
    record ControllerEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Describes("Its channels in order: \"10 A\", or \"10 A, default on\".")
                    Optional<List<ChannelText>> channels,
            @Describes("On-resistance of a channel.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Describes("Current limit as a share of the channel's rating, in per cent.")
                    @OfDimension(value = Dimension.RATIO, above = "100 %")
                    Optional<Given> limit,
            @Describes("What its logic draws at the study's nominal voltage.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> logicDraws,
            @Describes("Lowest voltage of its logic.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> logicMinimum,
            @Describes("Keeps working this long below it.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> logicRideThrough,
            @Describes("Time that its logic takes to start.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> logicBoot)
            implements PartEntry {}

    /** A wire that stands for itself. */
    @Describes("Wire that stands for itself, outside of any run.")
    @Key("wire")
    record WireEntry(
            Optional<String> label,
            Optional<String> zone,
            @Key("class") Optional<String> ofClass,
            @OfDimension(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            Optional<WireGauge> gauge,
            @OfDimension(value = Dimension.LENGTH, above = "0 m") Optional<Given> length)
            implements PartEntry {}
}
