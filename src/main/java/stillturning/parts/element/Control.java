package stillturning.parts.element;

import java.util.Set;
import java.util.function.Function;

/** What decides whether a contact is closed. */
public sealed interface Control {

    /** The answer for its kind. */
    <T> T fold(Function<ByHand, T> hand, Function<ByCoil, T> coil);

    /**
     * Whether the contact is closed.
     *
     * @param position where the part's lever stands; empty if it has none
     * @param pulled whether the part's coil is pulled in
     */
    boolean closes(String position, boolean pulled);

    /** A hand: closed while the part's lever stands in one of these positions. */
    record ByHand(Set<String> closedAt) implements Control {
        public ByHand {
            closedAt = Set.copyOf(closedAt);
        }

        @Override
        public boolean closes(String position, boolean pulled) {
            return closedAt.contains(position);
        }

        @Override
        public <T> T fold(Function<ByHand, T> hand, Function<ByCoil, T> coil) {
            return hand.apply(this);
        }
    }

    /** A coil of the same part: closed while it is pulled in, or while it is not. */
    record ByCoil(String coil, boolean closedWhenPulled) implements Control {
        @Override
        public boolean closes(String position, boolean pulled) {
            return pulled == closedWhenPulled;
        }

        @Override
        public <T> T fold(Function<ByHand, T> hand, Function<ByCoil, T> coil) {
            return coil.apply(this);
        }
    }
}
