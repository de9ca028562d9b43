package stillturning.model;

/**
 * What the engine asks of its electricity, and what becomes of it without.
 *
 * @param logic loads that it needs
 * @param toleratedSeconds how long it runs on with its needs unmet (s)
 * @param restartSeconds time from needs met again to running, while something turns it (s)
 * @param windmills whether airspeed turns a stopped engine
 * @param windmillRevsPerSecond alternator speed then (revolutions per second)
 */
public record Engine(
        EngineLogic logic,
        double toleratedSeconds,
        double restartSeconds,
        boolean windmills,
        double windmillRevsPerSecond) {

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
