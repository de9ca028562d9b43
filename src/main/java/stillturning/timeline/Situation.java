package stillturning.timeline;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import stillturning.model.Phase;
import stillturning.model.Study.Aircraft;
import stillturning.network.NoOperatingPoint;
import stillturning.network.NodalSolver;

/** What is true at this instant of one run, shared by its devices. */
final class Situation {

    final NodalSolver solver;
    final Aircraft aircraft;
    final Map<String, String> levers = new HashMap<>();
    final Set<String> shed = new HashSet<>();
    final Set<String> movable = new HashSet<>();
    final Journal journal;
    Phase phase;
    double seconds;
    boolean engineRuns = true;

    /** Counts how often the laws of the branches have been laid down. */
    int layings;

    Situation(NodalSolver solver, Aircraft aircraft, Phase phase, Journal journal) {
        this.solver = solver;
        this.aircraft = aircraft;
        this.phase = phase;
        this.journal = journal;
    }

    /** Voltage between nets (V); 0 where one floats and the other does not, as a meter shows. */
    double voltsBetween(int from, int to) {
        return solver.floating(from) == solver.floating(to)
                ? solver.volts(from) - solver.volts(to)
                : 0;
    }

    /** Voltage of a net against the structure (V). */
    double volts(int net) {
        return voltsBetween(net, 0);
    }

    double amps(int branch) {
        return solver.amps(branch);
    }

    /** Alternator speed (revolutions per second). */
    double revsPerSecond() {
        if (engineRuns) {
            return phase.alternatorRevsPerSecond();
        }
        return aircraft.engine().windmills() ? aircraft.engine().windmillRevsPerSecond() : 0;
    }

    UntoldStory untold(NoOperatingPoint why) {
        return new UntoldStory("at " + seconds + " s: " + why.getMessage(), why);
    }

    /** Something that the present voltages and currents lead to. */
    void log(Happening.Kind kind, String part, String words) {
        log(kind, part, words, journal.cause());
    }

    /** Something that an earlier event led to, by its index in the story. */
    void log(Happening.Kind kind, String part, String words, int ledBy) {
        journal.write(seconds, kind, part, words, ledBy);
    }
}
