package stillturning.reliability.runup;

import java.util.List;

/**
 * What to check before take-off, and what it leaves hidden.
 *
 * @param latents every failure that nobody sees in flight, in the candidate's order
 * @param phase in which the checks are made
 * @param seconds how long each position is held (s)
 * @param checks the fewest that reveal all that any check can, in the order in which they are made;
 *     levers stand as in flight before each and after the last
 * @param proven whether it is proven that fewer do not
 * @param hidden numbers of latent failures that matter and that no check reveals
 * @param unconfirmed numbers of those that a check reveals by itself, but not the whole card when
 *     it is gone through in order
 */
public record Card(
        List<Latent> latents,
        String phase,
        double seconds,
        List<Check> checks,
        boolean proven,
        List<Integer> hidden,
        List<Integer> unconfirmed) {
    public Card {
        latents = List.copyOf(latents);
        checks = List.copyOf(checks);
        hidden = List.copyOf(hidden);
        unconfirmed = List.copyOf(unconfirmed);
    }

    /** Latent failures that end the engine with one more. */
    public List<Latent> thatMatter() {
        return latents.stream().filter(Latent::matters).toList();
    }
}
