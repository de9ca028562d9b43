package stillturning.files;

import java.util.Optional;
import java.util.OptionalInt;
import stillturning.parts.Cable;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;

/** Finds the size of wire that a run needs, and the table's size for a gauge that is written. */
final class CableSizes {

    /**
     * Largest drop from bus to load there and back, for each volt of the nominal voltage: 0.5 V at
     * 14 V, continuous.
     *
     * @see "FAA AC 43.13-1B, table 11-6: 0.5 V, read in a second source"
     */
    private static final double DROP_PER_VOLT = 0.5 / 14;

    // the AC's own example accepts 0.504 V (table 11-7, second row, read)
    private static final double ROUNDING = 1.01;

    private CableSizes() {}

    /**
     * What a wire must put up with.
     *
     * @param protector what limits its current, if anything does
     * @param amps current that it carries for long (A), if known
     * @param metres length there and back (m); 0 if its drop does not count
     * @param nominalVolts nominal voltage (V)
     */
    record Duty(
            Optional<Protection> protector,
            Optional<Double> amps,
            double metres,
            double nominalVolts) {

        boolean isBounded() {
            return protector.isPresent() || amps.isPresent();
        }
    }

    /** A breaker (or an electronic trip) or a fuse, and its rating (A). */
    record Protection(boolean breaker, double amps) {

        /** Whether it protects a size, by AC 43.13-1B table 11-3. */
        boolean suits(Cable size) {
            return largestFor(size).filter(most -> most >= amps).isPresent();
        }

        /** The largest of its kind (A) for a size. */
        Optional<Double> largestFor(Cable size) {
            return breaker ? size.breakerAmps() : size.fuseAmps();
        }

        String inWords() {
            return Quantity.of(amps, Dimension.CURRENT).written()
                    + (breaker ? " breaker" : " fuse");
        }
    }

    /** The thinnest size that does, if any does. */
    static Optional<Cable> thinnest(Duty duty) {
        return Cable.SIZES.stream().filter(size -> does(size, duty)).findFirst();
    }

    private static boolean does(Cable size, Duty duty) {
        double amps = duty.amps.orElse(0.0);
        double drop = amps * size.ohmsPerMetre() * duty.metres;
        return duty.protector.map(p -> p.suits(size)).orElse(true)
                && size.bundleAmps() >= amps
                && drop <= DROP_PER_VOLT * duty.nominalVolts * ROUNDING;
    }

    /** The gauge of a table's size. */
    static WireGauge gauge(Cable size) {
        try {
            return WireGauge.parse("AWG " + size.awg());
        } catch (MalformedQuantity impossible) {
            throw new IllegalStateException("size " + size, impossible);
        }
    }

    /**
     * The table's size for a gauge: the same number, or for an area the thickest size that is not
     * thicker. Absent if the gauge has a number that the table has not, or is too thin.
     */
    static Optional<Cable> of(WireGauge gauge) {
        OptionalInt number = gauge.awgNumber();
        if (number.isPresent()) {
            int awg = number.getAsInt();
            return Cable.awg(awg > 0 ? Integer.toString(awg) : "0".repeat(1 - awg));
        }
        return Cable.SIZES.stream()
                .filter(c -> c.squareMetres() <= gauge.squareMetres() * (1 + 1e-9))
                .reduce((thinner, thicker) -> thicker);
    }

    /** Resistance of a metre of a gauge (ohm/m), given its size in the table. */
    static double ohmsPerMetre(WireGauge gauge, Cable size) {
        boolean byNumber = gauge.awgNumber().isPresent();
        return size.ohmsPerMetre() * (byNumber ? 1 : size.squareMetres() / gauge.squareMetres());
    }
}
