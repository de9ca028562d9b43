package stillturning.model;

import java.util.OptionalDouble;

/** A hard gate: a candidate that misses it is never ranked above one that meets all. */
public sealed interface Requirement {

    /** In a counsellor's words. */
    String inWords();

    /** The time that it sets a limit to (s). */
    default OptionalDouble limitSeconds() {
        return OptionalDouble.empty();
    }

    /** One answer for each kind of requirement. */
    interface Visitor<T> {
        T visit(NoSingleFailureStopsEngine requirement);

        T visit(RunsWithMasterOff requirement);

        T visit(EnduranceWithoutCharging requirement);

        T visit(InterruptionBelow requirement);

        T visit(RestartsInFlight requirement);

        T visit(StartsCold requirement);

        T visit(WeightAtMost requirement);
    }

    /** The answer for its kind. */
    <T> T accept(Visitor<T> visitor);

    /** No single failure ends the engine, the pilot doing as planned. */
    record NoSingleFailureStopsEngine() implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "no single failure ends the engine";
        }
    }

    /** The engine keeps running through the drill that takes all power off the airframe. */
    record RunsWithMasterOff() implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the engine stays running with the master off";
        }
    }

    /** Time that the engine runs on once nothing charges any more (s). */
    record EnduranceWithoutCharging(double seconds) implements Requirement {
        @Override
        public OptionalDouble limitSeconds() {
            return OptionalDouble.of(seconds);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the engine runs on for at least "
                    + Math.round(seconds / 60)
                    + " min after charging is lost";
        }
    }

    /** Longest interruption of what the engine needs, by a single failure (s). */
    record InterruptionBelow(double seconds) implements Requirement {
        @Override
        public OptionalDouble limitSeconds() {
            return OptionalDouble.of(seconds);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "no single failure interrupts the engine for "
                    + Math.round(seconds * 1000)
                    + " ms or more";
        }
    }

    /** What is left after any single failure starts a stopped engine again, charged but cold. */
    record RestartsInFlight() implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "after any single failure the engine can be started again in flight";
        }
    }

    /** The engine starts in the cold with tired batteries. */
    record StartsCold() implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the engine starts in the cold with tired batteries";
        }
    }

    /** Heaviest allowed electrical system (kg). */
    record WeightAtMost(double kilograms) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the electrical system weighs at most "
                    + Math.round(kilograms * 10) / 10.0
                    + " kg";
        }
    }
}
