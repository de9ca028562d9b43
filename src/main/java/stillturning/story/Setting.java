package stillturning.story;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.parts.element.curve.Overcharge;
import stillturning.parts.element.curve.Tripping;

/**
 * What is supposed beside the failure itself.
 *
 * @param pilot how the pilot keeps to the procedures
 * @param shedding which loads are switched off on the way
 * @param propeller what turns a stopped engine
 * @param blocks where loads that run now and then put their running time
 * @param race where in their tolerance the protectors are
 * @param start which load that runs now and then is switched on, and when
 * @param laws what only a measurement could tell of the parts
 * @param act what the pilot does of his own accord
 */
public record Setting(
        Pilot pilot,
        Shedding shedding,
        Propeller propeller,
        Blocks blocks,
        Race race,
        MotorStart start,
        Laws laws,
        Act act) {

    /** Lever position of a breaker that a hand has pulled. */
    public static final String PULLED = "pulled";

    /**
     * Which loads are switched off on the way.
     *
     * @param asWritten whether those that the procedures and the automatics name
     * @param atOnce loads that are off from the first instant on
     */
    public record Shedding(boolean asWritten, Set<String> atOnce) {
        /** Those that the procedures and the automatics name. */
        public static final Shedding AS_WRITTEN = new Shedding(true, Set.of());

        /** None, whatever the procedures say. */
        public static final Shedding NONE = new Shedding(false, Set.of());

        public Shedding {
            atOnce = Set.copyOf(atOnce);
        }

        /** These at once, and no others, whatever the procedures say. */
        public static Shedding of(Set<String> atOnce) {
            return new Shedding(false, atOnce);
        }
    }

    /** What turns a stopped engine. */
    public enum Propeller {
        /** The air, if the study says so. */
        AS_STATED,
        /** Nothing: it stands still, and wants the starter. */
        STANDS
    }

    /**
     * Where loads that run for a share of the time put it: spread evenly, or in one block at full
     * current.
     *
     * @param fromSeconds when the block begins (s after the failure); infinite for spread evenly
     * @param ofSeconds time of which the block is a load's share (s)
     */
    public record Blocks(double fromSeconds, double ofSeconds) {
        public static final Blocks EVEN = new Blocks(Double.POSITIVE_INFINITY, 0);

        /** Whether every load draws its average all the time. */
        public boolean even() {
            return Double.isInfinite(fromSeconds);
        }
    }

    /**
     * Where in their tolerance bands the protectors are.
     *
     * @param edge where all of them are
     * @param slowest the one part that is at the slow edge all the same
     */
    public record Race(Tripping edge, Optional<String> slowest) {
        public static final Race TYPICAL = new Race(Tripping.TYPICAL, Optional.empty());

        /** One part as slow as its band allows, everybody else as fast. */
        public static Race against(String slowest) {
            return new Race(Tripping.FAST, Optional.of(slowest));
        }

        /** Where in its band a part is. */
        public Tripping edgeOf(String part) {
            return slowest.filter(part::equals).isPresent() ? Tripping.SLOW : edge;
        }
    }

    /**
     * What only a measurement could tell of the parts, and a story must suppose.
     *
     * @param overcharge by which of the known laws full batteries gas
     * @param steadying by how much the resistance behind which a battery steadies an alternator is
     *     larger than stated
     */
    public record Laws(Overcharge overcharge, double steadying) {
        public static final Laws TYPICAL = new Laws(Overcharge.TYPICAL, 1);

        /** The typical ones, but for how full batteries gas. */
        public static Laws with(Overcharge overcharge) {
            return new Laws(overcharge, 1);
        }

        /** The typical ones, but for what steadies an alternator. */
        public static Laws withSteadying(double factor) {
            return new Laws(Overcharge.TYPICAL, factor);
        }
    }

    /**
     * What the pilot does of his own accord, beside what the procedures say.
     *
     * @param moves position by lever, in the order in which a hand moves them
     * @param fromSeconds when he begins (s after the failure); infinite for never
     */
    public record Act(Map<String, String> moves, double fromSeconds) {
        public static final Act NONE = new Act(Map.of(), Double.POSITIVE_INFINITY);

        public Act {
            moves = Collections.unmodifiableMap(new LinkedHashMap<>(moves));
        }
    }

    /** Whether moving something to this position is shedding that is not done. */
    public boolean keepsOn(String position) {
        return !shedding.asWritten() && position.equals(PULLED);
    }

    /** The same with other shedding. */
    public Setting with(Shedding other) {
        return new Setting(pilot, other, propeller, blocks, race, start, laws, act);
    }

    /** The same with another propeller. */
    public Setting with(Propeller other) {
        return new Setting(pilot, shedding, other, blocks, race, start, laws, act);
    }

    /** The same with other blocks. */
    public Setting with(Blocks other) {
        return new Setting(pilot, shedding, propeller, other, race, start, laws, act);
    }

    /** The same with another race. */
    public Setting with(Race other) {
        return new Setting(pilot, shedding, propeller, blocks, other, start, laws, act);
    }

    /** The same with another load switched on, or at another moment. */
    public Setting with(MotorStart other) {
        return new Setting(pilot, shedding, propeller, blocks, race, other, laws, act);
    }

    /** The same flown by another pilot. */
    public Setting flownBy(Pilot other) {
        return new Setting(other, shedding, propeller, blocks, race, start, laws, act);
    }

    /** The same under other laws. */
    public Setting with(Laws other) {
        return new Setting(pilot, shedding, propeller, blocks, race, start, other, act);
    }

    /** The same with something else that the pilot does of his own accord. */
    public Setting with(Act other) {
        return new Setting(pilot, shedding, propeller, blocks, race, start, laws, other);
    }

    /** Whether the worst moment for a start is to be looked for. */
    public boolean looksForStarts() {
        return start instanceof MotorStart.AtWorst && blocks.even();
    }

    /** A pilot of this kind, everything else as written and typical. */
    public static Setting with(Pilot pilot) {
        return new Setting(
                pilot,
                Shedding.AS_WRITTEN,
                Propeller.AS_STATED,
                Blocks.EVEN,
                Race.TYPICAL,
                new MotorStart.AtWorst(),
                Laws.TYPICAL,
                Act.NONE);
    }
}
