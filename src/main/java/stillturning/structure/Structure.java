package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Pseudograph;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.EngineLogic;
import stillturning.model.Study.Aircraft;
import stillturning.parts.element.Conversion;
import stillturning.structure.StructureFindings.InputWays;
import stillturning.structure.StructureFindings.LoadWays;
import stillturning.structure.StructureFindings.SinglePoint;
import stillturning.structure.Survival.SurvivingState;

/**
 * The second opinion on a candidate: not how it behaves, only how it hangs together.
 *
 * <p>A part is removed by removing all that it does; with a bus goes the joint that is its bar. So
 * a short circuit, which is worse than removal, is out of sight. A switch is closed if it is closed
 * in flight or a procedure can close it, each lever in one position at a time.
 */
public final class Structure {

    private final Wiring wiring;
    private final Survival survival;
    private final EngineLogic logic;
    private final List<LoadEnds> loads;
    private final SurvivingState intact;
    private final FindingTexts sayings;

    private Structure(Aircraft aircraft, Candidate candidate, Set<Relaxation> lenient) {
        wiring = new Wiring(candidate, lenient);
        survival = new Survival(wiring);
        logic = aircraft.engine().logic();
        loads =
                logic.loads().stream()
                        .map(load -> LoadEnds.of(load, wiring))
                        .flatMap(Optional::stream)
                        .toList();
        intact = survival.without(Survival.NOTHING_GONE);
        sayings = new FindingTexts(wiring, survival, loads);
    }

    /** What the candidate's shape alone says about the engine's needs. */
    public static StructureFindings of(Aircraft aircraft, Candidate candidate) {
        return new Structure(aircraft, candidate, Set.of()).findings();
    }

    /**
     * What the shape says once nothing, and once each part, is gone: nothing first, then part by
     * part in the candidate's order.
     */
    public static List<Removal> removals(Aircraft aircraft, Candidate candidate) {
        Structure structure = new Structure(aircraft, candidate, Set.of());
        List<Removal> removals = new ArrayList<>();
        removals.add(structure.removal(OptionalInt.empty()));
        IntStream.range(0, candidate.parts().size())
                .mapToObj(part -> structure.removal(OptionalInt.of(part)))
                .forEach(removals::add);
        return List.copyOf(removals);
    }

    /**
     * What the shape says once a part, or nothing, is gone.
     *
     * @param lenient what is counted as a way although it usually is not
     * @throws IllegalArgumentException if the candidate has no such part
     */
    public static Removal without(
            Aircraft aircraft,
            Candidate candidate,
            Optional<String> part,
            Set<Relaxation> lenient) {
        Structure structure = new Structure(aircraft, candidate, lenient);
        OptionalInt gone = OptionalInt.empty();
        if (part.isPresent()) {
            gone = structure.wiring.part(part.get());
            if (gone.isEmpty()) {
                throw new IllegalArgumentException(candidate.id() + " has no part " + part.get());
            }
        }
        return structure.removal(gone);
    }

    /**
     * How each thing that the engine cannot do without is supplied, in the order of its logic: a
     * pump of two, a lane of two.
     */
    public static List<FunctionWays> functions(Aircraft aircraft, Candidate candidate) {
        Structure structure = new Structure(aircraft, candidate, Set.of());
        return new Functions(structure.wiring, structure.survival, structure.loads, structure.logic)
                .all();
    }

    private Removal removal(OptionalInt part) {
        BitSet gone = new BitSet();
        part.ifPresent(gone::set);
        Optional<Survival.StandingState> standing = survival.standing(gone, this::runs);
        Optional<String> id = part.stream().mapToObj(wiring::id).findFirst();
        if (standing.isEmpty()) {
            String evidence =
                    part.isPresent()
                            ? reason(part.getAsInt())
                            : "no position of the switches feeds all that is needed";
            return new Removal(id, false, Map.of(), evidence);
        }
        return new Removal(
                id,
                true,
                wiring.positions(standing.get().at()),
                sayings.feeding(standing.get().outcome()));
    }

