package stillturning.story.device;

import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.Set;

/**
 * Loads that are switched off. Counts its changes, so that a load need not look itself up again.
 */
public final class Sheddings {

    private final Set<String> off = new HashSet<>();
    private int changes;

    /** Switches these off too. */
    public void add(Collection<String> loads) {
        changes++;
        off.addAll(loads);
    }

    /** Switches these off, and all others on. */
    public void only(Collection<String> loads) {
        off.clear();
        add(loads);
    }

    /** Whether a load is switched off. */
    public boolean contains(String load) {
        return off.contains(load);
    }

    /** What is switched off. */
    public Set<String> all() {
        return Collections.unmodifiableSet(off);
    }

    /** How often anything was switched. */
    public int changes() {
        return changes;
    }
}
