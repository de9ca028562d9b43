package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Generator;

/** The parts of one candidate of a pair and their nets, seen against the other one. */
final class PairedWiring {

    private final Candidate candidate;
    private final Set<String> common;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<List<Terminal>> nets;
    private final Map<Terminal, List<Terminal>> netOf = new HashMap<>();

    private PairedWiring(Candidate candidate, Set<String> common) {
        this.candidate = candidate;
        this.common = common;
        candidate.parts().forEach(p -> parts.put(p.id(), p));
        nets = Nets.of(candidate).all();
        nets.forEach(net -> net.forEach(terminal -> netOf.put(terminal, net)));
    }

    /** Two candidates against each other. */
    static List<PairedWiring> pair(Candidate one, Candidate other) {
        Set<String> common = new HashSet<>();
        for (Part part : one.parts()) {
            other.part(part.id())
                    .filter(p -> p.kind().equals(part.kind()))
                    .filter(p -> p.terminals().equals(part.terminals()))
                    .ifPresent(p -> common.add(part.id()));
        }
        return List.of(
                new PairedWiring(one, Set.copyOf(common)),
                new PairedWiring(other, Set.copyOf(common)));
    }

    Candidate candidate() {
        return candidate;
    }

    Map<String, Part> parts() {
        return parts;
    }

    List<List<Terminal>> nets() {
        return nets;
    }

    /** The net of a terminal; alone with itself where nothing is joined. */
    List<Terminal> net(Terminal terminal) {
        return netOf.getOrDefault(terminal, List.of(terminal));
    }

    /** Whether both candidates have a part, alike at least in its terminals. */
    boolean isCommon(String part) {
        return common.contains(part);
    }

    /** Parts that the other one does not have, in the candidate's order. */
    List<Part> own() {
        return parts.values().stream().filter(p -> !common.contains(p.id())).toList();
    }

    /** Studs of common parts in a net: one thing more or less on them changes nothing else. */
    Set<Terminal> studs(List<Terminal> net) {
        Set<Terminal> studs = new HashSet<>();
        net.stream().filter(this::isStud).forEach(studs::add);
        return studs;
    }

    /**
     * Whether things may be hung on a terminal and taken off one by one. What an alternator is
     * joined to goes as a whole: its field has one feed.
     */
    boolean isStud(Terminal terminal) {
        Part part = parts.get(terminal.part());
        return part != null
                && common.contains(part.id())
                && part.takesMany(terminal.name())
                && part.role() != Part.Role.LOAD
                && part.elements().stream().noneMatch(Generator.class::isInstance);
    }

    /** Terminals of common parts, each once. */
    List<Terminal> commonTerminals() {
        List<Terminal> all = new ArrayList<>();
        for (Part part : parts.values()) {
            if (common.contains(part.id())) {
                part.terminals().forEach(name -> all.add(new Terminal(part.id(), name)));
            }
        }
        return all;
    }
}
