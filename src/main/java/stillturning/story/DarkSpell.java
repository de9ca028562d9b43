package stillturning.story;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.story.StoryEvent.Kind;

/**
 * When a load was dark. A display that was dark and shows again has been dark.
 *
 * @param from the first time that it stopped (s)
 * @param until the last time that it worked again (s); empty where it stays dark
 * @param times how often it stopped
 */
public record DarkSpell(double from, OptionalDouble until, int times) {

    private DarkSpell stopsAgain() {
        return until.isEmpty() ? this : new DarkSpell(from, OptionalDouble.empty(), times + 1);
    }

    private DarkSpell worksAgain(double seconds) {
        return new DarkSpell(from, OptionalDouble.of(seconds), times);
    }

    /** The loads that were dark before the pilot's first move; none where he makes none. */
    public static Map<String, DarkSpell> beforeThePilotActs(Story story) {
        Map<String, DarkSpell> spells = new LinkedHashMap<>();
        for (StoryEvent event : story.happenings()) {
            if (event.kind().isAct()) {
                return spells;
            }
            String load = event.part();
            Optional<DarkSpell> before = Optional.ofNullable(spells.get(load));
            if (event.kind() == Kind.LOAD_STOPS || event.kind() == Kind.LOAD_DESTROYED) {
                DarkSpell first = new DarkSpell(event.seconds(), OptionalDouble.empty(), 1);
                spells.put(load, before.map(DarkSpell::stopsAgain).orElse(first));
            } else if (event.kind() == Kind.LOAD_RESTARTS) {
                before.ifPresent(dark -> spells.put(load, dark.worksAgain(event.seconds())));
            }
        }
        return Map.of();
    }
}
