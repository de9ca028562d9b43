package stillturning.parts.element;

import java.util.Set;

/** What decides whether a contact is closed. */
public sealed interface Control {

    /** A hand: closed while the part's lever stands in one of these positions. */
    record ByHand(Set<String> closedAt) implements Control {
        public ByHand {
            closedAt = Set.copyOf(closedAt);
        }
    }

    /** A coil of the same part: closed while it is pulled in, or while it is not. */
    record ByCoil(String coil, boolean closedWhenPulled) implements Control {}
}
