package stillturning.reliability.asbuilt;

import java.util.Optional;
import java.util.function.Function;

/** A value that follows from what was measured, or that nothing follows for it. */
public sealed interface FittedValue {

    /** What is estimated of a battery. */
    enum BatteryValue {
        CAPACITY,
        RESISTANCE,
        CHARGE
    }

    /** The answer for its kind. */
    <T> T fold(Function<Known, T> known, Function<Unknown, T> unknown);

    /** The value, if there is one. */
    default Optional<Known> known() {
        return fold(Optional::of, unknown -> Optional.empty());
    }

    /**
     * A value.
     *
     * @param standardError of it, by noise alone
     * @param low below which it is in 2.5 % of such tests
     * @param high above which it is in 2.5 % of such tests
     */
    record Known(double value, double standardError, double low, double high)
            implements FittedValue {
        @Override
        public <T> T fold(Function<Known, T> known, Function<Unknown, T> unknown) {
            return known.apply(this);
        }

        /** Half the interval of 95 %. */
        public double half() {
            return (high - low) / 2;
        }
    }

    /**
     * None: the readings allow too many.
     *
     * @param mistakenFor the value for whose change its own change can be mistaken, if one is
     */
    record Unknown(Optional<BatteryValue> mistakenFor) implements FittedValue {
        @Override
        public <T> T fold(Function<Known, T> known, Function<Unknown, T> unknown) {
            return unknown.apply(this);
        }
    }
}
