package stillturning.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import stillturning.model.Chances.Shared;

/**
 * How wires are laid, and what parts are rated for: asked only when sizes are checked, so no story
 * depends on it.
 *
 * @param armMetres distance of each zone behind the datum (m); zones without one are left out
 * @param loads what each load is to the contacts that switch it
 * @param fits what is known of each candidate's parts, by candidate
 */
public record Installation(
        Laying laying,
        Map<String, Double> armMetres,
        Map<String, Nature> loads,
        Map<String, FittedParts> fits) {

    /** Where nobody says anything: every value here is a stated default. */
    public static final Installation USUAL =
            new Installation(new Laying(3000, 150, 8, 0.6), Map.of(), Map.of(), Map.of());

    /**
     * What holds for every wire that says nothing else.
     *
     * @param altitudeMetres highest altitude (m)
     * @param insulationCelsius what the insulation withstands continuously (°C)
     * @param bundleWires wires in a bundle, for sizes thinner than AWG 8; thicker ones lie alone
     * @param bundleLoading share of the bundle's capacity that is used, 0 to 1
     */
    public record Laying(
            double altitudeMetres,
            double insulationCelsius,
            int bundleWires,
            double bundleLoading) {
        public Laying {
            if (!(bundleWires >= 1 && bundleLoading > 0 && bundleLoading <= 1)) {
                throw new IllegalArgumentException(
                        "a bundle of "
                                + bundleWires
                                + " wires, loaded to "
                                + bundleLoading
                                + ", is none");
            }
        }
    }

    /** What a load is to the contacts that switch it, by the columns of the published table. */
    public enum Nature {
        LAMP,
        INDUCTIVE,
        RESISTIVE,
        MOTOR
    }

    /**
     * What is known of a candidate's parts.
     *
     * @param wires by part; wires about which nothing is said are left out
     * @param armMetres distance behind the datum of parts that state their own (m)
     * @param ratedAmps rating of switches and contactors (A)
     * @param interruptAmps largest current that a protector can interrupt (A)
     * @param ways where wires go
     */
    public record FittedParts(
            Map<String, Lay> wires,
            Map<String, Double> armMetres,
            Map<String, Double> ratedAmps,
            Map<String, Double> interruptAmps,
            WireRoutes ways) {
        public static final FittedParts UNKNOWN =
                new FittedParts(Map.of(), Map.of(), Map.of(), Map.of());

        /** One of which nobody says where its wires go. */
        public FittedParts(
                Map<String, Lay> wires,
                Map<String, Double> armMetres,
                Map<String, Double> ratedAmps,
                Map<String, Double> interruptAmps) {
            this(wires, armMetres, ratedAmps, interruptAmps, WireRoutes.UNKNOWN);
        }

        /** The same, with where its wires go. */
        public FittedParts going(WireRoutes other) {
            return new FittedParts(wires, armMetres, ratedAmps, interruptAmps, other);
        }

        public FittedParts {
            wires = Ordered.copyOf(wires);
            armMetres = Ordered.copyOf(armMetres);
            ratedAmps = Ordered.copyOf(ratedAmps);
            interruptAmps = Ordered.copyOf(interruptAmps);
        }
    }

    /**
     * Where wires go.
     *
     * @param zones that a wire passes, from its end a to its end b, both included; by wire
     * @param shared holes and bundles, as the builder says
     */
    public record WireRoutes(Map<String, List<String>> zones, List<Shared> shared) {
        /** Nobody says anything. */
        public static final WireRoutes UNKNOWN = new WireRoutes(Map.of(), List.of());

        public WireRoutes {
            zones = Ordered.copyOf(zones);
            shared = List.copyOf(shared);
        }
    }

    /**
     * What is said of one wire.
     *
     * @param colour in anybody's words
     * @param terminals what is crimped to its ends, in anybody's words
     * @param insulationCelsius what its insulation withstands continuously (°C)
     * @param bundleWires wires in its bundle, itself counted
     */
    public record Lay(
            Optional<String> colour,
            Optional<String> terminals,
            OptionalDouble insulationCelsius,
            OptionalInt bundleWires) {
        public static final Lay UNSAID =
                new Lay(
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalInt.empty());
    }

    public Installation {
        armMetres = Ordered.copyOf(armMetres);
        loads = Ordered.copyOf(loads);
        fits = Ordered.copyOf(fits);
    }

    /** What is known of a candidate's parts. */
    public FittedParts fit(String candidate) {
        return fits.getOrDefault(candidate, FittedParts.UNKNOWN);
    }

    /** What a load is to the contacts that switch it; inductive where nobody says. */
    public Nature nature(String load) {
        return loads.getOrDefault(load, Nature.INDUCTIVE);
    }
}
