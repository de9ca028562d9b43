package stillturning.structure;

import java.util.List;

/**
 * What a candidate's shape alone says.
 *
 * @param independentLoops elements − nets + connected sets of the graph whose vertices are nets and
 *     whose edges are elements, a converter being two
 * @param engineSupplied whether, with nothing removed, enough loads for the engine have a way out
 *     and back
 * @param unsupplied loads named by the engine logic that have none, in its order
 * @param loads one row a load named by the engine logic, in its order
 * @param singlePoints parts without which the engine logic is not met, in the candidate's order;
 *     empty if it is not met anyway
 */
public record StructureFindings(
        int independentLoops,
        boolean engineSupplied,
        List<String> unsupplied,
        List<LoadWays> loads,
        List<SinglePoint> singlePoints) {

    /**
     * A part without which the engine logic is not met.
     *
     * @param reason what it carries: {@code "the only feed of injectors"}
     */
    public record SinglePoint(String part, String reason) {}

    /**
     * The ways of one load.
     *
     * @param feed from any source to the load, by whichever input
     * @param inputs the same for each input by itself
     * @param back from the load to any source
     */
    public record LoadWays(String load, SupplyWays feed, List<InputWays> inputs, SupplyWays back) {
        public LoadWays {
            inputs = List.copyOf(inputs);
        }
    }

    /** The ways from any source to one input of a load. */
    public record InputWays(String input, SupplyWays feed) {}

    /**
     * Ways between the sources and a load, on one side of it. A source is the first part of a way
     * out; the way back ends at a source and does not count it.
     *
     * @param independent the most ways of which no two share a part, each as part ids along it; one
     *     without parts where both ends meet in one joint
     * @param cut the fewest parts that, removed together, leave no way; empty where there is none
     *     to cut or none that can be cut
     * @param shared parts that every way passes, along the way
     * @param proven whether it is certain that there are no more ways and no smaller cut; false
     *     only where too many ways through shared connectors and switches were left to try
     * @param words the same in a sentence
     */
    public record SupplyWays(
            List<List<String>> independent,
            List<String> cut,
            List<String> shared,
            boolean proven,
            String words) {
        public SupplyWays {
            independent = independent.stream().map(List::copyOf).toList();
            cut = List.copyOf(cut);
            shared = List.copyOf(shared);
        }
    }

    public StructureFindings {
        unsupplied = List.copyOf(unsupplied);
        loads = List.copyOf(loads);
        singlePoints = List.copyOf(singlePoints);
    }
}
