package stillturning.files.candidate;

import java.util.Optional;
import stillturning.parts.Cable;
import stillturning.parts.Protection;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;

/** Finds the size of wire that a run needs, and the table's size for a gauge that is written. */
public final class CableSizes {

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

    /** What limits a current, as people say it. */
    static String inWords(Protection protection) {
        return Quantity.of(protection.ratedAmps(), Dimension.CURRENT).written()
                + " "
                + protection.chart().words();
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
    public static WireGauge gauge(Cable size) {
        try {
            return WireGauge.parse("AWG " + size.awg());
        } catch (MalformedQuantity impossible) {
            throw new IllegalStateException("size " + size, impossible);
        }
    }
}
