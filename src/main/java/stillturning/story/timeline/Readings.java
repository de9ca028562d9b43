package stillturning.story.timeline;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.model.Candidate;
import stillturning.parts.Part;
import stillturning.story.Endurance;
import stillturning.story.FirstSign;
import stillturning.story.NormalFlight;
import stillturning.story.SteadyState;
import stillturning.story.SteadyState.NetVolts;
import stillturning.story.Story.Aftermath;
import stillturning.story.Story.EngineFate;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.watch.SignWatch;

/** What can be read off a run at an instant. */
record Readings(
        Candidate candidate,
        BranchLayout layout,
        Plant plant,
        EngineAndPilot engineAndPilot,
        SignWatch signs,
        Situation now) {

    /** After these something is missing that was there. */
    private static final Set<StoryEvent.Kind> LOSSES =
            Set.copyOf(
                    EnumSet.of(
                            StoryEvent.Kind.BATTERY_DISCONNECTS,
                            StoryEvent.Kind.SOURCE_UNSTEADY,
                            StoryEvent.Kind.PROTECTOR_OPENS,
                            StoryEvent.Kind.GUARD_SHORTS,
                            StoryEvent.Kind.WIRE_MELTS,
                            StoryEvent.Kind.LOAD_DESTROYED));

    /**
     * What normal flight is.
     *
     * @param happenings what it took to get there
     */
    NormalFlight normal(List<StoryEvent> happenings) {
        Map<String, Double> busVolts = new LinkedHashMap<>();
        candidate
                .all(Part.Role.BUS)
                .forEach(
                        bus ->
                                busVolts.put(
                                        bus.id(),
                                        now.volts(plant.circuit().net(bus.id(), bus.exit()))));
        Map<String, Double> sourceAmps = new LinkedHashMap<>();
        plant.cells().forEach(c -> sourceAmps.put(c.placed().part(), c.dischargeAmps()));
        plant.generators().forEach(g -> sourceAmps.put(g.placed().part(), g.amps()));
        return new NormalFlight(
                !engineAndPilot.engine().faltering() && !engineAndPilot.engine().stopped(),
                working(),
                plant.feeds(),
                engineAndPilot.showing(),
                busVolts,
                sourceAmps,
                happenings.stream().filter(h -> h.kind() == StoryEvent.Kind.CHATTER).toList(),
                happenings.stream().filter(h -> LOSSES.contains(h.kind())).toList());
    }

    /** What flows at this instant. */
    SteadyState flow() {
        Map<String, Double> amps = new LinkedHashMap<>();
        layout.seats.forEach(seat -> amps.put(seat.placed().name(), now.amps(seat.branch())));
        int nets = plant.circuit().nets();
        List<Double> volts = IntStream.range(0, nets).mapToObj(now.solver::volts).toList();
        List<Integer> islands = IntStream.range(0, nets).mapToObj(now.solver::island).toList();
        Map<String, Double> charges = new LinkedHashMap<>();
        plant.cells().forEach(c -> charges.put(c.placed().part(), c.value()));
        return new SteadyState(
                amps,
                new NetVolts(plant.circuit().netOf(), plant.circuit().returns(), volts, islands),
                charges);
    }

    /** What works and what is fed. */
    Aftermath aftermath() {
        Set<String> working = new HashSet<>(working());
        working.addAll(now.shed.all());
        return new Aftermath(working, plant.feeds(), engineAndPilot.acted());
    }

    /** What has become of the engine at the end of a story. */
    EngineFate fate(double horizonSeconds) {
        EngineDevice engine = engineAndPilot.engine();
        Endurance endurance;
        if (engine.stopped()) {
            endurance = new Endurance.Lasts(engine.runningSeconds(engine.stoppedAt()));
        } else if (engineAndPilot.landed()) {
            endurance = new Endurance.Landed(now.seconds);
        } else if (now.seconds >= horizonSeconds) {
            endurance = new Endurance.AtLeast(engine.runningSeconds(horizonSeconds));
        } else {
            endurance = new Endurance.NotLimited();
        }
        return fate(endurance, !engine.stopped());
    }

    EngineFate fate(Endurance endurance, boolean runningAtEnd) {
        EngineDevice engine = engineAndPilot.engine();
        Optional<FirstSign> sign = signs.first();
        return new EngineFate(
                endurance,
                sign,
                sign.map(s -> engine.runningSeconds(s.seconds())).orElse(now.seconds),
                engine.longestInterruption(),
                engine.stops(),
                runningAtEnd);
    }

    /** Loads that work. */
    Set<String> working() {
        return plant.loads().entrySet().stream()
                .filter(e -> e.getValue().works())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
