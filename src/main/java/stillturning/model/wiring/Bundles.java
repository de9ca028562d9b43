package stillturning.model.wiring;

import java.util.Comparator;
import java.util.List;
import stillturning.parts.Cable;

/** What wires measure that are tied together, and how they are bent and led through holes. */
public final class Bundles {

    /**
     * Diameter of a bundle as a multiple of the root of the sum of its wires' squared diameters: 24
     * wires of 2.0 mm give 11.8 mm.
     *
     * @see "Worked example of a maker of harness sleeves, with 1.15 to 1.45; read, weak"
     */
    private static final double PACKING = 1.2;

    /** Three equal wires touch each other in 2.155 diameters, by geometry. */
    private static final double PACKING_OF_THREE = 1.25;

    private static final int THREE = 3;

    /**
     * Bend radius as a multiple of the outside diameter of the thickest wire.
     *
     * @see "TM 1-1500-204-23-4, read; FAA AC 43.13-1B change 1, 11-117 (title read)"
     */
    public static final double BEND = 10;

    /**
     * Least distance from the edge of a hole without grommet (m): 3/8 in.
     *
     * @see "FAA AC 43.13-1B change 1, 11-115 (p. 11-51), read"
     */
    public static final double CLEAR_METRES = 0.375 * 0.0254;

    /**
     * Wires that are not tied into one bundle, and its diameter (m): 75 and 2 in.
     *
     * @see "FAA-H-8083-31 ch. 9 and FAA-H-8083-32 ch. 4, read in a second source"
     */
    public static final int MOST_WIRES = 75;

    public static final double MOST_METRES = 2 * 0.0254;

    /** Room inside a grommet, so that nothing is pulled tight. Common practice, no source. */
    private static final double GROMMET_ROOM = 1.1;

    /** Wall of a grommet on each side (m). A guess: its maker's sheet has it. */
    private static final double GROMMET_WALL_METRES = 0.0025;

    private static final double MILLIMETRE = 0.001;

    private Bundles() {}

    /**
     * Diameter of wires that are tied together (m); never less than the two thickest side by side.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static double metres(List<Cable> wires) {
        if (wires.isEmpty()) {
            throw new IllegalArgumentException("a bundle of no wires has no diameter");
        }
        List<Double> thickest =
                wires.stream().map(Cable::outsideMetres).sorted(Comparator.reverseOrder()).toList();
        double squares = thickest.stream().mapToDouble(d -> d * d).sum();
        double packing = wires.size() > THREE ? PACKING : PACKING_OF_THREE;
        double two = thickest.stream().limit(2).mapToDouble(d -> d).sum();
        return wires.size() <= 2 ? two : Math.max(two, packing * Math.sqrt(squares));
    }

    /** Inside of a grommet that holds a bundle (m), in whole millimetres. */
    public static double grommetMetres(double bundleMetres) {
        return MILLIMETRE * Math.ceil(GROMMET_ROOM * bundleMetres / MILLIMETRE - 1e-9);
    }

    /** Hole for such a grommet (m). */
    public static double holeMetres(double bundleMetres) {
        return grommetMetres(bundleMetres) + 2 * GROMMET_WALL_METRES;
    }

    /** Hole that needs no grommet, where a clamp holds the bundle in its middle (m). */
    public static double bareHoleMetres(double bundleMetres) {
        return bundleMetres + 2 * CLEAR_METRES;
    }
}
