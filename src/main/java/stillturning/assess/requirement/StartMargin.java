package stillturning.assess.requirement;

import java.util.Comparator;
import java.util.Optional;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;

/**
 * What a start left where it left least.
 *
 * @param load the starter, or a load that the engine needs
 * @param lowestVolts the lowest that it had (V)
 * @param minimumVolts what it needs (V)
 */
public record StartMargin(String load, double lowestVolts, double minimumVolts) {

    /** Empty where nothing was measured. */
    public static Optional<StartMargin> of(Study.Aircraft aircraft, StartAttempt start) {
        return aircraft.loads().stream()
                .filter(need -> start.lowestVolts().containsKey(need.id()))
                .map(need -> at(need, start))
                .min(Comparator.comparingDouble(StartMargin::spareVolts));
    }

    /** From the key, or from when the engine was stopped, to its running (s). */
    public static double seconds(StartAttempt start) {
        double from =
                start.happenings().stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.ENGINE_STOPS)
                        .mapToDouble(StoryEvent::seconds)
                        .max()
                        .orElse(0);
        return start.seconds() - from;
    }

    private static StartMargin at(LoadNeed need, StartAttempt start) {
        return new StartMargin(
                need.id(),
                start.lowestVolts().getOrDefault(need.id(), 0.0),
                need.tolerance().minimumVolts());
    }

    /** Below 0 where it had less than it needs (V). */
    public double spareVolts() {
        return lowestVolts - minimumVolts;
    }

    /** In words. */
    public String words() {
        return "down to "
                + Formats.fixed(lowestVolts, 1)
                + " V at "
                + load
                + ", "
                + Formats.fixed(Math.abs(spareVolts()), 1)
                + (spareVolts() < 0 ? " V less than it needs" : " V more than it needs");
    }
}
