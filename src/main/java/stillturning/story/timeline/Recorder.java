package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
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
    private final List<Samples> samples = new ArrayList<>();
    private final List<Doings> doings = new ArrayList<>();

    /** What a value was. */
    private static final class Samples {
        private final String name;
        private final String unit;
        private final DoubleSupplier value;
        private final List<Trace.TracePoint> points = new ArrayList<>();
        private Trace.Extremes told = Trace.Extremes.NOTHING;

        Samples(String name, String unit, DoubleSupplier value) {
            this.name = name;
            this.unit = unit;
            this.value = value;
        }

        Trace trace() {
            return new Trace(name, unit, points, told);
        }
    }

    /** What something does, and since when it did what. */
    private record Doings(String name, Supplier<Activity> now, List<Beginning> beginnings) {}

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
        doings.add(new Doings(name, doing, new ArrayList<>()));
    }

    private void watch(String name, String unit, DoubleSupplier value) {
        samples.add(new Samples(name, unit, value));
    }

    /** Takes a sample of everything. */
    void look() {
        for (Samples seen : samples) {
            seen.points.add(new Trace.TracePoint(now.seconds, seen.value.getAsDouble()));
            if (seen.points.size() == MOST_POINTS) {
                thin(seen.points);
            }
        }
        for (Doings of : doings) {
            look(of);
        }
    }

    /** An instant that something is told of, though it may last no time. */
    void glimpse() {
        for (Samples seen : samples) {
            seen.told = seen.told.with(seen.value.getAsDouble());
        }
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
        int last = beginnings.size() - 1;
        if (last >= 0 && beginnings.get(last).doing() == doing) {
            return;
        }
        // what lasts for no time at all is not told
        if (last >= 0 && beginnings.get(last).seconds() == now.seconds) {
            beginnings.remove(last);
            last--;
        }
        if (last < 0 || beginnings.get(last).doing() != doing) {
            beginnings.add(new Beginning(now.seconds, doing));
        }
    }

    List<Trace> traces() {
        return samples.stream().map(Samples::trace).toList();
    }

    /** What the engine and its loads did until now. */
    List<StateBar> bars() {
        return doings.stream().map(d -> new StateBar(d.name(), spans(d.beginnings()))).toList();
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
