package stillturning.reliability.runup;

import java.util.List;

/**
 * A failure of which a pilot sees nothing from the start to the landing.
 *
 * @param event its number
 * @param with numbers of the failures and common causes with any of which it ends the engine
 */
public record Latent(int event, List<Integer> with) {
    public Latent {
        with = List.copyOf(with);
    }

    /** Whether one more failure ends the engine. */
    public boolean matters() {
        return !with.isEmpty();
    }
}
