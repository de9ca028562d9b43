package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.EngineLogic;
import stillturning.structure.StructureFindings.SupplyWays;
import stillturning.structure.Survival.SurvivingState;

/** The engine's needs one by one, and what takes each away. */
final class Functions {

    /** Pairs that a sentence names. */
    private static final int PAIRS_NAMED = 3;

    private final Wiring wiring;
    private final Survival survival;
    private final List<LoadEnds> loads;
    private final List<EngineLogic> functions;
    private final WayGraph graph;
    private final Separator separator;
    private final FindingTexts sayings;

    Functions(Wiring wiring, Survival survival, List<LoadEnds> loads, EngineLogic logic) {
        this.wiring = wiring;
        this.survival = survival;
        this.loads = loads;
        this.sayings = new FindingTexts(wiring, survival, loads);
        this.functions = logic.needed();
        this.graph =
                new WayGraph(
                        wiring,
                        survival.without(Survival.NOTHING_GONE).open(),
                        List.of(),
                        functions.stream().map(this::ends).distinct().toList());
        this.separator = new Separator(graph.graph());
    }

    List<FunctionWays> all() {
        return functions.stream().map(this::ways).toList();
    }

    private FunctionWays ways(EngineLogic function) {
        boolean anyDoes = function.anyLoadIsEnough();
        List<LoadEnds> ends = ends(function);
        String name = function.inWords();
        Optional<SupplyWays> feed = Optional.empty();
        Optional<SupplyWays> back = Optional.empty();
        boolean allFed = ends.stream().allMatch(LoadEnds::isFed);
        if (anyDoes && allFed && !ends.isEmpty()) {
            Separation out = separator.between(graph.plus(), graph.work(ends));
            Separation in = separator.between(graph.back(ends), graph.minus());
            feed = Optional.of(sayings.ways(out, "a source", name));
            back = Optional.of(sayings.ways(in, name, "a source"));
        }
        boolean supplied = enough(function, Survival.NOTHING_GONE).isPresent();
        List<List<String>> cuts =
                cuts(function).stream()
                        .map(cut -> cut.stream().mapToObj(wiring::id).toList())
                        .toList();
        String words =
                Stream.of(
                                Optional.of(lost(name, supplied, cuts)),
                                feed.map(SupplyWays::words),
                                back.map(SupplyWays::words))
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining("; "));
        return new FunctionWays(name, function.loads(), feed, back, supplied, cuts, words);
    }

    private List<LoadEnds> ends(EngineLogic function) {
        return loads.stream().filter(load -> function.loads().contains(load.id())).toList();
    }

    private Optional<SurvivingState> enough(EngineLogic function, BitSet gone) {
        Predicate<SurvivingState> runs =
                outcome ->
                        function.runsOn(
                                id ->
                                        loads.stream()
                                                .filter(load -> load.id().equals(id))
                                                .anyMatch(l -> outcome.fed().get(l.need())));
        return survival.enough(gone, runs);
    }

    /**
     * Every smallest set of one or two parts. One of a set must be among the parts behind the loads
     * as they are fed, the other among those behind them once the first is gone.
     */
    private Set<BitSet> cuts(EngineLogic function) {
        Set<BitSet> singles = new LinkedHashSet<>();
        Set<BitSet> pairs = new LinkedHashSet<>();
        BitSet alone = new BitSet();
        BitSet behind = behind(function, Survival.NOTHING_GONE);
        for (int part : behind.stream().toArray()) {
            if (enough(function, bits(part)).isEmpty()) {
                alone.set(part);
                singles.add(bits(part));
            }
        }
        behind.andNot(alone);
        for (int first : behind.stream().toArray()) {
            BitSet others = behind(function, bits(first));
            others.andNot(alone);
            others.stream()
                    .mapToObj(second -> bits(first, second))
                    .filter(pair -> !pairs.contains(pair) && enough(function, pair).isEmpty())
                    .forEach(pairs::add);
        }
        pairs.stream().sorted(Functions::byParts).forEach(singles::add);
        return singles;
    }

    private BitSet behind(EngineLogic function, BitSet gone) {
        List<LoadEnds> ends = ends(function);
        return enough(function, gone)
                .map(
                        outcome -> {
                            List<Integer> needs = new ArrayList<>();
                            ends.stream()
                                    .map(LoadEnds::need)
                                    .filter(outcome.fed()::get)
                                    .forEach(needs::add);
                            BitSet parts = survival.partsBehind(needs, outcome);
                            ends.forEach(load -> parts.clear(load.work().part()));
                            return parts;
                        })
                .orElseGet(BitSet::new);
    }

    private static int byParts(BitSet one, BitSet other) {
        int first = Integer.compare(one.nextSetBit(0), other.nextSetBit(0));
        return first != 0 ? first : Integer.compare(one.length(), other.length());
    }

    private static BitSet bits(int... parts) {
        BitSet bits = new BitSet();
        for (int part : parts) {
            bits.set(part);
        }
        return bits;
    }

    private static String lost(String name, boolean supplied, List<List<String>> cuts) {
        if (!supplied) {
            return name + " is not supplied at all";
        }
        if (cuts.isEmpty()) {
            return name + " outlasts the loss of any two parts";
        }
        if (cuts.get(0).size() == 1) {
            String singles =
                    cuts.stream()
                            .filter(cut -> cut.size() == 1)
                            .map(cut -> cut.get(0))
                            .collect(Collectors.joining(", or without "));
            return name + " is not supplied without " + singles;
        }
        String pairs =
                cuts.stream()
                        .limit(PAIRS_NAMED)
                        .map(cut -> String.join(" and ", cut))
                        .collect(Collectors.joining(", or of "));
        int left = cuts.size() - PAIRS_NAMED;
        return name
                + " outlasts the loss of any one part, but not of "
                + pairs
                + (left > 0 ? ", or of " + left + " more" : "");
    }
}
