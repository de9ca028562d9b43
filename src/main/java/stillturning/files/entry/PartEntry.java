package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard.Action;
import stillturning.quantity.Dimension;
import stillturning.quantity.WireGauge;
import stillturning.yaml.Bounds;
import stillturning.yaml.Called;
import stillturning.yaml.Discriminator;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/**
 * A part as written, in a candidate's file or in the catalogue. What is left out, the catalogue
 * fills in.
 */
@Words("A part; what is left out comes from the catalogue's class.")
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
    @Words("What a person calls it; its name if not written.")
    Optional<String> label();

    /** Zone where it sits. */
    @Words("Zone where it sits; that of what comes before it if not written.")
    Optional<String> zone();

    /** Class in the catalogue; the kind's first if not written. */
    @Words("Class in the catalogue; the kind's first if not written.")
    Optional<String> ofClass();

    /** Weight. */
    @Words("Weight.")
    Optional<Given> mass();

    /** Price. */
    @Words("Price.")
    Optional<Price> price();

    /** A battery. */
    @Words("Stores charge.")
    @Called("battery")
    record BatteryEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            Optional<Chemistry> chemistry,
            @Words("12 V or 24 V.") @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> nominal,
            @Unit(value = Dimension.CHARGE, above = "0 Ah") Optional<Given> capacity,
            @Words("Discharge time at which the capacity is rated.")
                    @Unit(value = Dimension.TIME, above = "0 s")
                    Optional<Given> ratedOver,
            @Words("Peukert exponent, 1 for none.") @Bounds(least = 1, most = 2)
                    Optional<Double> peukert,
            @Words("Internal resistance.") @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Words("Share of its capacity that age has left.")
                    @Unit(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Optional<Given> health,
            @Words("State of charge at the start of the flight.")
                    @Unit(value = Dimension.RATIO, least = "0 %", most = "100 %")
                    Optional<Given> charge,
            Optional<ManagementEntry> management)
            implements PartEntry {}

    /** What a battery is made of. */
    enum Chemistry {
        LEAD_ACID,
        @Called("lifepo4")
        LITHIUM_IRON_PHOSPHATE
    }

    /** An alternator with its regulator. */
    @Words("Makes current while the engine turns it, with its regulator.")
    @Called("alternator")
    record AlternatorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("Current at full speed.") @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating,
            @Words("Share of its rating by speed.") Optional<List<SpeedPoint>> output,
            @Words("Voltage that its regulator holds without load.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> setPoint,
            @Words("Fall of its voltage with current.")
                    @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> droop,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> fieldResistance,
            @Words("Where its magnetism comes from: field (a fed winding) or magnets.")
                    Optional<Excitation> excitation,
            @Words("What becomes of it when no battery is joined to it.")
                    Optional<WithoutBattery> withoutBattery,
            @Words("Highest voltage when it loses its battery while it charges it.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> dumpClamp,
            @Words("... and how long that lasts.") @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> dumpLasts)
            implements PartEntry {}

    /** Where an alternator's magnetism comes from. */
    enum Excitation {
        FIELD,
        MAGNETS
    }

    /** A point of an alternator's output curve. */
    record SpeedPoint(
            @Unit(value = Dimension.ROTATION, least = "0 rpm") Given at,
            @Unit(value = Dimension.RATIO, least = "0 %", most = "100 %") Given share) {}

    /** A bus bar. */
    @Words("Bar at which many lines meet.")
    @Called("bus")
    record BusEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("Resistance of a stud's joint.")
                    @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A fuse. */
    @Words("Melts on too much current; not to be set again in flight.")
    @Called("fuse")
    record FuseEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Unit(value = Dimension.CURRENT, above = "0 A") Optional<Given> rating,
            @Words("Voltage across it at its rating.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            Optional<Curve> curve,
            @Words("Largest current that it interrupts.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> interrupts)
            implements PartEntry {}

    /** A circuit breaker. */
    @Words("Opens on too much current; the pilot can pull it and push it in again.")
    @Called("breaker")
    record BreakerEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Unit(value = Dimension.CURRENT, above = "0 A") Optional<Given> rating,
            @Words("Voltage across it at its rating.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            Optional<Curve> curve,
            @Words("Largest current that it interrupts.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
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
    @Words("Lever that closes or opens a circuit by hand.")
    @Called("switch")
    record SwitchEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Bounds(least = 1, most = 4) Optional<Integer> poles,
            @Words("single (off, on) or double (up, off, down).") Optional<Throws> throwing,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance,
            @Words("Current that its contacts are rated for, resistive load.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating)
            implements PartEntry {}

    /** How many circuits one pole of a switch can close. */
    enum Throws {
        SINGLE,
        DOUBLE
    }

    /** A contactor or relay. */
    @Words("Contacts for large currents, closed by a coil.")
    @Called("contactor")
    record ContactorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> coilResistance,
            @Unit(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> pullIn,
            @Unit(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> dropOut,
            @Words("Time that its contacts take to move.")
                    @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> delay,
            @Words("Resistance of its closed contacts.")
                    @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Words("Current that its contacts carry for ever.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> rating)
            implements PartEntry {}

    /** A diode. */
    @Words("Lets current through one way only.")
    @Called("diode")
    record DiodeEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("Forward voltage at the stated current.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> drop,
            @Words("Current at which the forward voltage is stated.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> at,
            @Words("Series resistance.") @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A ground point. */
    @Words("Point where returns come together.")
    @Called("ground")
    record GroundEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("Whether it is bolted to the metal that a chafed wire would touch.")
                    Optional<Boolean> onStructure,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance)
            implements PartEntry {}

    /** A connector. */
    @Words("Plug and socket with one or many pins.")
    @Called("connector")
    record ConnectorEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Bounds(least = 1, most = 200) Optional<Integer> pins,
            @Words("Resistance of a mated pin.")
                    @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance)
            implements PartEntry {}

    /** A DC–DC converter. */
    @Words("Makes a steady voltage of another one.")
    @Called("converter")
    record ConverterEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Unit(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> output,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> droop,
            @Unit(value = Dimension.CURRENT, above = "0 A") Optional<Given> limit,
            @Unit(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Optional<Given> efficiency,
            @Unit(value = Dimension.POWER, least = "0 W") Optional<Given> idle,
            @Unit(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> minimum,
            @Unit(value = Dimension.VOLTAGE, above = "0 V") Optional<Given> restart)
            implements PartEntry {}

    /** Over-voltage protection in a feed. */
    @Words("Acts when the voltage is too high.")
    @Called("overvoltage-guard")
    record GuardEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("disconnects (opens its feed) or shorts (joins its input to minus).")
                    Optional<Action> acts,
            @Words("Acts when this is exceeded.") @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> trip,
            @Words("... for longer than this.") @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> after,
            @Unit(value = Dimension.RESISTANCE, above = "0 ohm") Optional<Given> resistance)
            implements PartEntry {}

    /** A solid-state controller. */
    @Words("Electronic channels in the place of switches and breakers, with one logic.")
    @Called("controller")
    record ControllerEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            @Words("Its channels in order: \"10 A\", or \"10 A, default on\".")
                    Optional<List<ChannelText>> channels,
            @Words("On-resistance of a channel.")
                    @Unit(value = Dimension.RESISTANCE, above = "0 ohm")
                    Optional<Given> resistance,
            @Words("Current limit as a share of the channel's rating, in per cent.")
                    @Unit(value = Dimension.RATIO, above = "100 %")
                    Optional<Given> limit,
            @Words("What its logic draws at the study's nominal voltage.")
                    @Unit(value = Dimension.CURRENT, above = "0 A")
                    Optional<Given> logicDraws,
            @Words("Lowest voltage of its logic.") @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> logicMinimum,
            @Words("Keeps working this long below it.") @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> logicRideThrough,
            @Words("Time that its logic takes to start.")
                    @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> logicBoot)
            implements PartEntry {}

    /** A wire that stands for itself. */
    @Words("Wire that stands for itself, outside of any run.")
    @Called("wire")
    record WireEntry(
            Optional<String> label,
            Optional<String> zone,
            @Called("class") Optional<String> ofClass,
            @Unit(value = Dimension.MASS, least = "0 kg") Optional<Given> mass,
            Optional<Price> price,
            Optional<WireGauge> gauge,
            @Unit(value = Dimension.LENGTH, above = "0 m") Optional<Given> length)
            implements PartEntry {}
}
