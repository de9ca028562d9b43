package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Capacitor;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control.ByCoil;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Role;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Protector;
import stillturning.parts.element.Rectifier;
import stillturning.structure.LeverPositions.Stand;

/** A candidate reduced to what can carry current, what makes it, and what must be fed for that. */
final class Wiring {

    private static final String OFF = "off";
    private static final String PULLED = "pulled";

    /** Stands for {@code GraphLine.need} where nothing has to be fed. */
    static final int NOTHING = -1;

    /** Stands for a net where there is none. */
    static final int NO_NET = -1;

    /** What a line is. */
    enum GraphLineKind {
        METAL,
        ONE_WAY,
        /** A converter: what it gives is no change of what it takes. */
        CONVERTER,
        CELL,
        GENERATOR,
        /** Gives up unless what it gives too much finds a way through a battery. */
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
    record GraphLine(int part, int from, int to, GraphLineKind kind, int need, long stands) {}

    /**
     * Something that does its work only while current can come to it and get back.
     *
     * @param ownSource whether that is always so, since it makes its own
     */
    record Need(int part, int from, int to, boolean ownSource) {}

    final Circuit circuit;
    final List<Part> parts;
    final List<GraphLine> lines = new ArrayList<>();
    final List<Need> needs = new ArrayList<>();

    /** What takes up a change of current by itself, from its minus to its plus. */
    final List<GraphLine> buffers = new ArrayList<>();

    /** How many useful positions the lever of each part has, 1 for most. */
    final int[] stands;

    private final Set<Relaxation> lenient;
    private final LeverPositions levers;
    private final Map<Integer, List<Integer>> barsOn = new HashMap<>();
    private final int[] barNets;
    private final Map<String, Integer> partIndex = new HashMap<>();
    private final Map<String, Integer> needIndex = new HashMap<>();
    private final List<List<Stand>> closedAt = new ArrayList<>();

    Wiring(Candidate candidate, Set<Relaxation> lenient) {
        this.lenient = Set.copyOf(lenient);
        circuit = candidate.circuit();
        parts = candidate.parts();
        levers = new LeverPositions(candidate.cockpit());
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
        circuit.placed().forEach(this::addBuffer);
        circuit.placed().forEach(p -> lines.addAll(p.element().accept(new LinesOf(p))));
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
        switch (placed.element().role()) {
            case LOAD, COIL, CONVERTER -> {
                needIndex.put(placed.name(), needs.size());
                boolean own = placed.element() instanceof Consumer c && c.isOwnSource();
                needs.add(new Need(index(placed), placed.from(), placed.to(), own));
            }
            case BATTERY, GENERATOR, CAPACITOR, PATH, ELECTRONICS -> {}
        }
    }

    /** A capacitor counts if it is large enough for every alternator, ways aside. */
    private void addBuffer(Placed placed) {
        OptionalDouble ohms = placed.element().surplusOhms();
        if (ohms.isPresent()
                && (placed.element().role() == Role.BATTERY
                        || ohms.getAsDouble() <= strictestOhms())) {
            int part = index(placed);
            long any = PartGraph.ANY_STAND;
            buffers.add(
                    new GraphLine(
                            part, placed.to(), placed.from(), GraphLineKind.CELL, NOTHING, any));
        }
    }

    private double strictestOhms() {
        return circuit.placed().stream()
                .map(Placed::element)
                .filter(Generator.class::isInstance)
                .mapToDouble(element -> ((Generator) element).steadyingOhms())
                .min()
                .orElse(0);
    }

    /** Sources and what works between two nets let current through, if that is asked. */
    private void addSneakPath(Placed placed) {
        switch (placed.element().role()) {
            case BATTERY, CAPACITOR, LOAD, COIL, CONVERTER ->
                    add(placed.from(), placed.to(), placed, GraphLineKind.METAL);
            case GENERATOR -> add(placed.to(), placed.from(), placed, GraphLineKind.ONE_WAY);
            case PATH, ELECTRONICS -> {}
        }
        if (placed.element() instanceof Conversion conversion) {
            add(placed.to(), plus(placed, conversion), placed, GraphLineKind.ONE_WAY);
        }
    }

    private int plus(Placed placed, Conversion conversion) {
        return circuit.net(placed.part(), conversion.output().plus());
    }

    private void add(int from, int to, Placed placed, GraphLineKind kind) {
        lines.add(new GraphLine(index(placed), from, to, kind, NOTHING, PartGraph.ANY_STAND));
    }

    /** The lines that an element makes by what it is for. */
    private final class LinesOf implements Element.Visitor<List<GraphLine>> {
        private final Placed placed;

        LinesOf(Placed placed) {
            this.placed = placed;
        }

        /** What keeps a bus up for moments is no source that an engine could live on. */
        @Override
        public List<GraphLine> visit(Capacitor capacitor) {
            return List.of();
        }

        @Override
        public List<GraphLine> visit(Cell cell) {
            return source(GraphLineKind.CELL, NOTHING);
        }

