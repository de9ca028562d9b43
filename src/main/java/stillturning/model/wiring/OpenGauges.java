package stillturning.model.wiring;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Installation.Lay;
import stillturning.model.Installation.Laying;
import stillturning.model.LoadNeed;
import stillturning.model.Study.Aircraft;
import stillturning.model.wiring.LineBounds.ShortGuard;
import stillturning.model.wiring.MainLines.MainLine;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Wire;
import stillturning.parts.element.curve.WireHeating;

/**
 * Thickens the wires whose gauge nobody wrote until they meet the rules by which sizes are judged:
 * what protects them, what they carry where they lie with one thing failed, what a short does to
 * them before their protector opens, and what they drop, warm. What flows is not solved here but
 * bounded from above, so a gauge is at times one step thicker than the judge would ask for, and
 * never thinner.
 */
public final class OpenGauges {

    private final Aircraft aircraft;
    private final Candidate candidate;
    private final MetalLines lines;
    private final WirePlaces places;
    private final LineBounds bounds;
    private final Circuit circuit;
    private final Map<String, Cable> sizes = new LinkedHashMap<>();

    /**
     * @param said what is said of single wires, by part
     * @param open wires whose gauge is not written
     */
    public OpenGauges(
            Aircraft aircraft,
            Laying laying,
            Map<String, Lay> said,
            Candidate candidate,
            Set<String> open) {
        this.aircraft = aircraft;
        this.candidate = candidate;
        this.circuit = candidate.circuit();
        this.lines = new MetalLines(candidate, circuit);
        this.places = new WirePlaces(aircraft, laying, said, candidate);
        this.bounds = new LineBounds(aircraft, candidate, circuit, lines);
        candidate
                .wires()
                .filter(w -> open.contains(w.id()))
                .forEach(w -> sizes.put(w.id(), w.cable()));
    }

    /** The size of each of them; the thickest there is where none does. */
    public Map<String, Cable> chosen() {
        candidate
                .wires()
                .filter(w -> sizes.containsKey(w.id()))
                .forEach(w -> thicken(List.of(w), () -> carries(w), (wire, size) -> false));
        candidate.loads().forEach(load -> load.inputs().forEach(i -> circuit(load, i)));
        new MainLines(candidate, circuit, this::closedInFlight).all().forEach(this::main);
        return sizes;
    }

    private Cable size(Wire wire) {
        return sizes.getOrDefault(wire.id(), wire.cable());
    }

    private double ohms(Wire wire) {
        Cable chosen = sizes.get(wire.id());
        return chosen == null ? wire.ohms() : chosen.ohmsPerMetre() * wire.metres();
    }

    private boolean carries(Wire wire) {
        MetalLine line = lines.of(wire.id());
        Optional<ShortGuard> guard = bounds.guard(wire, line);
        return guard.filter(g -> !g.chart().suits(size(wire))).isEmpty()
                && places.mostAmps(wire, size(wire)) >= bounds.steadyAmps(line)
                && guard.filter(g -> overheats(wire, line, g)).isEmpty();
    }

    /** Whether some short in its line makes a wire too hot before its guard opens. */
    private boolean overheats(Wire wire, MetalLine line, ShortGuard guard) {
        double celsius = aircraft.celsius(wire.tag().zone());
        WireHeating heating = new WireHeating(size(wire).circularMils(), size(wire).bundleAmps());
        double ohms =
                lines.circuitOf(line)
                        .flatMap(l -> lines.wiresIn(l).stream())
                        .mapToDouble(this::ohms)
                        .sum();
        return bounds.shortAmps(ohms)
                .anyMatch(
                        amps -> heating.secondsToSpoil(amps, celsius) < guard.secondsToOpen(amps));
    }

    private void circuit(Load load, String input) {
        Optional<LoadNeed> need = aircraft.load(load.id());
        Optional<MetalLine> out = lines.supplyOf(load, input);
        if (need.isEmpty() || out.isEmpty()) {
            return;
        }
        List<Wire> wires =
                Stream.concat(out.stream(), lines.returnOf(load).stream())
                        .flatMap(line -> lines.wiresIn(line).stream())
                        .distinct()
                        .toList();
        double amps = bounds.runningAmps(need.get());
        boolean continuous = need.get().use().duty() >= 1 && !bounds.isStarter(load.id());
        double limit =
                PublishedLimits.ROUNDING
                        * PublishedLimits.dropVolts(aircraft.nominalVolts(), continuous);
        double metres = wires.stream().mapToDouble(Wire::metres).sum();
        thicken(
                wires,
                () ->
                        wires.stream()
                                        .mapToDouble(w -> ohms(w) * places.warmth(w, size(w), amps))
                                        .sum()
                                <= limit / amps,
                (wire, size) ->
                        size.ohmsPerMetre() * metres * places.warmth(wire, size, amps)
                                <= limit / amps);
    }

    private void main(MainLine main) {
        double most =
                PublishedLimits.ROUNDING
                        * PublishedLimits.MAIN_POWER_SHARE
                        * aircraft.nominalVolts()
                        / main.amps();
        double metres = main.wires().stream().mapToDouble(Wire::metres).sum();
        thicken(
                main.wires(),
                () -> main.wires().stream().mapToDouble(this::ohms).sum() <= most,
                (wire, size) -> size.ohmsPerMetre() * metres <= most);
    }

    /**
     * Takes the next size for the thinnest that is open, until it does or none is left.
     *
     * @param enough whether a size is thick enough for a wire whatever the others are: none makes
     *     up for another that is written too thin
     */
    private void thicken(List<Wire> wires, BooleanSupplier does, BiPredicate<Wire, Cable> enough) {
        while (!does.getAsBoolean()) {
            Optional<Wire> thinnest =
                    wires.stream()
                            .filter(w -> sizes.containsKey(w.id()) && !enough.test(w, size(w)))
                            .filter(w -> thicker(size(w)).isPresent())
                            .min(Comparator.comparingDouble(w -> size(w).circularMils()));
            if (thinnest.isEmpty()) {
                return;
            }
            sizes.put(thinnest.get().id(), thicker(size(thinnest.get())).orElseThrow());
        }
    }

    private static Optional<Cable> thicker(Cable than) {
        int next = Cable.SIZES.indexOf(than) + 1;
        return next < Cable.SIZES.size() ? Optional.of(Cable.SIZES.get(next)) : Optional.empty();
    }

    private boolean closedInFlight(Placed placed) {
        String position = candidate.cockpit().flight().getOrDefault(placed.part(), "");
        return placed.element()
                .commandedBy()
                .map(control -> control.closes(position, true))
                .orElse(true);
    }
}
