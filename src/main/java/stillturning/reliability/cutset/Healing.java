package stillturning.reliability.cutset;

import java.util.List;

/**
 * A minimal set that comes to nothing once one more event happens with it.
 *
 * @param by the event that undoes it
 */
public record Healing(List<Integer> set, int by) {
    public Healing {
        set = List.copyOf(set);
    }
}
