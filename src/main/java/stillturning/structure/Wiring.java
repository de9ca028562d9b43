package stillturning.structure;

import stillturning.parts.Lever;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Protector;
import stillturning.structure.Levers.Stand;

/** A candidate reduced to what can carry current, what makes it, and what must be fed for that. */
final class Wiring {

    private static final String OFF = "off";
    private static final String PULLED = "pulled";

    /** Stands for {@code Line.need} where nothing has to be fed. */
    static final int NOTHING = -1;

    /** Stands for a net where there is none. */
    static final int NO_NET = -1;

    /** What a line is. */
    enum Kind {
        METAL,
        ONE_WAY,
        CELL,
        GENERATOR,
        /** Gives up unless a battery sits on the same metal. */
        GENERATOR_BESIDE_BATTERY;

        boolean isSource() {
            return this == CELL || this == GENERATOR || this == GENERATOR_BESIDE_BATTERY;
        }
    }

    /**
     * Something that current passes, a source from its minus to its plus.
     *
     * @param need what must be fed for it to be open
     * @param stands stands of the part's lever at which it is closed, a bit each
     */
    record Line(int part, int from, int to, Kind kind, int need, long stands) {}

    /** Something that does its work only while current can come to it and get back. */
    record Need(int part, int from, int to) {}

    final Circuit circuit;
    final List<Part> parts;
    final List<Line> lines = new ArrayList<>();
    final List<Need> needs = new ArrayList<>();

    /** How many useful positions the lever of each part has, 1 for most. */
    final int[] stands;

    private final Set<Relaxation> lenient;
    private final Levers levers;
    private final Map<Integer, List<Integer>> barsOn = new HashMap<>();
    private final int[] barNets;
    private final Map<String, Integer> partIndex = new HashMap<>();
    private final Map<String, Integer> needIndex = new HashMap<>();
    private final List<List<Stand>> closedAt = new ArrayList<>();

    Wiring(Candidate candidate, Set<Relaxation> lenient) {
        this.lenient = Set.copyOf(lenient);
        circuit = candidate.circuit();
        parts = candidate.parts();
        levers = new Levers(candidate.cockpit());
        stands = new int[parts.size()];
        barNets = new int[parts.size()];
        Arrays.fill(barNets, NO_NET);
        for (int i = 0; i < parts.size(); i++) {
            partIndex.put(parts.get(i).id(), i);
            closedAt.add(levers.stands(parts.get(i)));
            stands[i] = Math.max(1, closedAt.get(i).size());
            if (parts.get(i).role() == Part.Role.BUS) {
                barNets[i] = circuit.net(parts.get(i).id(), parts.get(i).exit());
                barsOn.computeIfAbsent(barNets[i], net -> new ArrayList<>()).add(i);
            }
        }
        circuit.placed().forEach(this::addNeed);
        circuit.placed().forEach(this::addLine);
        if (lenient.contains(Relaxation.THROUGH_LOADS_AND_SOURCES)) {
            circuit.placed().forEach(this::addSneakPath);
        }
    }

