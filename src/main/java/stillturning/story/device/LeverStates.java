package stillturning.story.device;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where levers stand. Counts its changes, so that who hangs on one need not look it up again. */
public final class LeverStates {

    private final Map<String, String> positions = new HashMap<>();
    private int changes;

    /** Where a lever stands; null where nobody has said it. */
    public @Nullable String at(String lever) {
        return positions.get(lever);
    }

    /** Moves a lever; where it stood, null where nobody had said it. */
    public @Nullable String put(String lever, String position) {
        changes++;
        return positions.put(lever, position);
    }

    /** Moves levers to these positions. */
    public void putAll(Map<String, String> moves) {
        changes++;
        positions.putAll(moves);
    }

    /** How often anything was moved. */
    public int changes() {
        return changes;
    }
}
