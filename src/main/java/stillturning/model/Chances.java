package stillturning.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate.Hit;
import stillturning.model.Zone.Hazard;

/**
 * How often things fail, and what parts share beside their joints: asked only where failures are
 * counted together, so no story depends on it.
 *
 * @param exposure for how long things can fail unseen
 * @param events how often a zone suffers from each of its hazards
 * @param sharing how often what parts share takes all of them at once
 * @param leftSwitch how often one switch is left in a wrong position before a flight
 * @param idlePilot how often a pilot who should act does not
 * @param candidates what is known of each candidate, by candidate
 */
public record Chances(
        ExposureTimes exposure,
        Map<Hazard, Rate> events,
        Map<Sharing, Rate> sharing,
        Rate leftSwitch,
        Rate idlePilot,
        Map<String, Odds> candidates) {

    /**
     * For how long things can fail unseen.
     *
     * @param flightSeconds length of a flight (s)
     * @param inspectionSeconds time flown between two inspections that find everything (s)
     */
    public record ExposureTimes(double flightSeconds, double inspectionSeconds) {
        public ExposureTimes {
            if (!(flightSeconds > 0 && inspectionSeconds >= flightSeconds)) {
                throw new IllegalArgumentException(
                        "inspections every "
                                + inspectionSeconds
                                + " s do not fit flights of "
                                + flightSeconds
                                + " s");
            }
        }
    }

    /** What a rate counts by. */
    public enum Per {
        /** A second of flight. */
        SECOND,
        /** A flight; for what happens once in a flight or not at all. */
        FLIGHT,
        /** A need; for what goes wrong or not each time that it is called for. */
        NEED
    }

    /**
     * How often something happens: a lognormal spread about its median.
     *
     * @param median half of all cases are rarer (1/s, 1/flight or 1/need)
     * @param errorFactor 95th percentile over median, at least 1; 1 for no spread
     * @param source where the figures come from
     */
    public record Rate(double median, double errorFactor, Per per, String source) {
        public Rate {
            if (!(median >= 0 && median < Double.POSITIVE_INFINITY && errorFactor >= 1)) {
                throw new IllegalArgumentException(
                        "a rate of " + median + " within a factor of " + errorFactor + " is none");
            }
        }

        /**
         * A share of it, in other words where it comes from.
         *
         * @param share 0 to 1
         */
        public Rate times(double share, String from) {
            return new Rate(median * share, errorFactor, per, from);
        }
    }

    /** One failure mode of one part. */
    public record Mode(String part, String mode) {
        /** That of a hit. */
        public static Mode of(Hit hit) {
            return new Mode(hit.part(), hit.mode().name());
        }
    }

    /**
     * The beta factor: the share of each unit's own failures that take the others along.
     *
     * @param share 0 to 1
     * @param source where the figure comes from
     */
    public record Beta(double share, String source) {
        public Beta {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("a beta factor of " + share + " is none");
            }
        }
    }

    /** What parts can share beside their joints. */
    public enum Sharing {
        /** Wires through one hole in a bulkhead: chafed or torn together. */
        HOLE,
        /** Wires tied into one bundle. */
        BUNDLE,
        /** Parts on one bracket or behind one cover. */
        MOUNT,
        /** The same program in several units. */
        FIRMWARE,
        /** Units of one make, bought and aged together. */
        ALIKE;

        /** Whether its rate is a share of the units' own, and not one of what is shared. */
        public boolean goesByBeta() {
            return this == FIRMWARE || this == ALIKE;
        }
    }

    /**
     * Parts that something takes together.
     *
     * @param name unique in the candidate
     * @param beta present exactly where the sharing goes by it
     */
    public record Shared(Sharing sharing, String name, List<String> parts, Optional<Beta> beta) {
        public Shared {
            parts = List.copyOf(parts);
            if (beta.isPresent() != sharing.goesByBeta()) {
                throw new IllegalArgumentException(
                        name + ": beta factor " + beta + " does not suit " + sharing);
            }
        }
    }

    /**
     * What is known of one candidate.
     *
     * @param rates of every failure mode of its parts, and of the lamp of each cue by the cue's
     *     name
     * @param shared what its parts share, as the builder says
     * @param routes zones that a wire passes, from its end a to its end b, both included; by wire
     */
    public record Odds(
            Map<Mode, Rate> rates, List<Shared> shared, Map<String, List<String>> routes) {

        /** Nothing is known. */
        public static final Odds UNKNOWN = new Odds(Map.of(), List.of(), Map.of());

        public Odds {
            rates = Ordered.copyOf(rates);
            shared = List.copyOf(shared);
            routes = Ordered.copyOf(routes);
        }
    }

    /** Nothing known: no rates, an hour's flights, each inspected. */
    public static final Chances NONE =
            new Chances(
                    new ExposureTimes(3600, 3600),
                    Map.of(),
                    Map.of(),
                    new Rate(0, 1, Per.FLIGHT, ""),
                    new Rate(0, 1, Per.NEED, ""),
                    Map.of());

    public Chances {
        events = Ordered.copyOf(events);
        sharing = Ordered.copyOf(sharing);
        candidates = Ordered.copyOf(candidates);
    }

    /** What is known of a candidate; nothing where nobody says. */
    public Odds odds(String candidate) {
        return candidates.getOrDefault(candidate, Odds.UNKNOWN);
    }
}
