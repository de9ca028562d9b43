package stillturning.yaml.notation;

import java.util.Optional;
import stillturning.quantity.MalformedQuantity;

/** Reads a type of one's own from one text, such as a one-line notation. */
@FunctionalInterface
public interface TextForm<T> {

    /** Takes the mistakes found in a text. */
    @FunctionalInterface
    interface FaultReceiver {

        /**
         * Something is wrong in the text.
         *
         * @param offset index of the faulty char in the text, from 0
         */
        void at(int offset, String wrong, String right);

        /** A quantity that starts at an offset in the text is malformed. */
        default void at(int offset, MalformedQuantity malformed) {
            at(offset + malformed.offset(), malformed.wrong(), malformed.right());
        }

        /** Faults of a piece of the text that starts at an offset. */
        default FaultReceiver from(int start) {
            return (offset, wrong, right) -> at(start + offset, wrong, right);
        }
    }

    /** The value, or absent after at least one fault was told. */
    Optional<T> read(String text, FaultReceiver faults);
}
