package stillturning.report.sizes;

import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;

/** Lengths and masses of a table as numbers, and the units that stand in its heads. */
record SizeUnits(UnitSystem system) {

    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final int MASS_DIGITS = 3;

    private boolean us() {
        return system == UnitSystem.US;
    }

    /** Unit of lengths of wire. */
    String length() {
        return us() ? "ft" : "m";
    }

    /** Unit of masses. */
    String mass() {
        return us() ? "lb" : "kg";
    }

    /** Unit of distances behind the datum. */
    String arm() {
        return us() ? "in" : "m";
    }

    /** Unit of moments. */
    String moment() {
        return us() ? "lb in" : "kg m";
    }

    String length(double metres) {
        return SizeTables.two(us() ? metres / FOOT : metres);
    }

    String mass(double kilograms) {
        return Formats.fixed(us() ? kilograms / POUND : kilograms, MASS_DIGITS);
    }

    String arm(double metres) {
        return us() ? SizeTables.one(metres / INCH) : SizeTables.two(metres);
    }

    String moment(double kilogramMetres) {
        return Formats.fixed(us() ? kilogramMetres / POUND / INCH : kilogramMetres, MASS_DIGITS);
    }
}
