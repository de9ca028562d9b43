package stillturning.story.timeline;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.story.PilotView;
import stillturning.story.PilotView.EngineSound;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.SupplyDevice;

/** Notes what a pilot could notice, stretch by stretch. */
final class PilotViewRecorder {

    private final EngineAndPilot engineAndPilot;
    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private int from;
    private double falteredBefore;

    PilotViewRecorder(
            EngineAndPilot engineAndPilot, Map<String, SupplyDevice> loads, Situation now) {
        this.engineAndPilot = engineAndPilot;
        this.loads = loads;
        this.now = now;
    }

    /** Begins a stretch. */
    void begin() {
        from = now.journal.happenings().size();
        falteredBefore = engineAndPilot.engine().longestInterruption();
    }

    /** What shows at this instant, and what the engine has done since the stretch began. */
    PilotView sight() {
        Set<String> stopped = new HashSet<>();
        Set<String> onTheirOwn = new HashSet<>();
        for (String load : now.aircraft.noticed()) {
            SupplyDevice supply = loads.get(load);
            if (supply == null || (supply.wanted() && !supply.works())) {
                stopped.add(load);
            } else if (supply.onItsOwnBattery()) {
                onTheirOwn.add(load);
            }
        }
        List<StoryEvent> all = now.journal.happenings();
        boolean stops = engineAndPilot.engine().stopped();
        for (StoryEvent happening : all.subList(from, all.size())) {
            stops |= happening.kind() == Kind.ENGINE_STOPS;
        }
        boolean falters =
                engineAndPilot.engine().faltering()
                        || engineAndPilot.engine().longestInterruption()
                                > Math.max(falteredBefore, PilotView.NOTICED_SECONDS);
        return new PilotView(
                Set.copyOf(engineAndPilot.showing()),
                stopped,
                onTheirOwn,
                stops ? EngineSound.STOPS : falters ? EngineSound.FALTERS : EngineSound.RUNS);
    }
}
