package stillturning.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Circuit.Placed;
import stillturning.model.wiring.Ampacity;
import stillturning.model.wiring.MetalLines;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.parts.Load;
import stillturning.parts.Wire;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;

/** Wires that burn before the protector in their line opens, told by their sizes alone. */
public final class Unguarded {

    private Unguarded() {}

    /** One for each, by {@link Rule#PROTECTS_NOTHING}, in the order of the parts. */
    public static List<SizeFinding> of(Candidate candidate) {
        MetalLines lines = new MetalLines(candidate, candidate.circuit());
        return candidate
                .wires()
                .flatMap(
                        wire ->
                                guard(lines, lines.of(wire.id()))
                                        .flatMap(protector -> finding(wire, protector))
                                        .stream())
                .toList();
    }

    /** The smallest protector in a line; where it is a load's return, that of the load's feed. */
    private static Optional<Placed> guard(MetalLines lines, MetalLine line) {
        return smallestIn(line)
                .or(
                        () ->
                                lines.returningBy(line).stream()
                                        .flatMap(load -> suppliesOf(lines, load))
                                        .flatMap(supply -> smallestIn(supply).stream())
                                        .max(Comparator.comparingDouble(Unguarded::rated)));
    }

    private static Stream<MetalLine> suppliesOf(MetalLines lines, Load load) {
        return load.inputs().stream().flatMap(input -> lines.supplyOf(load, input).stream());
    }

    private static Optional<Placed> smallestIn(MetalLine line) {
        return line.protectors().min(Comparator.comparingDouble(Unguarded::rated));
    }

    private static Optional<SizeFinding> finding(Wire wire, Placed smallest) {
        double most = Ampacity.inBestPlace(wire.cable());
        return rated(smallest) > most
                ? Optional.of(
                        new SizeFinding(
                                Rule.PROTECTS_NOTHING,
                                wire.id(),
                                smallest.part(),
                                rated(smallest),
                                most,
                                Carried.NOTHING,
                                Optional.empty()))
                : Optional.empty();
    }

    private static double rated(Placed protector) {
        return protector.element().overload().orElseThrow().ratedAmps();
    }
}
