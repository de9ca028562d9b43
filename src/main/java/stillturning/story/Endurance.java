package stillturning.story;

import java.util.function.Function;

/** How long the engine runs, by the electrical system alone. */
public sealed interface Endurance {

    /** The answer for its kind. */
    <T> T fold(
            Function<Lasts, T> lasts,
            Function<NotLimited, T> notLimited,
            Function<Landed, T> landed,
            Function<AtLeast, T> atLeast,
            Function<Untold, T> untold);

    /**
     * Seconds for comparisons: infinite where nothing ends it in time, the horizon where that ended
     * it, what could be told where the rest could not.
     */
    double seconds();

    /** Whether it counts as stopping. */
    default boolean ends() {
        return false;
    }

    /** It stops for good at this time (s). */
    record Lasts(double seconds) implements Endurance {
        @Override
        public boolean ends() {
            return true;
        }

        @Override
        public <T> T fold(
                Function<Lasts, T> lasts,
                Function<NotLimited, T> notLimited,
                Function<Landed, T> landed,
                Function<AtLeast, T> atLeast,
                Function<Untold, T> untold) {
            return lasts.apply(this);
        }
    }

    /** Nothing in the electrical system ends it. */
    record NotLimited() implements Endurance {
        @Override
        public double seconds() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public <T> T fold(
                Function<Lasts, T> lasts,
                Function<NotLimited, T> notLimited,
                Function<Landed, T> landed,
                Function<AtLeast, T> atLeast,
                Function<Untold, T> untold) {
            return notLimited.apply(this);
        }
    }

    /** Still running when the flight ends, at this time (s). */
    record Landed(double atSeconds) implements Endurance {
        @Override
        public double seconds() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public <T> T fold(
                Function<Lasts, T> lasts,
                Function<NotLimited, T> notLimited,
                Function<Landed, T> landed,
                Function<AtLeast, T> atLeast,
                Function<Untold, T> untold) {
            return landed.apply(this);
        }
    }

    /** Still running when the simulation ended (s). */
    record AtLeast(double seconds) implements Endurance {
        @Override
        public <T> T fold(
                Function<Lasts, T> lasts,
                Function<NotLimited, T> notLimited,
                Function<Landed, T> landed,
                Function<AtLeast, T> atLeast,
                Function<Untold, T> untold) {
            return atLeast.apply(this);
        }
    }

    /**
     * It cannot be told on from this time (s). On the cautious side that counts as the engine's
     * end.
     *
     * @param reason why, with the part
     */
    record Untold(double seconds, String reason) implements Endurance {
        @Override
        public boolean ends() {
            return true;
        }

        @Override
        public <T> T fold(
                Function<Lasts, T> lasts,
                Function<NotLimited, T> notLimited,
                Function<Landed, T> landed,
                Function<AtLeast, T> atLeast,
                Function<Untold, T> untold) {
            return untold.apply(this);
        }
    }
}
