package stillturning.reliability.combined;

import java.util.Set;
import stillturning.reliability.cutset.SetVerdict;

/**
 * What a set of changes came to.
 *
 * @param called parts that were called on, or may have been
 * @param why why nobody could say; empty if somebody could
 */
record SetOutcome(SetVerdict answer, Set<String> called, String why) {
    SetOutcome {
        called = Set.copyOf(called);
    }
}
