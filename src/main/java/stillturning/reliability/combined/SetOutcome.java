package stillturning.reliability.combined;

import stillturning.reliability.cutset.SetVerdict;

import java.util.Set;

/**
 * What a set of changes came to.
 *
 * @param called parts that were called upon, or may have been
 * @param why why nobody could say; empty if somebody could
 */
record SetOutcome(SetVerdict answer, Set<String> called, String why) {
    SetOutcome {
        called = Set.copyOf(called);
    }
}
