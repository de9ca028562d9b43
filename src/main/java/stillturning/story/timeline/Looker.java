package stillturning.story.timeline;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.story.device.Situation;
import stillturning.story.device.SupplyDevice;
import stillturning.story.Happening;
import stillturning.story.Happening.Kind;
import stillturning.story.Sight;
import stillturning.story.Sight.Engine;

/** Notes what a pilot could notice, stretch by stretch. */
final class Looker {

    private final Crew crew;
    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private int from;
    private double falteredBefore;

    Looker(Crew crew, Map<String, SupplyDevice> loads, Situation now) {
        this.crew = crew;
        this.loads = loads;
        this.now = now;
    }

    /** Begins a stretch. */
    void begin() {
        from = now.journal.happenings().size();
        falteredBefore = crew.engine().longestInterruption();
    }

    /** What shows at this instant, and what the engine has done since the stretch began. */
    Sight sight() {
        Set<String> stopped = new HashSet<>();
        for (String load : now.aircraft.noticed()) {
            SupplyDevice supply = loads.get(load);
            if (supply == null || (supply.wanted() && !supply.works())) {
                stopped.add(load);
            }
        }
        List<Happening> all = now.journal.happenings();
        boolean stops = crew.engine().stopped();
        for (Happening happening : all.subList(from, all.size())) {
            stops |= happening.kind() == Kind.ENGINE_STOPS;
        }
        boolean falters =
                crew.engine().faltering()
                        || crew.engine().longestInterruption()
                                > Math.max(falteredBefore, Sight.NOTICED_SECONDS);
        return new Sight(
                Set.copyOf(crew.showing()),
                stopped,
                stops ? Engine.STOPS : falters ? Engine.FALTERS : Engine.RUNS);
    }
}
