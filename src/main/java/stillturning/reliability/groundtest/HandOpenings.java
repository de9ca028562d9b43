package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.parts.FailureMode;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Element;

/** Everything that a hand can open or take off in a candidate, in the order of its parts. */
final class HandOpenings {

    private final Candidate candidate;

    private HandOpenings(Candidate candidate) {
        this.candidate = candidate;
    }

    static List<Hand> of(Candidate candidate) {
        HandOpenings hands = new HandOpenings(candidate);
        List<Hand> all = new ArrayList<>();
        for (Part part : candidate.parts()) {
            part.levers().forEach(lever -> all.addAll(hands.moves(part, lever)));
            part.failureModes().forEach(mode -> hands.parting(part, mode).ifPresent(all::add));
        }
        return List.copyOf(all);
    }

    /** Names of the elements that a failure opens; empty if it does anything else as well. */
    static Set<String> opened(FailureMode mode) {
        Set<String> gone =
                mode.alterations().stream()
                        .flatMap(
                                a ->
                                        a
                                                .fold(
                                                        removed -> Optional.of(removed.element()),
                                                        put -> Optional.<String>empty(),
                                                        added -> Optional.<String>empty())
                                                .stream())
                        .collect(Collectors.toSet());
        return gone.size() == mode.alterations().size() ? gone : Set.of();
    }

    private List<Hand> moves(Part part, Lever lever) {
        String normally = candidate.cockpit().flight().getOrDefault(lever.name(), lever.usual());
        Hand.HandWay way =
                lever.positions().equals(Lever.PULLED) ? Hand.HandWay.BREAKER : Hand.HandWay.LEVER;
        return lever.restingPositions().stream()
                .filter(position -> !position.equals(normally))
                .map(
                        position ->
                                new Hand(
                                        way,
                                        part.id(),
                                        "",
                                        List.of(),
                                        Map.of(lever.name(), position),
                                        candidate.cockpit().reachOf(lever.name())))
                .toList();
    }

    /** Taking off a terminal takes everything with it that hangs on it inside the part. */
    private Optional<Hand> parting(Part part, FailureMode mode) {
        Set<String> gone = opened(mode);
        if (gone.isEmpty()) {
            return Optional.empty();
        }
        List<Hit> apart = List.of(new Hit(part.id(), mode));
        boolean whole =
                part.elements().stream()
                        .map(Element::name)
                        .collect(Collectors.toSet())
                        .equals(gone);
        if (whole && part.role() == Part.Role.CONNECTOR) {
            return Optional.of(parting(Hand.HandWay.CONNECTOR, part, "", apart));
        }
        if (whole && part.role() == Part.Role.WIRE) {
            return Optional.of(parting(Hand.HandWay.WIRE, part, part.entry(), apart));
        }
        boolean guards = part.protection(part.exit()).isPresent() && part.levers().isEmpty();
        if (whole && guards) {
            return Optional.of(parting(Hand.HandWay.FUSE, part, "", apart));
        }
        // off a source the minus comes first, which its list of terminals has last
        boolean source = !part.sourceTerminals().isEmpty();
        return part.terminals().stream()
                .filter(terminal -> at(part, terminal).equals(gone))
                .reduce((first, last) -> source ? last : first)
                .map(terminal -> parting(Hand.HandWay.TERMINAL, part, terminal, apart));
    }

    private static Set<String> at(Part part, String terminal) {
        return part.elements().stream()
                .filter(e -> e.from().equals(terminal) || e.to().equals(terminal))
                .map(Element::name)
                .collect(Collectors.toSet());
    }

    private static Hand parting(Hand.HandWay way, Part part, String terminal, List<Hit> apart) {
        return new Hand(way, part.id(), terminal, apart, Map.of(), Optional.empty());
    }
}
