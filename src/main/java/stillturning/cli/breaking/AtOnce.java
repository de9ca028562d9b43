package stillturning.cli.breaking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.cli.terminal.Refusal;
import stillturning.model.failure.Failure;

/** Several failures at the same moment, told as one. */
final class AtOnce {

    /** More than a person reads. */
    private static final int MOST = 40;

    private AtOnce() {}

    /**
     * Every way in which one of each comes at once, by candidate that has them all.
     *
     * @param each what each of the names means, by candidate
     * @throws Refusal if there is none, or more than anybody reads
     */
    static Map<String, List<Failure>> of(List<Map<String, List<Failure>>> each) {
        Map<String, List<Failure>> all = new LinkedHashMap<>();
        for (String candidate : each.get(0).keySet()) {
            List<Failure> together = each.get(0).getOrDefault(candidate, List.of());
            for (Map<String, List<Failure>> more : each.subList(1, each.size())) {
                together = both(together, more.getOrDefault(candidate, List.of()));
            }
            if (!together.isEmpty()) {
                all.put(candidate, together);
            }
        }
        if (all.isEmpty()) {
            throw new Refusal("no candidate has all of these failures, each another, at once");
        }
        return all;
    }

    private static List<Failure> both(List<Failure> some, List<Failure> more) {
        List<Failure> all = new ArrayList<>();
        for (Failure one : some) {
            for (Failure other : more) {
                boolean again = one.hits().containsAll(other.hits()) && !other.hits().isEmpty();
                if (!again && one.goesWith(other) && isNew(one, other, all)) {
                    all.add(one.and(other));
                }
            }
        }
        if (all.size() > MOST) {
            throw new Refusal(
                    "that makes "
                            + all.size()
                            + " stories a candidate; say also how each part fails, as in \"main bus"
                            + " short\"");
        }
        return all;
    }

    /** The same two the other way round are the same. */
    private static boolean isNew(Failure one, Failure other, List<Failure> all) {
        String turned = other.name() + " + " + one.name();
        return all.stream().noneMatch(failure -> failure.name().equals(turned));
    }
}
