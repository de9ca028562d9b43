package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.reliability.groundtest.Expected.Inputs;
import stillturning.story.Spell;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/** What is read off a step that was played: what must happen and what instruments must show. */
final class Observation {

    /** More readings than this nobody takes in one step. */
    private static final int MOST_READINGS = 3;

    /** Less than this an input does not feed its load (A). A guess. */
    private static final double NO_AMPS = 0.05;

    private final Study study;
    private final Candidate candidate;

    /**
     * A state that was played at the printed pace and slowly.
     *
     * @param quick at the printed pace
     */
    record Twice(Spell quick, Spell slow) {}

    Observation(Study study, Candidate candidate) {
        this.study = study;
        this.candidate = candidate;
    }

    /** Every bus and source. */
    List<InstrumentReading> all(Twice state) {
        List<InstrumentReading> all =
                new ArrayList<>(
                        readings(
                                InstrumentReading.MeasuredQuantity.VOLTS,
                                state,
                                Observation::volts));
        all.addAll(readings(InstrumentReading.MeasuredQuantity.AMPS, state, Observation::amps));
        return all;
    }

    private static Map<String, Double> volts(Spell spell) {
        return spell.state().busVolts();
    }

    private static Map<String, Double> amps(Spell spell) {
        return spell.state().sourceAmps();
    }

    private static List<InstrumentReading> readings(
            InstrumentReading.MeasuredQuantity of,
            Twice state,
            Function<Spell, Map<String, Double>> read) {
        Map<String, Double> slow = read.apply(state.slow);
        List<InstrumentReading> all = new ArrayList<>();
        read.apply(state.quick)
                .forEach(
                        (at, value) ->
                                all.add(
                                        InstrumentReading.of(
                                                of, at, value, slow.getOrDefault(at, value))));
        return all;
    }

    /** What a step changes most, and how long anything is without supply. */
    List<InstrumentReading> readings(Twice before, Twice open) {
        Map<InstrumentReading, Double> moved = new LinkedHashMap<>();
        List<InstrumentReading> then = all(before);
        List<InstrumentReading> now = all(open);
        for (InstrumentReading reading : now) {
            then.stream()
                    .filter(r -> r.of() == reading.of() && r.at().equals(reading.at()))
                    .forEach(r -> moved.put(reading, moved(r, reading)));
        }
        List<InstrumentReading> most =
                moved.entrySet().stream()
                        .sorted(Map.Entry.<InstrumentReading, Double>comparingByValue().reversed())
                        .filter(e -> e.getValue() > 1)
                        .limit(MOST_READINGS)
                        .map(Map.Entry::getKey)
                        .toList();
        List<InstrumentReading> chosen =
                new ArrayList<>(now.stream().filter(most::contains).toList());
        if (chosen.isEmpty()) {
            moved.entrySet().stream()
                    .max(Comparator.comparingDouble(Map.Entry::getValue))
                    .ifPresent(e -> chosen.add(e.getKey()));
        }
        chosen.addAll(interruptions(open));
        return chosen;
    }

    /** As a multiple of what instruments leave open. */
    private static double moved(InstrumentReading before, InstrumentReading after) {
        return Math.abs(after.predicted() - before.predicted())
                / before.of().allowance(before.predicted());
    }

    private static List<InstrumentReading> interruptions(Twice open) {
        Map<String, Double> slow = interruptions(open.slow);
        List<InstrumentReading> all = new ArrayList<>();
        interruptions(open.quick)
                .forEach(
                        (of, seconds) ->
                                all.add(
                                        InstrumentReading.of(
                                                InstrumentReading.MeasuredQuantity.OUT_SECONDS,
                                                of,
                                                seconds,
                                                slow.getOrDefault(of, seconds))));
        return all;
    }

    private static Map<String, Double> interruptions(Spell spell) {
        Map<String, Double> since = new LinkedHashMap<>();
        Map<String, Double> longest = new LinkedHashMap<>();
        for (StoryEvent event : spell.events()) {
            if (event.kind() == Kind.LOAD_STOPS || event.kind() == Kind.ENGINE_INTERRUPTED) {
                since.put(event.part(), event.seconds());
            } else if (event.kind() == Kind.LOAD_RESTARTS || event.kind() == Kind.ENGINE_RECOVERS) {
                double from = Objects.requireNonNullElse(since.get(event.part()), event.seconds());
                longest.merge(event.part(), event.seconds() - from, Math::max);
            }
        }
        return longest;
    }

    /** What must happen, by both ways in which it was played. */
    Expected expected(Twice before, Twice open) {
        Set<String> was = before.quick.state().working();
        return new Expected(
                loads(
                        load ->
                                was.contains(load.id())
                                        && !works(open.quick, load)
                                        && !works(open.slow, load)),
                study.aircraft().engine().logic().loads().stream()
                        .filter(
                                load ->
                                        open.quick.state().working().contains(load)
                                                && open.slow.state().working().contains(load))
                        .toList(),
                loads(load -> open.quick.view().onTheirOwn().contains(load.id())),
                cues(open.quick, open.slow, before.quick),
                cues(before.quick, before.slow, open.quick),
                inputs(before.quick, open.quick),
                new Expected.ExpectedEngine(
                        study.aircraft()
                                .engine()
                                .logic()
                                .runsOn(open.quick.state().working()::contains),
                        open.quick.view().engine()));
    }

    private List<String> loads(Predicate<LoadNeed> of) {
        return study.aircraft().loads().stream().filter(of).map(LoadNeed::id).toList();
    }

    private static boolean works(Spell spell, LoadNeed load) {
        return spell.state().working().contains(load.id());
    }

    /** Those of one state, however it was played, that are not in another. */
    private static List<String> cues(Spell quick, Spell slow, Spell without) {
        return quick.state().cuesShowing().stream()
                .filter(cue -> slow.state().cuesShowing().contains(cue))
                .filter(cue -> !without.state().cuesShowing().contains(cue))
                .toList();
    }

    private List<Inputs> inputs(Spell before, Spell open) {
        return candidate
                .all(Part.Role.LOAD)
                .filter(load -> load.inputs().size() > 1)
                .filter(load -> !carrying(load, before).equals(carrying(load, open)))
                .map(load -> new Inputs(load.id(), carrying(load, open)))
                .toList();
    }

    private static List<String> carrying(Part load, Spell spell) {
        return load.inputs().stream()
                .filter(
                        input ->
                                load.elements().stream()
                                        .filter(e -> e.from().equals(input))
                                        .anyMatch(
                                                e ->
                                                        Math.abs(
                                                                        spell.flow()
                                                                                .amps(
                                                                                        load.id(),
                                                                                        e.name()))
                                                                >= NO_AMPS))
                .toList();
    }
}
