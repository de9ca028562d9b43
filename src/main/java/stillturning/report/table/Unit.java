package stillturning.report.table;

import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;

/** What a column of numbers counts in. Values are in SI; a column shows them in its unit. */
public enum Unit {
    /** A plain number. */
    NONE("", 1),
    AMPS("A", 1),
    VOLTS("V", 1),
    WATTS("W", 1),
    SECONDS("s", 1),
    MINUTES("min", 60),
    CELSIUS("°C", 1),
    PERCENT("%", 0.01),
    /** Length of wire. */
    LENGTH(new Scale("m", 1, 2), new Scale("ft", 0.3048, 2)),
    /** A diameter, a radius. */
    BORE(new Scale("mm", 0.001, 1), new Scale("in", 0.0254, 2)),
    MASS(new Scale("kg", 1, 3), new Scale("lb", 0.45359237, 3)),
    /** Distance behind the datum. */
    ARM(new Scale("m", 1, 2), new Scale("in", 0.0254, 1)),
    MOMENT(new Scale("kg m", 1, 3), new Scale("lb in", 0.45359237 * 0.0254, 3));

    @SuppressWarnings("ImmutableEnumChecker") // a record of immutable values
    private final Scale metric;

    @SuppressWarnings("ImmutableEnumChecker") // a record of immutable values
    private final Scale us;

    /** Its sign, how much SI it is, and digits behind the point. */
    private record Scale(String sign, double si, int digits) {}

    Unit(String sign, double si) {
        this(new Scale(sign, si, 0), new Scale(sign, si, 0));
    }

    Unit(Scale metric, Scale us) {
        this.metric = metric;
        this.us = us;
    }

    private Scale in(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** Its sign, empty for a plain number. */
    public String sign(UnitSystem system) {
        return in(system).sign;
    }

    /** A value (SI) in this unit. */
    double of(double value, UnitSystem system) {
        return value / in(system).si;
    }

    /** A value (SI) in this unit, with its usual digits. */
    public String shown(double value, UnitSystem system) {
        return Formats.fixed(of(value, system), in(system).digits);
    }

    /** A value (SI) in this unit, with its usual digits and its sign. */
    public String withSign(double value, UnitSystem system) {
        return shown(value, system) + " " + sign(system);
    }
}
