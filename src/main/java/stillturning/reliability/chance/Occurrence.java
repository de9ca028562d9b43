package stillturning.reliability.chance;

/** How often an event happens, as seen from one flight. */
public sealed interface Occurrence {

    /** What is uncertain about it: the rate (1/s), or the probability itself. */
    Lognormal spread();

    /** Mean rate (1/s) in flights of this length (s). */
    default double perSecond(double flightSeconds) {
        return spread().mean();
    }

    /** The same with the rate or probability multiplied. */
    Occurrence times(double factor);

    /** Probability that it happens at all where it is expected to happen so often. */
    double chance(double expected);

    /**
     * Noticed at once and mended before the next flight; happens within a flight of T seconds with
     * 1 - exp(-rate T).
     *
     * @param rate (1/s of flight)
     */
    record Active(Lognormal rate) implements Occurrence {
        @Override
        public Lognormal spread() {
            return rate;
        }

        @Override
        public Active times(double factor) {
            return new Active(rate.times(factor));
        }

        @Override
        public double chance(double expected) {
            return -StrictMath.expm1(-expected);
        }
    }

    /**
     * Unnoticed until the next inspection finds and mends it; present after a seconds flown since
     * the last one with 1 - exp(-rate a).
     *
     * @param rate (1/s of flight)
     * @param intervalSeconds flown between two inspections (s)
     */
    record LatentOccurrence(Lognormal rate, double intervalSeconds) implements Occurrence {
        /**
         * @throws IllegalArgumentException if the interval is not above 0 and finite
         */
        public LatentOccurrence {
            if (!(intervalSeconds > 0 && intervalSeconds < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "an inspection every " + intervalSeconds + " s is none");
            }
        }

        @Override
        public Lognormal spread() {
            return rate;
        }

        @Override
        public LatentOccurrence times(double factor) {
            return new LatentOccurrence(rate.times(factor), intervalSeconds);
        }

        @Override
        public double chance(double expected) {
            return -StrictMath.expm1(-expected);
        }
    }

    /**
     * Counted by the flight, whatever its length. Where the spread reaches above 1, it counts as 1.
     *
     * @param probability that it happens in one flight
     */
    record PerFlight(Lognormal probability) implements Occurrence {
        /**
         * @throws IllegalArgumentException if the median is above 1
         */
        public PerFlight {
            if (probability.median() > 1) {
                throw new IllegalArgumentException(
                        "a probability of " + probability.median() + " is above 1");
            }
        }

        @Override
        public Lognormal spread() {
            return probability;
        }

        @Override
        public double perSecond(double flightSeconds) {
            return probability.mean() / flightSeconds;
        }

        @Override
        public PerFlight times(double factor) {
            return new PerFlight(probability.times(factor));
        }

        @Override
        public double chance(double expected) {
            return Math.min(1, expected);
        }
    }
}
