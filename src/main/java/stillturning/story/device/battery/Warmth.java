package stillturning.story.device.battery;

import java.util.function.DoubleSupplier;
import stillturning.story.device.Stateful;

/**
 * How much warmer than its zone a battery is: heated by what its resistances lose, cooled by the
 * air. Counted in {@link #UNIT_KELVIN}, so that its steps are as fine as it deserves.
 */
public final class Warmth implements Stateful {

    /** A step may be wrong by a few parts in 1e10 of this, 30 microkelvins (K). */
    private static final double UNIT_KELVIN = 1e5;

    /** What warms a kilogram of battery by a kelvin (J). A guess. */
    public static final double SPECIFIC_HEAT = 1000;

    /**
     * An idle battery's excess falls to 37 % in this time (s): in still air, in its box. A guess.
     */
    public static final double COOLING_SECONDS = 3600;

    private final double zoneCelsius;
    private final double joulesPerKelvin;
    private final DoubleSupplier watts;
    private double rise;

    /**
     * @param watts what it loses at the present operating point (W)
     */
    Warmth(double zoneCelsius, double kilograms, DoubleSupplier watts) {
        this.zoneCelsius = zoneCelsius;
        this.joulesPerKelvin = kilograms * SPECIFIC_HEAT;
        this.watts = watts;
    }

    double celsius() {
        return zoneCelsius + rise * UNIT_KELVIN;
    }

    /** Where it would settle if it went on losing what it loses now. */
    public double restingRise() {
        return watts.getAsDouble() / joulesPerKelvin * COOLING_SECONDS / UNIT_KELVIN;
    }

    @Override
    public double value() {
        return rise;
    }

    @Override
    public void value(double value) {
        rise = value;
    }

    @Override
    public double perSecond() {
        return (restingRise() - rise) / COOLING_SECONDS;
    }

    @Override
    public double way() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public boolean quick() {
        return false;
    }
}
