package stillturning.report.json;

import org.jspecify.annotations.Nullable;
import stillturning.story.Endurance;

/** How long the engine runs. */
record Lasting(@Nullable Double enduranceSeconds, boolean enduranceLimited) {

    static Lasting of(Endurance endurance) {
        return new Lasting(JsonNumbers.seconds(endurance), JsonNumbers.limited(endurance));
    }
}
