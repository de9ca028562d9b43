package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stillturning.story.StartAttempt;

/** An attempt to start the engine on the ground. */
record Started(
        String conditions,
        boolean runs,
        @Nullable Double seconds,
        @Nullable Double starterAmps,
        Map<String, @Nullable Double> lowestVolts,
        List<String> resets) {

    static Started of(StartAttempt start) {
        Map<String, @Nullable Double> volts = new LinkedHashMap<>();
        start.lowestVolts().forEach((load, low) -> volts.put(load, JsonNumbers.number(low)));
        return new Started(
                start.conditions(),
                start.runs(),
                JsonNumbers.number(start.seconds()),
                JsonNumbers.number(start.starterAmps()),
                volts,
                start.resets());
    }
}
