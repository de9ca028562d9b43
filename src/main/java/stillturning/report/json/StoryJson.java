package stillturning.report.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Verdict;
import stillturning.report.Cautions;
import stillturning.story.Balance;
import stillturning.story.Endurance;
import stillturning.story.Pilot;
import stillturning.story.StateBar;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;

/** The shape of a verdict in JSON. */
record StoryJson(
        int schemaVersion,
        String caution,
        String failure,
        String outcome,
        String outcomePilotLate,
        String outcomePilotDoesNothing,
        @Nullable Double actBySeconds,
        @Nullable InBandJson withinTolerance,
        Losses losses,
        Told pilotAsPlanned,
        Told pilotLate,
        Told pilotDoesNothing,
        @Nullable Told propellerStands) {

    /** A residual below this differs from machine to machine. */
    private static final double ROUNDING = 1e-5;

    /** What no longer works. */
    record Losses(List<String> engineLoads, List<String> otherLoads, List<Feed> feeds) {}

    /** A source that no longer reaches an input. */
    record Feed(String source, String load, String input) {}

    /** One story. */
    record Told(
            Engine engine,
            List<Event> events,
            List<String> workingLoads,
            List<Values> traces,
            List<Doings> bars,
            Energy balance,
            @Nullable Double endSeconds) {}

    /** Where the energy came from and where it went (J), and what part of it is missing. */
    record Energy(Map<String, @Nullable Double> joules, double residual) {}

    /** What became of the engine. */
    record Engine(
            @Nullable Double enduranceSeconds,
            boolean enduranceLimited,
            boolean enduranceIsAtLeast,
            @Nullable Double longestInterruptionSeconds,
            int stops,
            boolean runningAtEnd) {}

    /** One event; the cause is the place of another in the list, counted from 0. */
    record Event(
            @Nullable Double seconds,
            String kind,
            String part,
            String words,
            @Nullable Integer cause) {}

    /** What something was doing. */
    record Doings(String name, List<Doing> spans) {}

    /** One state from a time to another. */
    record Doing(@Nullable Double fromSeconds, @Nullable Double toSeconds, String doing) {}

    /** A quantity over time. */
    record Values(
            String name,
            String unit,
            List<@Nullable Double> seconds,
            List<@Nullable Double> values) {}

    static StoryJson of(Verdict verdict) {
        return new StoryJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                verdict.failure().name(),
                JsonNumbers.kebab(verdict.outcome()),
                JsonNumbers.kebab(verdict.outcome(Pilot.LATE)),
                JsonNumbers.kebab(verdict.outcome(Pilot.NEVER)),
                verdict.actBySeconds().map(JsonNumbers::number).orElse(null),
                verdict.inBand().map(InBandJson::of).orElse(null),
                losses(verdict.losses()),
                told(verdict.planned()),
                told(verdict.late()),
                told(verdict.unaided()),
                verdict.stories().standing().map(StoryJson::told).orElse(null));
    }

    private static Losses losses(Verdict.Losses losses) {
        return new Losses(
                losses.engineLoads(),
                losses.otherLoads(),
                losses.feeds().stream()
                        .map(f -> new Feed(f.source(), f.load(), f.input()))
                        .toList());
    }

    private static Told told(Story story) {
        return new Told(
                engine(story.engine()),
                story.happenings().stream().map(StoryJson::event).toList(),
                story.aftermath().working().stream().sorted().toList(),
                story.traces().stream().map(StoryJson::values).toList(),
                story.bars().stream().map(StoryJson::doings).toList(),
                energy(story.balance()),
                JsonNumbers.number(story.endSeconds()));
    }

    private static Energy energy(Balance balance) {
        Map<String, @Nullable Double> joules = new LinkedHashMap<>();
        balance.joules()
                .forEach((account, j) -> joules.put(JsonNumbers.kebab(account), rounded(j)));
        return new Energy(joules, balance.residual() < ROUNDING ? 0 : balance.residual());
    }

    /** Thousandths of a joule are the solver's. */
    private static @Nullable Double rounded(double joules) {
        return JsonNumbers.number(Math.abs(joules) < 1e-3 ? 0 : joules);
    }

    private static Engine engine(Story.EngineFate fate) {
        return new Engine(
                JsonNumbers.seconds(fate.endurance()),
                JsonNumbers.limited(fate.endurance()),
                fate.endurance() instanceof Endurance.AtLeast,
                JsonNumbers.number(fate.longestInterruptionSeconds()),
                fate.stops(),
                fate.runningAtEnd());
    }

    private static Event event(StoryEvent happening) {
        return new Event(
                JsonNumbers.number(happening.seconds()),
                JsonNumbers.kebab(happening.kind()),
                happening.part(),
                happening.words(),
                happening.cause() < 0 ? null : Integer.valueOf(happening.cause()));
    }

    private static Doings doings(StateBar bar) {
        return new Doings(
                bar.name(),
                bar.spans().stream()
                        .map(
                                span ->
                                        new Doing(
                                                JsonNumbers.number(span.fromSeconds()),
                                                JsonNumbers.number(span.toSeconds()),
                                                JsonNumbers.kebab(span.doing())))
                        .toList());
    }

    private static Values values(Trace trace) {
        return new Values(
                trace.name(),
                trace.unit(),
                numbers(trace.points().stream().map(Trace.Point::seconds).toList()),
                numbers(trace.points().stream().map(Trace.Point::value).toList()));
    }

    private static List<@Nullable Double> numbers(List<Double> values) {
        List<@Nullable Double> numbers = new ArrayList<>();
        values.forEach(value -> numbers.add(JsonNumbers.number(value)));
        return numbers;
    }
}
