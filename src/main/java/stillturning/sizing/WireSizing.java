package stillturning.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.wiring.Ampacity;
import stillturning.model.wiring.Ampacity.WireSurroundings;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.model.wiring.PublishedLimits;
import stillturning.model.wiring.WirePlaces;
import stillturning.parts.Cable;
import stillturning.parts.Wire;
import stillturning.parts.element.Protector;
import stillturning.sizing.Subject.Rated;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.WireSchedule;
import stillturning.sizing.result.WireSchedule.LoadCircuit;
import stillturning.sizing.result.WireSchedule.MainCircuit;
import stillturning.sizing.result.WireSize;
import stillturning.sizing.result.WireSize.Capability;
import stillturning.sizing.result.WireSize.WireEnds;
import stillturning.sizing.result.WireSize.WireGuard;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Holds every wire against what it carries, what protects it, and what it may drop. */
final class WireSizing {

    private static final String WIRE = "wire";

    private final Subject subject;
    private final Circuits circuits;
    private final List<LoadCircuit> allCircuits;
    private final Mains mains;
    private final List<MainCircuit> allMains;

    WireSizing(Subject subject) {
        this.subject = subject;
        this.circuits = new Circuits(subject);
        this.allCircuits = circuits.all();
        this.mains = new Mains(subject);
        this.allMains = mains.all();
    }

    /**
     * All of it.
     *
     * @param together whether it is also asked where wires pass together
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    WireSchedule schedule(boolean together) throws UntoldStory {
        List<WireSize> sizes = subject.candidate().wires().map(this::size).toList();
        return new WireSchedule(
                sizes,
                allCircuits,
                allMains,
                together ? new Passages(subject, sizes).all() : List.of());
    }

    private WireSize size(Wire wire) {
        Carried worst = subject.survey().worst(wire.id(), WIRE);
        WireSurroundings place = subject.places().place(wire, wire.cable());
        double most = Ampacity.of(wire.cable(), place);
        Optional<Rated> guard = guardOf(wire);
        return new WireSize(
                wire,
                ends(wire),
                subject.survey().normal(wire.id(), WIRE),
                worst,
                new Capability(
                        most,
                        wire.cable().bundleAmps(),
                        Ampacity.conductorCelsius(worst.amps(), most, place),
                        place.ambientCelsius(),
                        place.insulationCelsius(),
                        place.wires()),
                guard.map(g -> guard(g, wire)),
                smallest(wire, worst, guard));
    }

    private WireEnds ends(Wire wire) {
        WirePlaces places = subject.places();
        return new WireEnds(
                places.from(wire), places.to(wire), places.zones(wire), places.lay(wire));
    }

    private WireGuard guard(Rated rated, Wire wire) {
        return new WireGuard(
                rated.name(),
                rated.kind() != ProtectorSize.ProtectorKind.FUSE,
                rated.amps(),
                rated.largestFor(wire.cable()),
                subject.lines()
                                .of(wire.id())
                                .protectors()
                                .anyMatch(p -> subject.rated(p).equals(rated))
                        || feeding(subject.lines().of(wire.id())).isPresent());
    }

    /** What limits a wire's current: in its line, in its load's feed, or farther up. */
    private Optional<Rated> guardOf(Wire wire) {
        MetalLine line = subject.lines().of(wire.id());
        return subject.smallestIn(line).or(() -> feeding(line)).or(() -> opened(wire));
    }

    /** The largest protector of the feeds of a load whose return this is. */
    private Optional<Rated> feeding(MetalLine line) {
        return subject.lines().returningBy(line).stream()
                .flatMap(load -> load.inputs().stream().map(i -> subject.lines().supplyOf(load, i)))
                .flatMap(Optional::stream)
                .map(subject::smallestIn)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Rated::amps));
    }

    /** The largest of what opens when the wire is chafed, if that is in time. */
    private Optional<Rated> opened(Wire wire) {
        if (subject.survey().shorted(wire.id()).amps() > 0) {
            return Optional.empty();
        }
        List<String> parts =
                subject.survey().happenings(wire.id() + ": chafed to ground").stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.PROTECTOR_OPENS)
                        .map(StoryEvent::part)
                        .toList();
        return subject.circuit().placed().stream()
                .filter(p -> parts.contains(p.part()))
                .filter(p -> p.element() instanceof Protector)
                .map(subject::rated)
                .max(Comparator.comparingDouble(Rated::amps));
    }

    private Optional<Cable> smallest(Wire wire, Carried worst, Optional<Rated> guard) {
        double thinnest = Cable.awg(PublishedLimits.THINNEST).orElseThrow().circularMils();
        return Cable.SIZES.stream()
                .filter(c -> c.circularMils() >= thinnest)
                .filter(c -> subject.places().mostAmps(wire, c) >= worst.amps())
                .filter(c -> guard.map(g -> suits(g, c)).orElseGet(() -> notThinner(c, wire)))
                .filter(c -> drops(wire).allMatch(drop -> drop.suits(c)))
                .findFirst();
    }

    /** What nothing guards was made so thick by somebody who knew why. */
    private static boolean notThinner(Cable cable, Wire wire) {
        return cable.circularMils() >= wire.cable().circularMils();
    }

    private static boolean suits(Rated guard, Cable cable) {
        return guard.largestFor(cable).filter(most -> most >= guard.amps()).isPresent();
    }

    /** A run that may drop only so much. */
    private interface Dropping {
        boolean suits(Cable cable);
    }

    /** Runs that the wire is a part of; one that drops little enough asks for no thicker wire. */
    private Stream<Dropping> drops(Wire wire) {
        Stream<Dropping> loads =
                allCircuits.stream()
                        .filter(c -> c.wires().contains(wire.id()))
                        .map(
                                c ->
                                        cable ->
                                                circuits.suits(c, cable, wire)
                                                        || asIs(c.drop(), cable, wire));
        Stream<Dropping> sources =
                allMains.stream()
                        .filter(m -> m.wires().contains(wire.id()))
                        .map(m -> cable -> mains.suits(m, cable) || asIs(m.drop(), cable, wire));
        return Stream.concat(loads, sources);
    }

    private static boolean asIs(WireSchedule.VoltageDrop drop, Cable cable, Wire wire) {
        return drop.within() && notThinner(cable, wire);
    }
}