        @Override
        public List<GraphLine> visit(Generator generator) {
            OptionalInt field =
                    generator.needsField()
                            ? need(placed.part(), generator.field())
                            : OptionalInt.of(NOTHING);
            GraphLineKind kind =
                    generator.needsBattery()
                            ? GraphLineKind.GENERATOR_BESIDE_BATTERY
                            : GraphLineKind.GENERATOR;
            return field.isPresent() ? source(kind, field.getAsInt()) : List.of();
        }

        private List<GraphLine> source(GraphLineKind kind, int need) {
            return line(placed.to(), placed.from(), kind, need, PartGraph.ANY_STAND);
        }

        @Override
        public List<GraphLine> visit(Conversion conversion) {
            int need = needIndex.getOrDefault(placed.name(), NOTHING);
            int plus = plus(placed, conversion);
            return line(placed.from(), plus, GraphLineKind.CONVERTER, need, PartGraph.ANY_STAND);
        }

        @Override
        public List<GraphLine> visit(Coil coil) {
            return List.of();
        }

        @Override
        public List<GraphLine> visit(Consumer consumer) {
            return List.of();
        }

        @Override
        public List<GraphLine> visit(Conductor conductor) {
            return always();
        }

        @Override
        public List<GraphLine> visit(Rectifier diode) {
            return always();
        }

        @Override
        public List<GraphLine> visit(Guard guard) {
            return always();
        }

        @Override
        public List<GraphLine> visit(Protector protector) {
            return levers.closing(placed.part(), PULLED).isPresent() ? always() : List.of();
        }

        @Override
        public List<GraphLine> visit(Contact contact) {
            return contact.control().fold(hand -> byHand(contact), this::byCoil);
        }

        /** A channel without power to its logic goes to its default. */
        @Override
        public List<GraphLine> visit(Channel channel) {
            if (!isCommanded(placed, channel)) {
                return List.of();
            }
            return channel.closedByDefault() ? always() : whileFed(channel.logic());
        }

        private List<GraphLine> byCoil(ByCoil by) {
            return by.closedWhenPulled() ? whileFed(by.coil()) : always();
        }

        private List<GraphLine> byHand(Contact contact) {
            List<Stand> sets = closedAt.get(index(placed));
            long stands = 0;
            for (int i = 0; i < sets.size(); i++) {
                if (sets.get(i).closed().contains(contact.name())) {
                    stands |= 1L << i;
                }
            }
            if (stands == 0) {
                return List.of();
            }
            return passage(NOTHING, sets.size() == 1 ? PartGraph.ANY_STAND : stands);
        }

        private List<GraphLine> always() {
            return passage(NOTHING, PartGraph.ANY_STAND);
        }

        private List<GraphLine> whileFed(String element) {
            OptionalInt need = need(placed.part(), element);
            return need.isPresent() ? passage(need.getAsInt(), PartGraph.ANY_STAND) : List.of();
        }

        private List<GraphLine> passage(int need, long stands) {
            return switch (placed.element().passage()) {
                case NONE -> List.of();
                case BOTH_WAYS ->
                        line(placed.from(), placed.to(), GraphLineKind.METAL, need, stands);
                case ONE_WAY ->
                        line(placed.from(), placed.to(), GraphLineKind.ONE_WAY, need, stands);
            };
        }

        private List<GraphLine> line(int from, int to, GraphLineKind kind, int need, long stands) {
            return List.of(new GraphLine(index(placed), from, to, kind, need, stands));
        }
    }

    private boolean isCommanded(Placed placed, Channel channel) {
        if (channel.closedByDefault() && lenient.contains(Relaxation.FALLING_INTO_DEFAULTS)) {
            return true;
        }
        return leverOf(placed).map(lever -> levers.closing(lever, OFF).isPresent()).orElse(true);
    }

    /** The lever that commands a channel. */
    private Optional<String> leverOf(Placed channel) {
        return parts.get(index(channel)).levers().stream()
                .filter(
                        lever ->
                                lever.element()
                                        .filter(channel.element().name()::equals)
                                        .isPresent())
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
            if (placed.element().overload().isPresent()) {
                reclose(placed, positions);
            }
        }
        return positions;
    }

    private void reclose(Placed placed, Map<String, String> positions) {
        if (placed.element().role() == Role.ELECTRONICS) {
            leverOf(placed).ifPresent(lever -> put(positions, lever, OFF));
        } else {
            put(positions, placed.part(), PULLED);
        }
    }

    /** Where a lever that a procedure moves must stand to close. */
    private void put(Map<String, String> positions, String lever, String opened) {
        levers.closing(lever, opened)
                .filter(position -> !position.isEmpty())
                .ifPresent(position -> positions.put(lever, position));
    }

    private int index(Placed placed) {
        return part(placed.part())
                .orElseThrow(() -> new IllegalStateException("no part " + placed.part()));
    }
}
