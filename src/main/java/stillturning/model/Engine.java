package stillturning.model;

import java.util.Optional;

/**
 * What the engine asks of its electricity, and what becomes of it without.
 *
 * @param logic loads that it needs
 * @param toleratedSeconds how long it runs on with its needs unmet (s)
 * @param restartSeconds time from needs met again to running, while something turns it (s)
 * @param windmills whether airspeed turns a stopped engine
 * @param windmillRevsPerSecond alternator speed then (revolutions per second)
 * @param starting how it is started
 */
public record Engine(
        EngineLogic logic,
        double toleratedSeconds,
        double restartSeconds,
        boolean windmills,
        double windmillRevsPerSecond,
        EngineStarting starting) {

    /**
     * How the engine is started.
     *
     * @param starter the load that cranks it, if the study has one
     * @param tiredCharge share of its stated charge that a tired battery brings, 0 to 1
     * @param coldCelsius temperature of a cold start (°C)
     * @param habitSeconds time after which the pilot presses the starter by habit once the engine
     *     has stopped in flight (s); empty if only procedures have him press it
     */
    public record EngineStarting(
            Optional<String> starter,
            double tiredCharge,
            double coldCelsius,
            Optional<Double> habitSeconds) {
        /** Nothing cranks it. */
        public static final EngineStarting BY_HAND = new EngineStarting(Optional.empty(), 1, 25);

        /** A starter that nobody presses by habit. */
        public EngineStarting(Optional<String> starter, double tiredCharge, double coldCelsius) {
            this(starter, tiredCharge, coldCelsius, Optional.empty());
        }

        public EngineStarting {
            if (!(tiredCharge > 0 && tiredCharge <= 1)) {
                throw new IllegalArgumentException(
                        "engine: a tired battery's charge "
                                + tiredCharge
                                + " is not above 0 and at most 1");
            }
        }
    }

    /** An engine that nothing cranks. */
    public Engine(
            EngineLogic logic,
            double toleratedSeconds,
            double restartSeconds,
            boolean windmills,
            double windmillRevsPerSecond) {
        this(
                logic,
                toleratedSeconds,
                restartSeconds,
                windmills,
                windmillRevsPerSecond,
                EngineStarting.BY_HAND);
    }

    public Engine {
        if (!(toleratedSeconds >= 0 && restartSeconds >= 0 && windmillRevsPerSecond >= 0)) {
            throw new IllegalArgumentException(
                    "engine: times and speeds must not be negative, are "
                            + toleratedSeconds
                            + " s, "
                            + restartSeconds
                            + " s, "
                            + windmillRevsPerSecond
                            + " /s");
        }
    }
}
