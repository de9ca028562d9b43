package stillturning.reliability.runup;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stillturning.story.Rehearsal.MovePace;

/**
 * What to check before take-off, and what it leaves hidden.
 *
 * @param latents every failure that nobody sees in flight, in the candidate's order
 * @param phase in which the checks are made
 * @param pace from one move to the next, and how long each position is held
 * @param off loads that are off meanwhile, in the study's order
 * @param checks the fewest that reveal all that any check can, in the order in which they are made;
 *     levers stand as in flight before each and after the last
 * @param proven whether it is proven that fewer do not
 * @param missing what stays hidden
 */
public record Card(
        List<Latent> latents,
        String phase,
        MovePace pace,
        List<String> off,
        List<Check> checks,
        boolean proven,
        Missing missing) {

    /**
     * What a card leaves hidden.
     *
     * @param hidden numbers of latent failures that matter and that no check reveals
     * @param unconfirmed numbers of those that a check reveals by itself, but not the whole card
     *     when it is gone through in order
     * @param refused moves that would reveal some of those hidden, and why they are no check
     */
    public record Missing(
            List<Integer> hidden, List<Integer> unconfirmed, List<RefusedCheck> refused) {
        public Missing {
            hidden = List.copyOf(hidden);
            unconfirmed = List.copyOf(unconfirmed);
            refused = List.copyOf(refused);
        }
    }

    /** One of a candidate in which nothing is hidden. */
    public static Card empty(String phase) {
        return new Card(
                List.of(),
                phase,
                new MovePace(0, 0),
                List.of(),
                List.of(),
                true,
                new Missing(List.of(), List.of(), List.of()));
    }

    public Card {
        latents = List.copyOf(latents);
        off = List.copyOf(off);
        checks = List.copyOf(checks);
    }

    /**
     * The first check that reveals a failure, counted from 1; empty where none does in the whole
     * card gone through in order.
     */
    public Optional<Integer> check(int event) {
        if (missing.unconfirmed.contains(event)) {
            return Optional.empty();
        }
        return IntStream.range(0, checks.size())
                .filter(i -> checks.get(i).reveals().stream().anyMatch(r -> r.event() == event))
                .mapToObj(i -> i + 1)
                .findFirst();
    }

    /** Numbers of latent failures that matter and that no check reveals. */
    public List<Integer> hidden() {
        return missing.hidden;
    }

    /** Numbers of those that a check reveals by itself, but not the whole card in order. */
    public List<Integer> unconfirmed() {
        return missing.unconfirmed;
    }

    /** Latent failures that end the engine with one more. */
    public List<Latent> thatMatter() {
        return latents.stream().filter(Latent::matters).toList();
    }
}
