package stillturning.model;

import java.util.Optional;

/**
 * Something that a pilot notices.
 *
 * @param name what the procedures call it
 * @param sign what happens
 * @param shownBy load that must work for him to see it, and that measures the voltage if one is
 *     watched; empty for a lamp or for the noise stopping
 */
public record Cue(String name, Sign sign, Optional<String> shownBy) {

    /**
     * Whether it is a lamp of its own that shows it, which can be dead without anybody noticing.
     */
    public boolean isOnALamp() {
        return shownBy.isEmpty() && sign.needsInstrument();
    }

    /** What the cue watches. */
    public sealed interface Sign {
        /** Whether it tells that nothing charges any more. */
        default boolean warnsOfDischarge() {
            return false;
        }

        /** The terminal whose voltage it watches, if it watches one. */
        default Optional<Terminal> measures() {
            return Optional.empty();
        }

        /** The part without which it can show nothing, if there is one. */
        default Optional<String> watchedPart() {
            return measures().map(Terminal::part);
        }

        /**
         * Whether only an instrument can tell it: what falls silent, a pilot notices by himself.
         */
        boolean needsInstrument();

        <T> T accept(Visitor<T> visitor);
    }

    /** One answer for each kind of sign. */
    public interface Visitor<T> {
        T visit(LowVolts low);

        T visit(HighVolts high);

        T visit(AlternatorOut out);

        T visit(LoadStops stops);

        T visit(EngineStops stops);
    }

    /**
     * The voltage of a terminal stays below a limit (V) for a time (s): against the minus of the
     * load that shows it, or against the circuit's reference for a lamp of its own.
     */
    public record LowVolts(Terminal at, double volts, double seconds) implements Sign {
        @Override
        public boolean needsInstrument() {
            return true;
        }

        @Override
        public Optional<Terminal> measures() {
            return Optional.of(at);
        }

        @Override
        public boolean warnsOfDischarge() {
            return true;
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The voltage of a terminal stays above a limit (V) for a time (s): against the minus of the
     * load that shows it, or against the circuit's reference for a lamp of its own.
     */
    public record HighVolts(Terminal at, double volts, double seconds) implements Sign {
        @Override
        public boolean needsInstrument() {
            return true;
        }

        @Override
        public Optional<Terminal> measures() {
            return Optional.of(at);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** An alternator stops delivering. */
    public record AlternatorOut(String alternator) implements Sign {
        @Override
        public Optional<String> watchedPart() {
            return Optional.of(alternator);
        }

        @Override
        public boolean needsInstrument() {
            return true;
        }

        @Override
        public boolean warnsOfDischarge() {
            return true;
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A load stops working. */
    public record LoadStops(String load) implements Sign {
        @Override
        public boolean needsInstrument() {
            return false;
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The engine stops. */
    public record EngineStops() implements Sign {
        @Override
        public boolean needsInstrument() {
            return false;
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}