    private StructureFindings findings() {
        Optional<SurvivingState> running = survival.enough(Survival.NOTHING_GONE, this::runs);
        return new StructureFindings(
                independentLoops(wiring.circuit),
                running.isPresent(),
                unsupplied(),
                loadWays(),
                running.map(this::singlePoints).orElse(List.of()));
    }

    private boolean runs(SurvivingState outcome) {
        return logic.runsOn(
                id ->
                        loads.stream()
                                .anyMatch(
                                        load ->
                                                load.id().equals(id)
                                                        && outcome.fed().get(load.need())));
    }

    private List<String> unsupplied() {
        return logic.loads().stream()
                .filter(
                        id ->
                                loads.stream()
                                        .noneMatch(
                                                load -> load.id().equals(id) && isSupplied(load)))
                .toList();
    }

    private boolean isSupplied(LoadEnds load) {
        return survival.enough(Survival.NOTHING_GONE, now -> now.fed().get(load.need()))
                .isPresent();
    }

    /** Only what feeds the running engine can be missed: no other part is tried. */
    private List<SinglePoint> singlePoints(SurvivingState running) {
        List<Integer> needs =
                loads.stream().map(LoadEnds::need).filter(running.fed()::get).toList();
        return survival.partsBehind(needs, running).stream()
                .filter(part -> survival.enough(only(part), this::runs).isEmpty())
                .mapToObj(part -> new SinglePoint(wiring.id(part), reason(part)))
                .toList();
    }

    private String reason(int part) {
        String id = wiring.id(part);
        boolean mayDoWithout = logic.runsOn(load -> !load.equals(id));
        return logic.loads().contains(id) && mayDoWithout
                ? "nothing is fed that could take its place"
                : sayings.reason(part, intact);
    }

    private static BitSet only(int part) {
        BitSet gone = new BitSet();
        gone.set(part);
        return gone;
    }

    private List<LoadWays> loadWays() {
        List<LoadEnds> fed = loads.stream().filter(LoadEnds::isFed).toList();
        WayGraph graph = new WayGraph(wiring, intact.open(), fed, List.of());
        Separator separator = new Separator(graph.graph());
        return fed.stream().map(load -> waysOf(load, graph, separator)).toList();
    }

    private LoadWays waysOf(LoadEnds load, WayGraph graph, Separator separator) {
        Separation feed = separator.between(graph.plus(), graph.work(load));
        Separation back = separator.between(graph.back(load), graph.minus());
        List<InputWays> inputs = new ArrayList<>();
        for (int i = 0; i < load.inputs().size(); i++) {
            String name = load.inputs().get(i).name();
            Separation one =
                    load.inputs().size() == 1
                            ? feed
                            : separator.between(graph.plus(), graph.input(load, i));
            String to = "input " + name + " of " + load.id();
            inputs.add(new InputWays(name, sayings.ways(one, "a source", to)));
        }
        return new LoadWays(
                load.id(),
                sayings.ways(feed, "a source", load.id()),
                inputs,
                sayings.ways(back, load.id(), "a source"));
    }

    /** How many loops of a candidate do not follow from each other. */
    public static int independentLoops(Candidate candidate) {
        return independentLoops(candidate.circuit());
    }

    private static int independentLoops(Circuit circuit) {
        Graph<Integer, DefaultEdge> graph = new Pseudograph<>(DefaultEdge.class);
        IntStream.range(0, circuit.nets()).forEach(graph::addVertex);
        for (Circuit.Placed placed : circuit.placed()) {
            graph.addEdge(placed.from(), placed.to());
            if (placed.element() instanceof Conversion conversion) {
                graph.addEdge(
                        circuit.net(placed.part(), conversion.output().plus()),
                        circuit.net(placed.part(), conversion.output().minus()));
            }
        }
        int sets = new ConnectivityInspector<>(graph).connectedSets().size();
        return graph.edgeSet().size() - graph.vertexSet().size() + sets;
    }
}
