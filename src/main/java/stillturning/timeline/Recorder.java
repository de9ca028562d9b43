package stillturning.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import stillturning.device.CellDevice;
import stillturning.device.Plant;
import stillturning.device.Situation;
import stillturning.model.Candidate;
import stillturning.parts.Bus;
import stillturning.story.Trace;

/** Samples bus voltages and battery charges before and after each event. */
final class Recorder {

    private final Situation now;
    private final Map<Series, List<Trace.Point>> samples = new LinkedHashMap<>();

    private record Series(String name, String unit, DoubleSupplier value) {}

    Recorder(Candidate candidate, Plant plant, Situation now) {
        this.now = now;
        candidate
                .all(Bus.class)
                .forEach(
                        bus -> {
                            int net = plant.circuit().net(bus.id(), "bar");
                            watch(bus.id(), "V", () -> now.volts(net));
                        });
        plant.all(CellDevice.class)
                .forEach(cell -> watch(cell.placed().part(), "%", () -> 100 * cell.value()));
    }

    private void watch(String name, String unit, DoubleSupplier value) {
        samples.put(new Series(name, unit, value), new ArrayList<>());
    }

    /** Takes a sample of everything. */
    void look() {
        samples.forEach(
                (series, points) ->
                        points.add(new Trace.Point(now.seconds, series.value().getAsDouble())));
    }

    List<Trace> traces() {
        return samples.entrySet().stream()
                .map(e -> new Trace(e.getKey().name(), e.getKey().unit(), e.getValue()))
                .toList();
    }
}
