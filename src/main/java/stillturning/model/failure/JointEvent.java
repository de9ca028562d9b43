package stillturning.model.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.parts.Damage;
import stillturning.parts.Part;

/**
 * Something that reaches several parts at once.
 *
 * @param rate how often, however it ends; empty where nobody knows
 */
record JointEvent(CauseKind kind, String name, Optional<Rate> rate) {

    private static final int MOST_NAMED = 6;

    /**
     * One way in which it can end.
     *
     * @param suffix what it adds to the event's name
     * @param words what happens
     */
    record Ending(Damage damage, String suffix, String words) {

        static final Ending APART = new Ending(Damage.WORN_APART, ": all open", "the wires part");
        static final Ending BARE =
                new Ending(Damage.WORN_BARE, ": all to ground", "the wires touch metal");
    }

    /**
     * A cause for each end that fails two parts at least; each has an even share of the rate.
     *
     * @param proviso what else is to be said, or empty
     */
    List<Cause> endingIn(List<Ending> ends, List<Part> reached, String proviso) {
        List<Cause> causes = new ArrayList<>();
        for (Ending end : ends) {
            List<Hit> hits = reached.stream().flatMap(p -> hits(end.damage, p)).toList();
            new JointEvent(kind, name + end.suffix, share(ends.size()))
                    .failing(hits, name + ": " + end.words)
                    .map(cause -> cause.adding(proviso))
                    .ifPresent(causes::add);
        }
        return causes;
    }

    /** What damage does to a part; nothing where it does nothing. */
    static Stream<Hit> hits(Damage damage, Part part) {
        return part.failureModes().stream()
                .filter(mode -> mode.causes().contains(damage))
                .map(mode -> new Hit(part.id(), mode));
    }

    private Optional<Rate> share(int ends) {
        return ends == 1
                ? rate
                : rate.map(r -> r.times(1.0 / ends, "one of " + ends + " ends of: " + r.source()));
    }

    /** The cause of these hits; empty where they fail fewer than two parts. */
    Optional<Cause> failing(List<Hit> hits, String words) {
        List<String> parts = hits.stream().map(Hit::part).distinct().toList();
        return Optional.of(
                        new Cause(
                                kind,
                                name,
                                new Failure(name, hits, Map.of()),
                                words + " (" + some(parts) + ")",
                                rate))
                .filter(cause -> parts.size() >= 2);
    }

    private static String some(List<String> parts) {
        int more = parts.size() - MOST_NAMED;
        return more <= 1
                ? String.join(", ", parts)
                : String.join(", ", parts.subList(0, MOST_NAMED)) + " and " + more + " more";
    }
}
