package stillturning.model;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Tolerance;

/**
 * A load of the aircraft, the same in every candidate.
 *
 * @param inputs names of its supply inputs; none for what is self-powered: a part of its name in
 *     each candidate stands for it
 * @param use when it runs
 * @param shedOrder rank in which a pilot may switch it off, lowest first; empty if never
 */
public record LoadNeed(
        String id,
        String label,
        String zone,
        Demand demand,
        Tolerance tolerance,
        List<String> inputs,
        Use use,
        OptionalInt shedOrder) {

    /**
     * Phases in which it runs, for what share of the time, and whether one notices.
     *
     * @param duty 0 to 1; an intermittent load counts with its average
     * @param noticed whether a pilot notices without any lamp that it has stopped
     * @param inrush what it draws when it is switched on
     */
    public record Use(Set<String> phases, double duty, boolean noticed, Inrush inrush) {
        /** Of a load that stops without anybody noticing, and draws no more when switched on. */
        public Use(Set<String> phases, double duty) {
            this(phases, duty, false, Inrush.NONE);
        }

        public Use {
            phases = Set.copyOf(phases);
            if (!(duty > 0 && duty <= 1)) {
                throw new IllegalArgumentException(
                        "load: duty " + duty + " is not above 0 and at most 1");
            }
        }

        /** Whether it is switched on now and then, in flight too. */
        public boolean nowAndThen() {
            return duty < 1;
        }

        /** The same load running all the time. */
        public Use always() {
            return new Use(phases, 1, noticed, inrush);
        }
    }

    /**
     * What a load draws when it is switched on.
     *
     * @param amps at its nominal voltage (A); 0 if no more than it draws for long
     * @param seconds how long that lasts (s)
     */
    public record Inrush(double amps, double seconds) {
        /** How long a load is switched on of which nobody says more (s). A guess. */
        public static final double USUAL_SECONDS = 0.1;

        /** No more than it draws for long. */
        public static final Inrush NONE = new Inrush(0, USUAL_SECONDS);
    }

    public LoadNeed {
        inputs = List.copyOf(inputs);
    }

    /** The same load used otherwise. */
    public LoadNeed with(Use other) {
        return new LoadNeed(id, label, zone, demand, tolerance, inputs, other, shedOrder);
    }

    /** Whether it works without any supply. */
    public boolean selfPowered() {
        return inputs.isEmpty();
    }

    /** Whether a pilot notices without any lamp that it has stopped. */
    public boolean noticed() {
        return use.noticed;
    }

    /** Average current (A) at its nominal voltage in a phase. */
    public double averageAmps(String phase) {
        return use.phases.contains(phase) ? demand.amps() * use.duty : 0;
    }
}
