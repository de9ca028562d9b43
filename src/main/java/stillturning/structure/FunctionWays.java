package stillturning.structure;

import java.util.List;
import java.util.Optional;
import stillturning.structure.StructureFindings.SupplyWays;

/**
 * How one thing that the engine cannot do without is supplied, by whichever of the loads that can
 * do it.
 *
 * @param function what must work, as the engine's logic says it: {@code "pump-1 or pump-2"}
 * @param loads loads that it names
 * @param feed from any source to any of its loads; empty where several must work together, since
 *     that is no question of ways
 * @param back from any of its loads to any source; empty likewise
 * @param supplied whether it is with nothing removed
 * @param cuts smallest sets of one or two parts, other than its loads, without which it is not
 *     supplied, wherever the levers stand and whatever depends on them; none of three is looked for
 * @param words the same in a sentence
 */
public record FunctionWays(
        String function,
        List<String> loads,
        Optional<SupplyWays> feed,
        Optional<SupplyWays> back,
        boolean supplied,
        List<List<String>> cuts,
        String words) {
    public FunctionWays {
        loads = List.copyOf(loads);
        cuts = cuts.stream().map(List::copyOf).toList();
    }

    /** Parts that alone take it away. */
    public List<String> singles() {
        return cuts.stream().filter(cut -> cut.size() == 1).map(cut -> cut.get(0)).toList();
    }
}
