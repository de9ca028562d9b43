package stillturning.story;

/** How long the engine runs, by the electrical system alone. */
public sealed interface Endurance {

    /**
     * Seconds for comparisons: infinite where nothing ends it in time, the horizon where that ended
     * it.
     */
    double seconds();

    /** It stops for good at this time (s). */
    record Lasts(double seconds) implements Endurance {}

    /** Nothing in the electrical system ends it. */
    record NotLimited() implements Endurance {
        @Override
        public double seconds() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Still running when the flight ends, at this time (s). */
    record Landed(double atSeconds) implements Endurance {
        @Override
        public double seconds() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Still running when the simulation ended (s). */
    record AtLeast(double seconds) implements Endurance {}
}
