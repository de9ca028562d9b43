package stillturning.report.groundtest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.quantity.Formats;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.Expected;
import stillturning.reliability.groundtest.Expected.Inputs;
import stillturning.reliability.groundtest.Hand;
import stillturning.reliability.groundtest.InstrumentReading;
import stillturning.reliability.groundtest.NotShown.Why;
import stillturning.reliability.groundtest.TestStep;
import stillturning.report.Spoken;
import stillturning.story.PilotView;

/** What is done and what must happen, in words. */
final class StepWords {

    private final PlannedTest test;
    private final Spoken spoken;

    StepWords(PlannedTest test) {
        this.test = test;
        this.spoken = new Spoken(test.candidate());
    }

    /** A part, a load or a sign. */
    String of(String name) {
        return spoken.of(name);
    }

    /** A failure by its name. */
    String failure(String name) {
        return spoken.failure(name);
    }

    String all(List<String> names) {
        return names.stream().map(spoken::of).collect(Collectors.joining(", "));
    }

    /** What a hand does. */
    String act(TestStep step) {
        String act = act(step.hand());
        return step.switchedOn().map(load -> "switch " + of(load) + " on, " + act).orElse(act);
    }

    private String act(Hand hand) {
        String part = of(hand.part());
        return switch (hand.way()) {
            case LEVER, BREAKER ->
                    hand.levers().entrySet().stream()
                            .map(e -> spoken.move(e.getKey(), e.getValue()))
                            .collect(Collectors.joining(", "));
            case FUSE -> "take out " + part;
            case CONNECTOR -> "unplug " + part;
            case WIRE -> "take " + part + " off " + neighbour(hand);
            case TERMINAL ->
                    ground(hand)
                            ? "lift all lugs off " + part + ", held together"
                            : "take off what is on " + part + " " + hand.terminal();
        };
    }

    private boolean ground(Hand hand) {
        return test.candidate().has(hand.part(), Part.Role.GROUND);
    }

    /** What the end of a wire is joined to. */
    private String neighbour(Hand hand) {
        Terminal end = new Terminal(hand.part(), hand.terminal());
        Candidate candidate = test.candidate();
        Optional<Terminal> other =
                candidate.joins().stream()
                        .filter(join -> join.one().equals(end) || join.other().equals(end))
                        .map(join -> join.one().equals(end) ? join.other() : join.one())
                        .findFirst();
        return other.map(t -> of(t.part()) + " " + t.name()).orElse("its terminal");
    }

    /** What must happen. */
    String expected(Configuration configuration, Expected expected) {
        List<String> parts = new ArrayList<>();
        parts.add(
                expected.dark().isEmpty() ? "nothing goes dark" : "dark: " + all(expected.dark()));
        parts.addAll(engine(configuration, expected));
        add(parts, "on a battery of its own: ", expected.ownBattery());
        expected.inputs().stream()
                .filter(inputs -> !expected.dark().contains(inputs.load()))
                .map(this::inputs)
                .forEach(parts::add);
        add(parts, "shows: ", expected.cues());
        add(parts, "goes out: ", expected.cuesOut());
        return String.join("; ", parts);
    }

    private void add(List<String> parts, String before, List<String> names) {
        if (!names.isEmpty()) {
            parts.add(before + all(names));
        }
    }

    private String inputs(Inputs inputs) {
        return of(inputs.load())
                + " takes from "
                + (inputs.carrying().isEmpty()
                        ? "no input"
                        : "input " + String.join(" and ", inputs.carrying()));
    }

    private List<String> engine(Configuration configuration, Expected expected) {
        List<String> others =
                test.engineLoads().stream().filter(l -> !expected.dark().contains(l)).toList();
        String stays =
                others.size() == test.engineLoads().size()
                        ? "all of the engine's loads stay on"
                        : others.isEmpty()
                                ? "none of the engine's loads stays on"
                                : "the engine's other loads stay on";
        return switch (configuration) {
            case ENGINE_STOPPED ->
                    expected.engine().needsMet()
                            ? List.of(stays)
                            : List.of(stays, "in flight the engine would stop");
            case ENGINE_RUNNING -> List.of(stays, heard(expected.engine().heard()));
        };
    }

    private static String heard(PilotView.EngineSound engine) {
        return "the engine " + engine.words();
    }

    /** What an instrument must show. */
    String reading(InstrumentReading reading) {
        return switch (reading.of()) {
            case VOLTS ->
                    of(reading.at()) + " " + (reading.low() > 0 ? range(reading) : upTo(reading));
            case AMPS -> of(reading.at()) + " " + range(reading);
            case OUT_SECONDS -> of(reading.at()) + " out for " + upTo(reading);
        };
    }

    private static String range(InstrumentReading reading) {
        return least(reading) + " to " + most(reading) + " " + unit(reading.of());
    }

    private static String upTo(InstrumentReading reading) {
        return "at most " + most(reading) + " " + unit(reading.of());
    }

    static String least(InstrumentReading reading) {
        return shown(reading.of(), reading.low());
    }

    static String most(InstrumentReading reading) {
        return shown(reading.of(), reading.high());
    }

    static String shown(InstrumentReading.MeasuredQuantity of, double value) {
        String text =
                Formats.fixed(value, of == InstrumentReading.MeasuredQuantity.OUT_SECONDS ? 2 : 1);
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }

    static String unit(InstrumentReading.MeasuredQuantity of) {
        return switch (of) {
            case VOLTS -> "V";
            case AMPS -> "A";
            case OUT_SECONDS -> "s";
        };
    }

    static String configuration(Configuration configuration) {
        return switch (configuration) {
            case ENGINE_STOPPED -> "engine at rest";
            case ENGINE_RUNNING -> "engine running";
        };
    }

    /** Why failures are not shown, as the heading of a list. */
    static String why(Why why) {
        return switch (why) {
            case OPENS_NOTHING ->
                    "these do not only open something: metal would have to touch or weld, or"
                            + " something would have to wear or run away";
            case NOTHING_CHANGES ->
                    "nothing flows there while the aircraft stands so; run what hangs on it by"
                            + " itself";
            case HARMS -> "opening it would do harm";
            case LINGERS -> "put together again, not all would be as before";
            case NO_HAND -> "nothing that a hand may open then does the same";
            case UNTOLD -> "what follows cannot be computed";
        };
    }

    /** Levers as they stand in flight. */
    String levers() {
        Map<String, String> flight = test.candidate().cockpit().flight();
        return flight.entrySet().stream()
                .map(e -> spoken.move(e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
    }
}
