package stillturning.assess.suggest;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;

/**
 * Single failures that lose the engine of a changed candidate, held by their names against those of
 * the candidate before. A failure of the engine itself is not counted.
 *
 * @param brought those that did not lose it before, or that were not there
 * @param gone those that no longer lose it, or that are not there any more
 */
public record EngineLosses(List<String> brought, List<String> gone) {
    public EngineLosses {
        brought = List.copyOf(brought);
        gone = List.copyOf(gone);
    }

    static EngineLosses of(Appraisal before, Appraisal after) {
        Set<String> then = names(before);
        Set<String> now = names(after);
        return new EngineLosses(without(now, then), without(then, now));
    }

    private static Set<String> names(Appraisal appraisal) {
        return appraisal.with(Outcome.ENGINE_LOST).stream()
                .map(verdict -> verdict.failure().name())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<String> without(Set<String> names, Set<String> others) {
        return names.stream().filter(name -> !others.contains(name)).toList();
    }

    /** Whether more failures lose the engine than before. */
    public boolean isMore() {
        return brought.size() > gone.size();
    }
}
