package stillturning.reliability.combined;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.model.Candidate.Hit;
import stillturning.model.EngineLogic;

/** Tells the sets of events in which the engine loses by itself what it cannot do without. */
public record EngineOwn(EngineLogic logic, List<Event> events) implements Predicate<List<Integer>> {

    @Override
    public boolean test(List<Integer> set) {
        Set<String> lost =
                set.stream()
                        .flatMap(event -> events.get(event).failure().hits().stream())
                        .filter(hit -> hit.mode().traits().whateverItsSupply())
                        .map(Hit::part)
                        .collect(Collectors.toSet());
        return !logic.runsOn(load -> !lost.contains(load));
    }
}