    /** Index of a part, if the candidate has it. */
    OptionalInt part(String id) {
        Integer index = partIndex.get(id);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Index of what an element needs, if it needs anything. */
    OptionalInt need(String part, String element) {
        Integer index = needIndex.get(part + "/" + element);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** The net that goes with a part: a bus's bar; {@link #NO_NET} for any other. */
    int barNet(int part) {
        return barNets[part];
    }

    /** Buses whose bar a net is. */
    List<Integer> barsOn(int net) {
        return barsOn.getOrDefault(net, List.of());
    }

    String id(int part) {
        return parts.get(part).id();
    }

    private void addNeed(Placed placed) {
        Element element = placed.element();
        if (element instanceof Consumer
                || element instanceof Coil
                || element instanceof Conversion) {
            needIndex.put(placed.name(), needs.size());
            needs.add(new Need(index(placed), placed.from(), placed.to()));
        }
    }

    /** Sources and what works between two nets let current through, if that is asked. */
    private void addSneakPath(Placed placed) {
        Element element = placed.element();
        if (element instanceof Cell || element instanceof Consumer || element instanceof Coil) {
            add(placed.from(), placed.to(), placed, Kind.METAL);
        } else if (element instanceof Generator) {
            add(placed.to(), placed.from(), placed, Kind.ONE_WAY);
        } else if (element instanceof Conversion conversion) {
            int plus = circuit.net(placed.part(), conversion.output().plus());
            add(placed.from(), placed.to(), placed, Kind.METAL);
            add(placed.to(), plus, placed, Kind.ONE_WAY);
        }
    }

    private void add(int from, int to, Placed placed, Kind kind) {
        lines.add(new Line(index(placed), from, to, kind, NOTHING, PartGraph.ANY_STAND));
    }

    private void addLine(Placed placed) {
        Element element = placed.element();
        if (element instanceof Cell) {
            addSource(placed, Kind.CELL, NOTHING);
        } else if (element instanceof Generator generator) {
            Kind kind = generator.needsBattery() ? Kind.GENERATOR_BESIDE_BATTERY : Kind.GENERATOR;
            need(placed.part(), generator.field())
                    .ifPresent(field -> addSource(placed, kind, field));
        } else if (element instanceof Conversion conversion) {
            addConversion(placed, conversion);
        } else if (element instanceof Contact contact) {
            addContact(placed, contact);
        } else if (element instanceof Channel channel) {
            addChannel(placed, channel);
        } else if (element.passage() != Passage.NONE && isPushedIn(placed)) {
            addPassage(placed, NOTHING, PartGraph.ANY_STAND);
        }
    }

    private boolean isPushedIn(Placed placed) {
        return !(placed.element() instanceof Protector)
                || levers.closing(placed.part(), PULLED).isPresent();
    }

    private void addSource(Placed placed, Kind kind, int need) {
        lines.add(
                new Line(
                        index(placed),
                        placed.to(),
                        placed.from(),
                        kind,
                        need,
                        PartGraph.ANY_STAND));
    }

    private void addConversion(Placed placed, Conversion conversion) {
        int plus = circuit.net(placed.part(), conversion.output().plus());
        int need = needIndex.getOrDefault(placed.name(), NOTHING);
        lines.add(
                new Line(
                        index(placed),
                        placed.from(),
                        plus,
                        Kind.ONE_WAY,
                        need,
                        PartGraph.ANY_STAND));
    }

    private void addContact(Placed placed, Contact contact) {
        if (contact.control() instanceof Control.ByCoil by) {
            if (by.closedWhenPulled()) {
                need(placed.part(), by.coil())
                        .ifPresent(coil -> addPassage(placed, coil, PartGraph.ANY_STAND));
            } else {
                addPassage(placed, NOTHING, PartGraph.ANY_STAND);
            }
            return;
        }
        List<Stand> sets = closedAt.get(index(placed));
        long stands = 0;
        for (int i = 0; i < sets.size(); i++) {
            if (sets.get(i).closed().contains(contact.name())) {
                stands |= 1L << i;
            }
        }
        if (stands != 0) {
            addPassage(placed, NOTHING, sets.size() == 1 ? PartGraph.ANY_STAND : stands);
        }
    }

    /** A channel without power to its logic goes to its default. */
    private void addChannel(Placed placed, Channel channel) {
        if (!isCommanded(placed.part(), channel)) {
            return;
        }
        if (channel.closedByDefault()) {
            addPassage(placed, NOTHING, PartGraph.ANY_STAND);
        } else {
            need(placed.part(), channel.logic())
                    .ifPresent(logic -> addPassage(placed, logic, PartGraph.ANY_STAND));
        }
    }

    private boolean isCommanded(String part, Channel channel) {
        if (channel.closedByDefault() && lenient.contains(Relaxation.FALLING_INTO_DEFAULTS)) {
            return true;
        }
        return leverOf(part, channel)
                .map(lever -> levers.closing(lever, OFF).isPresent())
                .orElse(true);
    }

    /** The lever that commands a channel. */
    private Optional<String> leverOf(String part, Channel channel) {
        return parts.get(partIndex.getOrDefault(part, 0)).levers().stream()
                .filter(lever -> lever.element().filter(channel.name()::equals).isPresent())
                .map(Lever::name)
                .findFirst();
    }

    /**
     * Where the levers of the candidate stand.
     *
     * @param at which of its useful positions each part's lever stands in
     */
    Map<String, String> positions(int[] at) {
        Map<String, String> positions = new LinkedHashMap<>();
        for (int i = 0; i < at.length; i++) {
            if (!closedAt.get(i).isEmpty()) {
                positions.put(id(i), closedAt.get(i).get(at[i]).position());
            }
        }
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Channel channel) {
                leverOf(placed.part(), channel).ifPresent(l -> put(positions, l, OFF));
            } else if (placed.element() instanceof Protector) {
                put(positions, placed.part(), PULLED);
            }
        }
        return positions;
    }

    /** Where a lever that a procedure moves must stand to close. */
    private void put(Map<String, String> positions, String lever, String opened) {
        levers.closing(lever, opened)
                .filter(position -> !position.isEmpty())
                .ifPresent(position -> positions.put(lever, position));
    }

    private void addPassage(Placed placed, int need, long stands) {
        boolean bothWays = placed.element().passage() == Passage.BOTH_WAYS;
        lines.add(
                new Line(
                        index(placed),
                        placed.from(),
                        placed.to(),
                        bothWays ? Kind.METAL : Kind.ONE_WAY,
                        need,
                        stands));
    }

    private int index(Placed placed) {
        return part(placed.part())
                .orElseThrow(() -> new IllegalStateException("no part " + placed.part()));
    }
}
