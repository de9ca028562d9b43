package stillturning.parts.protection;

import java.util.List;
import stillturning.parts.element.curve.Derating;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.element.curve.TimeCurrentCurve.CurvePoint;
import stillturning.parts.element.curve.TimeCurrentCurve.Memory;

/** Time–current curves of the protector classes, as published. */
public final class ProtectorCurves {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** Blade fuses open where zinc melts, at 419.5 °C. From memory, unverified. */
    private static final Derating ZINC =
            new Derating.OpensAt("melting point of zinc, from memory, unverified", 419.5);

    /** A bimetal without compensation; where it trips is a guess. */
    private static final Derating BIMETAL =
            new Derating.OpensAt("temperature at which a bimetal trips, a guess", 180);

    /** The rating of 40 A holds up to 20 °C and where the curve was published. */
    private static final Derating HIGH_CURRENT =
            new Derating.Published(
                    "ISO 8820-3 type E class sheet, 40 A, read in a second source",
                    List.of(
                            new Derating.Published.Point(Derating.PUBLISHED_CELSIUS, 1),
                            new Derating.Published.Point(65, 34.0 / 40),
                            new Derating.Published.Point(85, 30.0 / 40),
                            new Derating.Published.Point(110, 25.0 / 40),
                            new Derating.Published.Point(125, 22.0 / 40)));

    /** Counts what it measures. Common practice, no published source. */
    private static final Derating MEASURED =
            new Derating.None("electronic trips measure the current; common practice");

    /** Medium blade fuse. */
    public static final TimeCurrentCurve BLADE_FUSE =
            new TimeCurrentCurve(
                    "medium blade",
                    "ISO 8820-3 type C class sheet, 23 °C, read in a second source",
                    List.of(
                            new CurvePoint(1.10, 360_000, NEVER),
                            new CurvePoint(1.35, 0.75, 600),
                            new CurvePoint(1.60, 0.25, 50),
                            new CurvePoint(2.00, 0.15, 5),
                            new CurvePoint(3.50, 0.08, 0.5),
                            new CurvePoint(6.00, 0.03, 0.1)),
                    ZINC,
                    Memory.METAL);

    /** High-current blade and bolt-down fuse. */
    public static final TimeCurrentCurve HIGH_CURRENT_FUSE =
            new TimeCurrentCurve(
                    "high-current",
                    "ISO 8820-3 type E class sheet, 23 °C, read in a second source",
                    List.of(
                            new CurvePoint(1.00, 360_000, NEVER),
                            new CurvePoint(1.35, 60, 1800),
                            new CurvePoint(2.00, 2, 50),
                            new CurvePoint(3.50, 0.2, 7),
                            new CurvePoint(6.00, 0.04, 1)),
                    HIGH_CURRENT,
                    Memory.METAL);

    /**
     * Thermal push-pull breaker of the fast class. Carries 115 % for an hour (MIL-PRF-5809 family,
     * from memory); must trip by 138 % within an hour (federal item record, read).
     */
    public static final TimeCurrentCurve FAST_BREAKER =
            new TimeCurrentCurve(
                    "fast class",
                    "US federal item record NSN 5925-00-226-0377, 25 °C, read;"
                            + " hold at 115 % from memory",
                    List.of(
                            new CurvePoint(1.15, 3600, NEVER),
                            new CurvePoint(1.38, 10, 3600),
                            new CurvePoint(2.00, 0.38, 2.5),
                            new CurvePoint(4.00, 0.10, 0.54),
                            new CurvePoint(6.00, 0.05, 0.27),
                            new CurvePoint(10.0, 0.02, 0.12)),
                    BIMETAL,
                    Memory.METAL);

    /**
     * Thermal push-pull breaker of the ordinary class. Only one time of it could be read: 30 s
     * nominal at 200 % (a 30 A breaker); from memory 10 to 30 s there, 115 % carried for an hour
     * and open within the hour at 138 %. The band is a guess laid through these: at 200 % from 10 s
     * to twice the nominal 30 s, elsewhere by the first-order law of a bimetal, t = T ln(m² / (m² -
     * h²)), with h = 1.15 for the fast edge and h = 1.38 for the slow one.
     */
    public static final TimeCurrentCurve ORDINARY_BREAKER =
            new TimeCurrentCurve(
                    "ordinary class",
                    "a guess through US federal item record 5925-00-752-6909 (30 s at 200 %, 25 °C,"
                            + " read) and times from memory",
                    List.of(
                            new CurvePoint(1.15, 3600, NEVER),
                            new CurvePoint(1.38, 30, 3600),
                            new CurvePoint(2.00, 10, 60),
                            new CurvePoint(4.00, 2.1, 12),
                            new CurvePoint(6.00, 0.93, 5.0),
                            new CurvePoint(10.0, 0.33, 1.8)),
                    BIMETAL,
                    Memory.METAL);

    /**
     * Electronic trip: integrates the excess above 115 %, opens at once above 600 %, counts down
     * below. The thresholds were read in a data sheet of the class, the counting in a patent; the
     * times between the thresholds are a guess.
     */
    public static final TimeCurrentCurve ELECTRONIC_TRIP =
            new TimeCurrentCurve(
                    "electronic",
                    "class convention of 28 V solid-state controllers, thresholds read, times"
                            + " guessed",
                    List.of(
                            new CurvePoint(1.15, 3600, NEVER),
                            new CurvePoint(1.38, 5, 60),
                            new CurvePoint(2.00, 0.8, 4),
                            new CurvePoint(4.00, 0.1, 0.5),
                            new CurvePoint(5.90, 0.03, 0.2),
                            new CurvePoint(6.00, 2e-5, 5e-5)),
                    MEASURED,
                    Memory.COUNTER);

    /** The curves by their words in the files. */
    public enum Curve {
        BLADE_FUSE(ProtectorCurves.BLADE_FUSE),
        HIGH_CURRENT_FUSE(ProtectorCurves.HIGH_CURRENT_FUSE),
        ORDINARY_BREAKER(ProtectorCurves.ORDINARY_BREAKER),
        FAST_BREAKER(ProtectorCurves.FAST_BREAKER),
        ELECTRONIC_TRIP(ProtectorCurves.ELECTRONIC_TRIP);

        @SuppressWarnings("ImmutableEnumChecker") // a record of immutable values
        private final TimeCurrentCurve published;

        Curve(TimeCurrentCurve published) {
            this.published = published;
        }

        /** The published curve. */
        public TimeCurrentCurve published() {
            return published;
        }
    }

    private ProtectorCurves() {}
}
