package stillturning.model.wiring;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.Study.Aircraft;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.parts.Part;
import stillturning.parts.Protection;
import stillturning.parts.Wire;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Generator;
import stillturning.parts.element.curve.Tripping;

/** What can flow in a line at most, and what ends a short in it, without solving the network. */
final class LineBounds {

    private static final int STRUCTURE = 0;

    /**
     * Lowest voltage at a load with nothing wrong: 11 V of 14, where an alternator that turns
     * slowly leaves the bus to the battery and to what its leads drop. A guess.
     */
    private static final double LOW = 11.0 / 14;

    /** Highest, while an alternator charges or a failed regulator is not yet cut off. A guess. */
    private static final double HIGH = 16.0 / 14;

    /** Least resistance of a short's circuit, and most, beside that of its wires (ohm). A guess. */
    private static final double LEAST_OHMS = 0.005;

    private static final double MOST_OHMS = 0.1;

    private static final int SHORTS = 12;

    /**
     * What ends a short.
     *
     * @param chart what the published chart sees of it
     * @param celsius temperature around it (°C)
     */
    record ShortGuard(Protection chart, Trip trip, double celsius) {

        /** Longest time in which it opens (s), as the judge supposes it. */
        double secondsToOpen(double amps) {
            return trip.curve().secondsToOpen(amps / ratingThere(), Tripping.SLOW);
        }

        private double ratingThere() {
            return trip.ratedAmps() * trip.curve().derating().share(celsius);
        }

        /** Largest current at which one of them never opens (A). */
        double heldAmps() {
            return ratingThere() * trip.curve().holdMultiple(Tripping.SLOW);
        }

        double ratedAmps() {
            return chart.ratedAmps();
        }
    }

    private final Aircraft aircraft;
    private final Candidate candidate;
    private final Circuit circuit;
    private final MetalLines lines;

    LineBounds(Aircraft aircraft, Candidate candidate, Circuit circuit, MetalLines lines) {
        this.aircraft = aircraft;
        this.candidate = candidate;
        this.circuit = circuit;
        this.lines = lines;
    }

    /** Whether a load cranks the engine. */
    boolean isStarter(String load) {
        return aircraft.engine().starting().starter().filter(load::equals).isPresent();
    }

    /** What a load takes while it runs and nothing is wrong (A). */
    double runningAmps(LoadNeed need) {
        double nominal = need.demand().nominalVolts();
        return amps(need, isStarter(need.id()) ? need.tolerance().minimumVolts() : LOW * nominal);
    }

    /** What a load takes at most (A): at its minimum voltage, or at the highest of its bus. */
    private double mostAmps(LoadNeed need) {
        return amps(need, need.tolerance().minimumVolts());
    }

    private static double amps(LoadNeed need, double lowVolts) {
        Demand demand = need.demand();
        return switch (demand.kind()) {
            case CONSTANT_POWER ->
                    demand.amps()
                            * Math.max(
                                    1,
                                    demand.nominalVolts()
                                            / Math.max(lowVolts, demand.nominalVolts() / 2));
            case CONSTANT_CURRENT, SELF_POWERED -> demand.amps();
            case CONSTANT_RESISTANCE -> demand.amps() * HIGH;
        };
    }

    /** Largest current that can flow in a line for long (A); 0 where nothing bounds it. */
    double steadyAmps(MetalLine line) {
        DoubleStream loads =
                lines.loadsIn(line).stream()
                        .flatMap(load -> aircraft.load(load.id()).stream())
                        .mapToDouble(this::mostAmps);
        DoubleStream protectors =
                line.protectors().flatMap(p -> guard(p).stream()).mapToDouble(ShortGuard::heldAmps);
        DoubleStream sources =
                line.links().stream()
                        .map(Placed::element)
                        .filter(Generator.class::isInstance)
                        .mapToDouble(e -> ((Generator) e).output().largestAmps());
        return DoubleStream.concat(loads, DoubleStream.concat(protectors, sources)).min().orElse(0);
    }

    /** Currents (A) of shorts in a circuit with so much wire, from half way along it to its end. */
    DoubleStream shortAmps(double wireOhms) {
        double least = LOW * aircraft.nominalVolts() / (wireOhms + MOST_OHMS);
        double most = HIGH * aircraft.nominalVolts() / (wireOhms / 2 + LEAST_OHMS);
        return IntStream.rangeClosed(0, SHORTS)
                .mapToDouble(i -> least * Math.pow(most / least, (double) i / SHORTS));
    }

    /**
     * What ends a short of a wire: the smallest protector in its line; of a load's return, the
     * largest of its feeds; else the largest that is met on the way to it.
     */
    Optional<ShortGuard> guard(Wire wire, MetalLine line) {
        return smallest(line).or(() -> ofFeeds(line)).or(() -> upstream(wire));
    }

    private Optional<ShortGuard> smallest(MetalLine line) {
        return line.protectors()
                .flatMap(p -> guard(p).stream())
                .min(Comparator.comparingDouble(ShortGuard::ratedAmps));
    }

    private Optional<ShortGuard> guard(Placed placed) {
        return candidate
                .part(placed.part())
                .flatMap(part -> placed.element().overload().flatMap(t -> guard(part, placed, t)));
    }

    private Optional<ShortGuard> guard(Part part, Placed placed, Trip trip) {
        double celsius = aircraft.celsius(part.tag().zone());
        return part.protection(placed.element().to())
                .map(chart -> new ShortGuard(chart, trip, celsius));
    }

    private Optional<ShortGuard> ofFeeds(MetalLine line) {
        return lines.returningBy(line).stream()
                .flatMap(lines::suppliesOf)
                .flatMap(supply -> smallest(supply).stream())
                .max(Comparator.comparingDouble(ShortGuard::ratedAmps));
    }

    private Optional<ShortGuard> upstream(Wire wire) {
        Set<Integer> seen = new HashSet<>(Set.of(STRUCTURE));
        Deque<Integer> open = new ArrayDeque<>();
        Stream.of(wire.entry(), wire.exit())
                .map(end -> circuit.net(wire.id(), end))
                .filter(seen::add)
                .forEach(open::add);
        Optional<ShortGuard> largest = Optional.empty();
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Placed placed : circuit.placed()) {
                if (placed.from() != net && placed.to() != net) {
                    continue;
                }
                Optional<ShortGuard> met = guard(placed);
                largest =
                        Stream.concat(largest.stream(), met.stream())
                                .max(Comparator.comparingDouble(ShortGuard::ratedAmps));
                int far = placed.from() == net ? placed.to() : placed.from();
                if (met.isEmpty() && placed.element().passage() != Passage.NONE && seen.add(far)) {
                    open.add(far);
                }
            }
        }
        return largest;
    }
}
