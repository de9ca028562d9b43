package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stillturning.quantity.WireGauge;

/**
 * Tin-plated stranded copper airframe wire by size.
 *
 * @param awg size as written in the trade ("16", "00")
 * @param circularMils conductor area (cmil)
 * @param ohmsPerThousandFeet largest resistance at 20 °C (ohm per 1000 ft)
 * @param bundleAmps continuous current in a bundle for 150 °C wire (A)
 * @param breakerAmps largest breaker that protects it (A); none given for the two largest
 * @param fuseAmps largest fuse that protects it (A)
 * @see "FAA AC 43.13-1B change 1, table 11-9 (p. 11-23) and table 11-3 (p. 11-15), read"
 */
public record Cable(
        String awg,
        double circularMils,
        double ohmsPerThousandFeet,
        double bundleAmps,
        Optional<Double> breakerAmps,
        Optional<Double> fuseAmps) {

    private static final double METRES_PER_THOUSAND_FEET = 304.8;
    private static final double SQUARE_METRES_PER_CIRCULAR_MIL = Math.PI / 4 * 25.4e-6 * 25.4e-6;
    private static final double COPPER_KILOGRAMS_PER_CUBIC_METRE = 8890;

    /** Insulation wall of medium-weight ETFE wire, 0.010 in, and its density. From memory. */
    private static final double WALL_METRES = 0.010 * 0.0254;

    private static final double ETFE_KILOGRAMS_PER_CUBIC_METRE = 1750;

    /** Stranding takes more room than its copper: outer diameter of 19 strands against solid. */
    private static final double STRANDING = 1.12;

    /** All sizes, thinnest first. */
    public static final List<Cable> SIZES =
            List.of(
                    size("24", 475, 28.40, 4, 0, 0),
                    size("22", 755, 16.20, 5, 5, 5),
                    size("20", 1_216, 9.88, 7, 7.5, 5),
                    size("18", 1_900, 6.23, 9, 10, 10),
                    size("16", 2_426, 4.81, 11, 15, 10),
                    size("14", 3_831, 3.06, 14, 20, 15),
                    size("12", 5_874, 2.02, 19, 30, 20),
                    size("10", 9_354, 1.26, 26, 40, 30),
                    size("8", 16_983, 0.70, 57, 50, 50),
                    size("6", 26_818, 0.44, 76, 80, 70),
                    size("4", 42_615, 0.28, 103, 100, 70),
                    size("2", 66_500, 0.18, 141, 125, 100),
                    size("1", 81_700, 0.15, 166, 0, 150),
                    size("0", 104_500, 0.12, 192, 0, 150),
                    size("00", 133_000, 0.09, 222, 0, 0),
                    size("000", 166_500, 0.07, 262, 0, 0),
                    size("0000", 210_900, 0.06, 310, 0, 0));

    private static Cable size(
            String awg, double cmil, double ohms, double amps, double breaker, double fuse) {
        return new Cable(
                awg,
                cmil,
                ohms,
                amps,
                breaker > 0 ? Optional.of(breaker) : Optional.empty(),
                fuse > 0 ? Optional.of(fuse) : Optional.empty());
    }

    /** Resistance at 20 °C (ohm/m). */
    public double ohmsPerMetre() {
        return ohmsPerThousandFeet / METRES_PER_THOUSAND_FEET;
    }

    /** Conductor area (m2). */
    public double squareMetres() {
        return circularMils * SQUARE_METRES_PER_CIRCULAR_MIL;
    }

    /** Weight of the bare conductor (kg/m). */
    public double conductorKilogramsPerMetre() {
        return squareMetres() * COPPER_KILOGRAMS_PER_CUBIC_METRE;
    }

    /**
     * Diameter over the insulation (m). From memory, AWG 20 and 16 of this kind measure 1.5 and 1.9
     * mm.
     */
    public double outsideMetres() {
        return strandedMetres() + 2 * WALL_METRES;
    }

    private double strandedMetres() {
        return STRANDING * Math.sqrt(4 * squareMetres() / Math.PI);
    }

    /** Weight with insulation (kg/m); a 15 % band, since no published weight could be read. */
    public double kilogramsPerMetre() {
        double insulation = Math.PI * WALL_METRES * (strandedMetres() + WALL_METRES);
        return conductorKilogramsPerMetre() + insulation * ETFE_KILOGRAMS_PER_CUBIC_METRE;
    }

    /** The thinnest size with at least this conductor area (m2), if there is one. */
    public static Optional<Cable> atLeast(double squareMetres) {
        return SIZES.stream()
                .filter(c -> c.squareMetres() >= squareMetres * (1 - 1e-9))
                .findFirst();
    }

    /** The size of this name, if it is in the table. */
    public static Optional<Cable> awg(String name) {
        return SIZES.stream().filter(c -> c.awg.equals(name)).findFirst();
    }

    /**
     * The table's size for a gauge: the same number, or for an area the thickest size that is not
     * thicker. Absent if the gauge has a number that the table has not, or is too thin.
     */
    public static Optional<Cable> of(WireGauge gauge) {
        OptionalInt number = gauge.awgNumber();
        if (number.isPresent()) {
            int awg = number.getAsInt();
            return awg(awg > 0 ? Integer.toString(awg) : "0".repeat(1 - awg));
        }
        return SIZES.stream()
                .filter(c -> c.squareMetres() <= gauge.squareMetres() * (1 + 1e-9))
                .reduce((thinner, thicker) -> thicker);
    }

    /** Resistance of a gauge that this size of the table stands for (ohm/m). */
    public double ohmsPerMetre(WireGauge gauge) {
        boolean byNumber = gauge.awgNumber().isPresent();
        return ohmsPerMetre() * (byNumber ? 1 : squareMetres() / gauge.squareMetres());
    }
}
