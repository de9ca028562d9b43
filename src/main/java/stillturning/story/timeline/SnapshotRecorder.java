package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.parts.element.Conversion;
import stillturning.story.Snapshot;
import stillturning.story.Snapshot.States;
import stillturning.story.StateBar.Activity;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;

/** Takes frames of a run. */
final class SnapshotRecorder {

    private final Plant plant;
    private final Situation now;
    private final EngineDevice engine;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, BranchDevice> placings = new HashMap<>();
    private final List<Snapshot> frames = new ArrayList<>();

    SnapshotRecorder(Plant plant, BranchLayout layout, EngineDevice engine, Situation now) {
        this.plant = plant;
        this.now = now;
        this.engine = engine;
        layout.seats.forEach(this::place);
    }

    private void place(Seat seat) {
        String name = seat.placed().name();
        places.put(name, seat.branch());
        if (plant.devices().get(name) instanceof BranchDevice placing) {
            placings.put(name, placing);
        }
        if (seat.placed().element() instanceof Conversion) {
            places.put(Snapshot.output(name), seat.branch() + 1);
        }
    }

    /** Takes a frame of this instant. */
    Snapshot take() {
        double[] volts = new double[plant.circuit().nets()];
        for (int net = 0; net < volts.length; net++) {
            volts[net] = now.volts(net);
        }
        int branches = places.values().stream().mapToInt(b -> b + 1).max().orElse(0);
        double[] amps = new double[branches];
        places.values().forEach(branch -> amps[branch] = now.amps(branch));
        Map<String, Double> charges = new HashMap<>();
        plant.cells().forEach(c -> charges.put(c.placed().part(), c.value()));
        Snapshot frame = new Snapshot(now.seconds, volts, amps, places, states(), charges);
        frames.add(frame);
        return frame;
    }

    List<Snapshot> frames() {
        return frames;
    }

    /** Most frames differ from the one before by voltages only, and share its states. */
    private States states() {
        Set<String> open = new HashSet<>();
        Set<String> gaveWay = new HashSet<>();
        placings.forEach(
                (name, placing) -> {
                    if (!now.solver.law(placing.branch()).conducts()) {
                        open.add(name);
                    }
                    if (placing.gaveWay()) {
                        gaveWay.add(name);
                    }
                });
        Map<String, Activity> doings = new HashMap<>();
        doings.put("engine", Recorder.doing(engine));
        plant.loads().forEach((load, supply) -> doings.put(load, Recorder.doing(supply)));
        States states = new States(open, gaveWay, doings);
        States before = frames.isEmpty() ? states : frames.get(frames.size() - 1).states();
        return before.equals(states) ? before : states;
    }
}
