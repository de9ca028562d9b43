package stillturning.story.timeline.watch;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.SupplyDevice;

/** Watches the supplies of the engine's loads and of the starter while that turns the engine. */
public final class CrankingWatch {

    /** What flows into a starter that is reached (A), far above what solving leaves open. */
    private static final double LEAST_AMPS = 1e-3;

    private final Map<String, SupplyDevice> watched = new LinkedHashMap<>();
    private final Map<String, Double> lowestVolts = new LinkedHashMap<>();
    private final Optional<SupplyDevice> starter;
    private final Situation now;
    private double starterAmps;

    public CrankingWatch(Map<String, SupplyDevice> loads, Situation now) {
        this.now = now;
        Optional<String> starting = now.aircraft.engine().starting().starter();
        this.starter = starting.map(loads::get);
        starter.ifPresent(s -> watched.put(s.part(), s));
        for (String load : now.aircraft.engine().logic().loads()) {
            SupplyDevice supply = loads.get(load);
            if (supply != null) {
                watched.put(load, supply);
            }
        }
    }

    /** Looks at the supplies of this instant. */
    public void look() {
        if (now.cranking) {
            starter.ifPresent(
                    s -> starterAmps = Math.max(starterAmps, Math.abs(now.amps(s.branch()))));
            watched.forEach(
                    (load, s) -> {
                        if (!awaitsCurrent(s)) {
                            lowestVolts.merge(load, s.volts(), Math::min);
                        }
                    });
        }
    }

    /** A starter that its contactor has not reached yet has not sagged. */
    private boolean awaitsCurrent(SupplyDevice supply) {
        return starterAmps < LEAST_AMPS && starter.filter(supply::equals).isPresent();
    }

    /**
     * What became of the attempt.
     *
     * @param conditions in words
     * @param runs whether the engine runs at the end
     */
    public StartAttempt start(String conditions, boolean runs, List<StoryEvent> happenings) {
        Set<String> resets = new LinkedHashSet<>();
        for (StoryEvent happening : happenings) {
            if (happening.kind() == StoryEvent.Kind.LOAD_STOPS
                    && watched.containsKey(happening.part())) {
                resets.add(happening.part());
            }
        }
        if (starterAmps < LEAST_AMPS && !lowestVolts.isEmpty()) {
            starter.ifPresent(s -> lowestVolts.put(s.part(), 0.0));
        }
        return new StartAttempt(
                conditions,
                runs,
                now.seconds,
                starterAmps,
                lowestVolts,
                List.copyOf(resets),
                happenings);
    }
}
