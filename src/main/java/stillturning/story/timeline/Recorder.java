package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import stillturning.model.Candidate;
import stillturning.parts.Part;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.Trace;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.device.plant.SupplyDevice;

/** Samples voltages, charges, and what the engine and its loads do, before and after each event. */
final class Recorder {

    /** A trace that grows longer is thinned: some hundred are usual. */
    static final int MOST_POINTS = 4096;

    private static final Comparator<Trace.TracePoint> BY_VALUE =
            Comparator.comparingDouble(Trace.TracePoint::value);

    private final Situation now;
    private final Map<Series, Samples> samples = new LinkedHashMap<>();

    private final Map<String, Doings> doings = new LinkedHashMap<>();

    private record Series(String name, String unit, DoubleSupplier value) {
        double now() {
            return value.getAsDouble();
        }
    }

    private static final class Samples {
        private final List<Trace.TracePoint> points = new ArrayList<>();
        private Trace.Extremes told = Trace.Extremes.NOTHING;
    }

    /** What something does, and since when it did what. */
    private record Doings(Supplier<Activity> now, List<Beginning> beginnings) {}

    private record Beginning(double seconds, Activity doing) {}

    Recorder(Candidate candidate, Plant plant, EngineDevice engine, Situation now) {
        this.now = now;
        candidate
                .all(Part.Role.BUS)
                .forEach(
                        bus -> {
                            int net = plant.circuit().net(bus.id(), bus.exit());
                            watch(bus.id(), "V", () -> now.volts(net));
                        });
        plant.cells().forEach(cell -> watch(cell.placed().part(), "%", () -> 100 * cell.value()));
        follow("engine", () -> doing(engine));
        for (String load : now.aircraft.engine().logic().loads()) {
            Optional<SupplyDevice> supply = Optional.ofNullable(plant.loads().get(load));
            follow(load, () -> supply.map(Recorder::doing).orElse(Activity.STOPPED));
        }
    }

    static Activity doing(EngineDevice engine) {
        if (engine.rests()) {
            return Activity.SWITCHED_OFF;
        }
        if (engine.stopped()) {
            return Activity.STOPPED;
        }
        return engine.faltering() ? Activity.FALTERS : Activity.RUNS;
    }

    static Activity doing(SupplyDevice load) {
        if (!load.wanted()) {
            return Activity.SWITCHED_OFF;
        }
        if (load.starves()) {
            return Activity.STARVED;
        }
        return load.works() ? Activity.WORKS : Activity.STOPPED;
    }

    private void follow(String name, Supplier<Activity> doing) {
        doings.put(name, new Doings(doing, new ArrayList<>()));
    }

    private void watch(String name, String unit, DoubleSupplier value) {
        samples.put(new Series(name, unit, value), new Samples());
    }

    /** Takes a sample of everything. */
    void look() {
        samples.forEach(
                (series, seen) -> {
                    seen.points.add(new Trace.TracePoint(now.seconds, series.now()));
                    if (seen.points.size() == MOST_POINTS) {
                        thin(seen.points);
                    }
                });
        doings.values().forEach(this::look);
    }

    /** An instant that something is told of, though it may last no time. */
    void glimpse() {
        samples.forEach((series, seen) -> seen.told = seen.told.with(series.now()));
    }

    /** Of every four the lowest and the highest stay, so no dip and no peak is lost. */
    private static void thin(List<Trace.TracePoint> points) {
        List<Trace.TracePoint> kept = new ArrayList<>(MOST_POINTS);
        for (int from = 0; from < points.size(); from += 4) {
            List<Trace.TracePoint> four = points.subList(from, Math.min(from + 4, points.size()));
            Trace.TracePoint low = Collections.min(four, BY_VALUE);
            Trace.TracePoint high = Collections.max(four, BY_VALUE);
            kept.add(low.seconds() <= high.seconds() ? low : high);
            kept.add(low.seconds() <= high.seconds() ? high : low);
        }
        points.clear();
        points.addAll(kept);
    }

    private void look(Doings of) {
        Activity doing = of.now().get();
        List<Beginning> beginnings = of.beginnings();
        Optional<Beginning> last = last(beginnings);
        if (last.filter(b -> b.doing() == doing).isPresent()) {
            return;
        }
        // what lasts for no time at all is not told
        if (last.filter(b -> b.seconds() == now.seconds).isPresent()) {
            beginnings.remove(beginnings.size() - 1);
        }
        if (last(beginnings).filter(b -> b.doing() == doing).isEmpty()) {
            beginnings.add(new Beginning(now.seconds, doing));
        }
    }

    private static Optional<Beginning> last(List<Beginning> beginnings) {
        return beginnings.isEmpty()
                ? Optional.empty()
                : Optional.of(beginnings.get(beginnings.size() - 1));
    }

    List<Trace> traces() {
        return samples.entrySet().stream()
                .map(
                        e ->
                                new Trace(
                                        e.getKey().name(),
                                        e.getKey().unit(),
                                        e.getValue().points,
                                        e.getValue().told))
                .toList();
    }

    /** What the engine and its loads did until now. */
    List<StateBar> bars() {
        return doings.entrySet().stream()
                .map(e -> new StateBar(e.getKey(), spans(e.getValue().beginnings())))
                .toList();
    }

    private List<StateBar.StateSpan> spans(List<Beginning> beginnings) {
        List<StateBar.StateSpan> spans = new ArrayList<>();
        for (int i = 0; i < beginnings.size(); i++) {
            double to = i + 1 < beginnings.size() ? beginnings.get(i + 1).seconds() : now.seconds;
            spans.add(
                    new StateBar.StateSpan(
                            beginnings.get(i).seconds(), to, beginnings.get(i).doing()));
        }
        return spans;
    }
}
