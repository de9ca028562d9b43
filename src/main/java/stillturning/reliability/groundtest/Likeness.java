package stillturning.reliability.groundtest;

import java.util.Map;
import stillturning.model.Candidate;
import stillturning.parts.Part;
import stillturning.reliability.groundtest.InstrumentReading.MeasuredQuantity;
import stillturning.story.Spell;

/** Whether two states of a candidate are the same, by what can be seen and measured. */
final class Likeness {

    /** Volts and amps within which two states are the same. */
    private record Within(double volts, double amps) {}

    /** Further apart than rounding and charges that move meanwhile bring them. */
    private static final Within SAME = new Within(0.005, 0.01);

    /** Nearer than instruments of a workshop tell apart. A guess. */
    private static final Within UNMEASURED = new Within(0.05, 0.1);

    /** What minutes of charging and discharging change. A guess. */
    private static final Within BACK = new Within(0.5, Double.POSITIVE_INFINITY);

    private final Candidate candidate;

    Likeness(Candidate candidate) {
        this.candidate = candidate;
    }

    /** Whether it is the same state. */
    boolean same(Spell one, Spell other) {
        return within(SAME, one, other);
    }

    /** Whether nothing has changed that could be seen or measured. */
    boolean unchanged(Spell before, Spell after) {
        return within(UNMEASURED, before, after);
    }

    /** Whether all is as before again, but for what batteries have given and taken meanwhile. */
    boolean isBack(Spell before, Spell after) {
        return within(BACK, before, after);
    }

    /** Whether it is the same to the eye, and to a voltmeter but for what it leaves open. */
    boolean similar(Spell one, Spell other) {
        Map<String, Double> volts = other.state().busVolts();
        return looksAlike(one, other)
                && one.state().busVolts().entrySet().stream()
                        .allMatch(
                                e ->
                                        Math.abs(e.getValue() - volts.getOrDefault(e.getKey(), 0.0))
                                                <= MeasuredQuantity.VOLTS.allowance(e.getValue()));
    }

    /** Whether the same loads work and the same signs show. */
    boolean looksAlike(Spell one, Spell other) {
        return one.state().working().equals(other.state().working())
                && one.state().cuesShowing().equals(other.state().cuesShowing())
                && one.view().onTheirOwn().equals(other.view().onTheirOwn());
    }

    private boolean within(Within limits, Spell one, Spell other) {
        return looksAlike(one, other)
                && near(one.state().busVolts(), other.state().busVolts(), limits.volts)
                && near(one.state().sourceAmps(), other.state().sourceAmps(), limits.amps)
                && candidate
                        .all(Part.Role.LOAD)
                        .allMatch(load -> drawsAlike(load, one, other, limits.amps));
    }

    private static boolean drawsAlike(Part load, Spell one, Spell other, double amps) {
        return load.elements().stream()
                .allMatch(
                        e ->
                                Math.abs(
                                                one.flow().amps(load.id(), e.name())
                                                        - other.flow().amps(load.id(), e.name()))
                                        <= amps);
    }

    private static boolean near(Map<String, Double> one, Map<String, Double> other, double by) {
        return one.entrySet().stream()
                .allMatch(e -> Math.abs(e.getValue() - other.getOrDefault(e.getKey(), 0.0)) <= by);
    }
}
