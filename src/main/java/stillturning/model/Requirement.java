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

        T visit(NoSingleFailureDarkens requirement);

        T visit(NoSizeLimitBroken requirement);

        T visit(ActsAtMost requirement);

        T visit(CostAtMost requirement);

        T visit(ArmBetween requirement);

        T visit(DeparturesAtMost requirement);

        T visit(NoLatentPair requirement);
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

    /**
     * A load that no single failure of what supplies it may take away; its own failures are not
     * meant.
     */
    record NoSingleFailureDarkens(String load, String label) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "no single failure darkens the " + label;
        }
    }

    /** No wire, protector, contact or source is beyond a limit of its size. */
    record NoSizeLimitBroken() implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "no limit of a size is broken";
        }
    }

    /** Most acts that one procedure may ask of the pilot. */
    record ActsAtMost(int acts) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "no procedure asks for more than "
                    + acts
                    + (acts == 1 ? " act" : " acts")
                    + " of the pilot";
        }
    }

    /** Highest allowed price of the electrical system. */
    record CostAtMost(double price, String currency) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the electrical system costs at most " + Math.round(price) + " " + currency;
        }
    }

    /** Where the centre of gravity of the electrical parts may lie (m behind the datum). */
    record ArmBetween(double leastMetres, double mostMetres) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "the electrical parts balance between "
                    + Math.round(leastMetres * 100) / 100.0
                    + " and "
                    + Math.round(mostMetres * 100) / 100.0
                    + " m behind the datum";
        }
    }

    /** Most parts, wires and loads apart, that may be other than in the baseline. */
    record DeparturesAtMost(int departures) implements Requirement {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return "at most " + departures + " parts are other than in the baseline";
        }
    }

    /** No failure that stays unseen ends the engine with one more. */
    record NoLatentPair(Unseen unseen) implements Requirement {

        /** Where a failure has to stay unseen to count. */
        public enum Unseen {
            /** From the start of the engine to the landing, whatever a run-up shows. */
            IN_FLIGHT,
            /** There, and in every check of the run-up. */
            IN_FLIGHT_AND_RUN_UP
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }

        @Override
        public String inWords() {
            return switch (unseen) {
                case IN_FLIGHT -> "no failure unseen in flight ends the engine with one more";
                case IN_FLIGHT_AND_RUN_UP ->
                        "no failure unseen in flight and run-up ends the engine with one more";
            };
        }
    }
}
