package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.element.Cell;
import stillturning.element.Channel;
import stillturning.element.Coil;
import stillturning.element.Consumer;
import stillturning.element.Contact;
import stillturning.element.Control;
import stillturning.element.Conversion;
import stillturning.element.Element;
import stillturning.element.Element.Passage;
import stillturning.element.Generator;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Bus;
import stillturning.parts.Part;
import stillturning.parts.SolidStateController;

/** A candidate reduced to what can carry current, what makes it, and what must be fed for that. */
final class Wiring {

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

    private final Levers levers;
    private final Map<Integer, List<Integer>> barsOn = new HashMap<>();
    private final int[] barNets;
    private final Map<String, Integer> partIndex = new HashMap<>();
    private final Map<String, Integer> needIndex = new HashMap<>();
    private final List<List<Set<String>>> closedAt = new ArrayList<>();

    Wiring(Candidate candidate) {
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
            if (parts.get(i) instanceof Bus bus) {
                barNets[i] = circuit.net(bus.id(), bus.exit());
                barsOn.computeIfAbsent(barNets[i], net -> new ArrayList<>()).add(i);
            }
        }
        circuit.placed().forEach(this::addNeed);
        circuit.placed().forEach(this::addLine);
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
        } else if (element.passage() != Passage.NONE) {
            addPassage(placed, NOTHING, PartGraph.ANY_STAND);
        }
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
        List<Set<String>> sets = closedAt.get(index(placed));
        long stands = 0;
        for (int i = 0; i < sets.size(); i++) {
            if (sets.get(i).contains(contact.name())) {
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
        Set<String> positions = Set.of();
        if (parts.get(partIndex.getOrDefault(part, 0)) instanceof SolidStateController box) {
            for (int n = 1; n <= box.outputs().size(); n++) {
                if (SolidStateController.outputName(n).equals(channel.to())) {
                    positions = levers.positions(box.lever(n));
                }
            }
        }
        return positions.isEmpty() || positions.stream().anyMatch(at -> !at.equals("off"));
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
