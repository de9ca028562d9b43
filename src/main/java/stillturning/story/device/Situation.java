package stillturning.story.device;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import stillturning.model.Phase;
import stillturning.model.Returns;
import stillturning.model.Study.Aircraft;
import stillturning.network.NoOperatingPoint;
import stillturning.network.NodalSolver;
import stillturning.story.Setting;
import stillturning.story.Setting.Propeller;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What is true at this instant of one run, shared by its devices. */
public final class Situation {

    /** Where voltages and currents are read. */
    public NodalSolver solver;

    public final Aircraft aircraft;
    public final LeverStates levers = new LeverStates();
    public final Sheddings shed = new Sheddings();
    public final Set<String> movable = new HashSet<>();
    public final EventLog journal;
    public final Setting setting;
    public Phase phase;
    public double seconds;
    public boolean engineRuns = true;
    public boolean cranking;

    /** A motor comes up to speed, quicker than the field of an alternator can follow. */
    public boolean fieldsStand;

    /** Where levers are moved while the engine is started. */
    public final Map<String, String> starting = new HashMap<>();

    private final Map<String, String> beforeTheKey = new HashMap<>();

    /** Counts the phases that have begun since the failure. */
    public int phasesFlown;

    /** Counts what the pilot has done. */
    public int moves;

    /** Counts how often the starter has been pressed. */
    public int presses;

    /** Everything that can give way by too much current. */
    public final List<Racer> racers = new ArrayList<>();

    private final Returns returns;
    private final UnaryOperator<String> zoneOf;
    private final Map<String, Double> celsiusIn = new HashMap<>();

    /** Counts how often the laws of the branches have been laid down. */
    public int layings;

    /**
     * @param returns what voltages are told against
     * @param zoneOf zone by part
     */
    public Situation(
            NodalSolver solver,
            Returns returns,
            Aircraft aircraft,
            Phase phase,
            Setting setting,
            UnaryOperator<String> zoneOf,
            EventLog journal) {
        this.solver = solver;
        this.returns = returns;
        this.aircraft = aircraft;
        this.phase = phase;
        this.setting = setting;
        this.zoneOf = zoneOf;
        this.journal = journal;
    }

    /** Voltage between nets (V); 0 where nothing joins them, as a meter shows. */
    public double voltsBetween(int from, int to) {
        return solver.island(from) == solver.island(to) ? solver.volts(from) - solver.volts(to) : 0;
    }

    /** Voltage of a net against where its returns meet (V). */
    public double volts(int net) {
        return voltsBetween(net, returns.of(net));
    }

    public double amps(int branch) {
        return solver.amps(branch);
    }

    /** Alternator speed (revolutions per second). */
    public double revsPerSecond() {
        if (engineRuns) {
            return phase.alternatorRevsPerSecond();
        }
        return windmills() ? aircraft.engine().windmillRevsPerSecond() : 0;
    }

    /** Turns the key, or lets it go. */
    public void crank(boolean turned) {
        if (turned && !cranking) {
            starting.forEach(
                    (lever, position) -> {
                        Optional.ofNullable(levers.put(lever, position))
                                .ifPresent(before -> beforeTheKey.put(lever, before));
                    });
        } else if (!turned) {
            levers.putAll(beforeTheKey);
            beforeTheKey.clear();
        }
        cranking = turned;
    }

    /** Whether the air turns a stopped engine. */
    public boolean windmills() {
        return aircraft.engine().windmills()
                && setting.propeller() == Propeller.AS_STATED
                && !phase.engineOff();
    }

    /** Temperature around a part (°C). */
    public double celsius(String part) {
        String zone = zoneOf.apply(part);
        Double known = celsiusIn.get(zone);
        if (known == null) {
            known = aircraft.celsius(zone);
            celsiusIn.put(zone, known);
        }
        return known;
    }

    /**
     * Something gives way by too much current, while others may be about to.
     *
     * @param slowSeconds how long the slowest of its kind would take (s)
     */
    public void opens(String winner, double slowSeconds) {
        journal.write(TripRivals.wonBy(winner, slowSeconds, racers));
    }

    /**
     * The refusal to tell on.
     *
     * @param part where the currents do not add up, if it is known
     */
    public UntoldStory untold(NoOperatingPoint why, Optional<String> part) {
        String words =
                part.map(
                                p ->
                                        String.format(
                                                Locale.ROOT,
                                                "no operating point: currents at %s are off by"
                                                        + " %.3g A; check its limits and demands",
                                                p,
                                                why.residualAmps()))
                        .orElseGet(() -> String.valueOf(why.getMessage()));
        return new UntoldStory("at " + seconds + " s: " + words, why);
    }

    /** Something that the present voltages and currents lead to. */
    public void log(StoryEvent.Kind kind, String part, String words) {
        log(kind, part, words, journal.cause());
    }

    /** Something that an earlier event led to, by its index in the story. */
    public void log(StoryEvent.Kind kind, String part, String words, int ledBy) {
        journal.write(seconds, kind, part, words, ledBy);
    }
}
