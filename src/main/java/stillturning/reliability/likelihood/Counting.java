package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.EngineOwn;

/**
 * Which cut sets count: those that end the engine, and those that nobody can tell.
 *
 * @param engineOwn left out, since the engine fails by itself
 * @param neverFlown left out, since the engine does not even run on the ground
 */
record Counting(
        List<List<Integer>> sets, List<List<Integer>> engineOwn, List<List<Integer>> neverFlown) {

    static Counting of(Study study, CombinedResult joint) {
        Counting all = new Counting(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        EngineOwn own = new EngineOwn(study.aircraft().engine().logic(), joint.events());
        NeverFlown never = new NeverFlown(study, joint);
        for (List<Integer> set : joint.sets().feared()) {
            if (own.test(set)) {
                all.engineOwn.add(set);
            } else if (never.test(set)) {
                all.neverFlown.add(set);
            } else {
                all.sets.add(set);
            }
        }
        return all;
    }

    /** Events that are in a set that counts. */
    Set<Integer> events() {
        return sets.stream().flatMap(List::stream).collect(Collectors.toSet());
    }
}
