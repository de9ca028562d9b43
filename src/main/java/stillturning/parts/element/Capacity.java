package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * How much charge a battery gives, and how that shrinks with current (Peukert's law in the
 * rated-hour form).
 *
 * @param coulombs charge at the rated discharge time (C), already aged
 * @param ratedHours discharge time of the rating (h)
 * @param exponent Peukert exponent, 1 for none
 * @see "W. Peukert, Elektrotechnische Zeitschrift 20 (1897), from memory"
 */
public record Capacity(double coulombs, double ratedHours, double exponent) {

    public Capacity {
        Require.positive("battery", "capacity (C)", coulombs);
        Require.positive("battery", "rated discharge time (h)", ratedHours);
        if (!(exponent >= 1 && exponent <= 2)) {
            throw new IllegalArgumentException(
                    "battery: Peukert exponent " + exponent + " is not between 1 and 2");
        }
    }

    /** Current of the rating (A). */
    public double ratedAmps() {
        return coulombs / (ratedHours * 3600);
    }

    /** A larger or smaller battery of the same kind. */
    public Capacity times(double factor) {
        return new Capacity(coulombs * factor, ratedHours, exponent);
    }

    /** The current that would move all of its charge in one hour (A). */
    public double oneHourAmps() {
        return coulombs / 3600;
    }

    /**
     * Charge used up each second by a discharge current. Below the rated current no bonus is given:
     * the rating is all that the maker promises.
     *
     * @param amps discharge current (A), at least 0
     * @return fraction of the charge used up (1/s)
     */
    public double usedPerSecond(double amps) {
        double penalty =
                amps > ratedAmps() && exponent > 1 ? Math.pow(amps / ratedAmps(), exponent - 1) : 1;
        return amps * penalty / coulombs;
    }
}
