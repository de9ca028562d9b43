package stillturning.report.json;

import org.jspecify.annotations.Nullable;

/** How long the engine runs after one failure, by what is switched off. */
record Shedding(
        Lasting nothingSwitchedOff,
        Lasting asWritten,
        Lasting allButTheEngineOff,
        @Nullable Lasting shortTimeLoadsAtTheWorstTime) {

    static Shedding of(stillturning.assess.SheddingEndurances lasting) {
        return new Shedding(
                Lasting.of(lasting.sheddingNothing()),
                Lasting.of(lasting.asWritten()),
                Lasting.of(lasting.best()),
                lasting.worstPlaced().map(worst -> Lasting.of(worst.endurance())).orElse(null));
    }
}
