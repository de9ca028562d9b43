package stillturning.report.json;

import static stillturning.report.json.JsonTypes.EXACT;
import static stillturning.report.json.JsonTypes.TEXT;
import static stillturning.report.json.VerdictShapes.OUTCOME;

import java.util.List;
import java.util.Optional;
import stillturning.assess.verdict.Verdict;
import stillturning.assess.verdict.Verdict.Losses;
import stillturning.model.CountsFrom;
import stillturning.story.Balance;
import stillturning.story.Endurance;
import stillturning.story.FirstSign;
import stillturning.story.Pilot;
import stillturning.story.StateBar;
import stillturning.story.StateBar.StateSpan;
import stillturning.story.Story;
import stillturning.story.Story.EngineFate;
import stillturning.story.Story.Feed;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;

/** What one failure does to one candidate. */
final class StoryJson {

    /** A residual below this differs from machine to machine. */
    private static final double ROUNDING = 1e-5;

    /** Less is the solver's (J). */
    private static final double NOTHING_JOULES = 1e-3;

    private static final JsonShape<Feed> FEED =
            JsonShape.<Feed>named("feed")
                    .text("source", Feed::source)
                    .text("load", Feed::load)
                    .text("input", Feed::input);

    private static final JsonShape<Losses> LOSSES =
            JsonShape.<Losses>named("losses")
                    .texts("engineLoads", Losses::engineLoads)
                    .texts("otherLoads", Losses::otherLoads)
                    .list("feeds", FEED, Losses::feeds)
                    .says("Sources that no longer reach an input.");

    private static final JsonShape<EngineFate> ENGINE =
            JsonShape.<EngineFate>named("engine")
                    .fieldsOf(VerdictShapes.LASTING, EngineFate::endurance)
                    .flag("enduranceIsAtLeast", e -> e.endurance() instanceof Endurance.AtLeast)
                    .says("Whether it still ran when the telling stopped at that time.")
                    .maybe(
                            "firstSignSeconds",
                            JsonTypes.NUMBER,
                            e -> e.sign().map(FirstSign::seconds))
                    .says("When the pilot can first notice something (s); null for never.")
                    .maybe("firstSign", TEXT, e -> e.sign().map(FirstSign::words))
                    .says("What he can then notice.")
                    .maybe(
                            "enduranceFromFirstSignSeconds",
                            JsonTypes.NUMBER,
                            e ->
                                    Optional.of(e.lastsFrom(CountsFrom.FIRST_SIGN))
                                            .filter(s -> e.endurance().ends()))
                    .says(
                            "Time from that first sign until the engine can no longer run (s); null"
                                    + " where electricity does not end it.")
                    .number("longestInterruptionSeconds", EngineFate::longestInterruptionSeconds)
                    .says("Longest time that its needs were not met without stopping it (s).")
                    .whole("stops", EngineFate::stops)
                    .flag("runningAtEnd", EngineFate::runningAtEnd);

    private static final JsonShape<StoryEvent> EVENT =
            JsonShape.<StoryEvent>named("event")
                    .number("seconds", StoryEvent::seconds)
                    .says("Time from the failure (s).")
                    .word("kind", StoryEvent.Kind.class, StoryEvent::kind)
                    .text("part", StoryEvent::part)
                    .text("words", StoryEvent::words)
                    .maybe(
                            "cause",
                            JsonTypes.WHOLE,
                            e -> Optional.of(e.cause()).filter(place -> place >= 0))
                    .says("Place in the list, from 0, of the event that led to this one.");

    private static final JsonShape<Trace> TRACE =
            JsonShape.<Trace>named("trace")
                    .text("name", Trace::name)
                    .field("unit", TEXT.with("enum", List.of("V", "%")), Trace::unit)
                    .list(
                            "seconds",
                            JsonTypes.NUMBER,
                            t -> t.points().stream().map(Trace.TracePoint::seconds).toList())
                    .list(
                            "values",
                            JsonTypes.NUMBER,
                            t -> t.points().stream().map(Trace.TracePoint::value).toList())
                    .says("One for each time; straight in between.");

    private static final JsonShape<StateSpan> SPAN =
            JsonShape.<StateSpan>named("span")
                    .number("fromSeconds", StateSpan::fromSeconds)
                    .number("toSeconds", StateSpan::toSeconds)
                    .word("doing", StateBar.Activity.class, StateSpan::doing);

    private static final JsonShape<StateBar> BAR =
            JsonShape.<StateBar>named("bar")
                    .text("name", StateBar::name)
                    .list("spans", SPAN, StateBar::spans);

    private static final JsonShape<Balance> BALANCE =
            JsonShape.<Balance>named("balance")
                    .map(
                            "joules",
                            JsonTypes.NUMBER,
                            b ->
                                    JsonNumbers.byWord(
                                            b.joules(),
                                            j -> Math.abs(j) < NOTHING_JOULES ? 0.0 : j))
                    .says("Energy by account (J): batteries and alternators give, the others take.")
                    .field("residual", EXACT, b -> b.residual() < ROUNDING ? 0 : b.residual())
                    .says("Part of the energy that is missing; 0 below 1e-5.");

    private static final JsonShape<Story> TOLD =
            JsonShape.<Story>named("told")
                    .field("engine", ENGINE, Story::engine)
                    .list("events", EVENT, Story::happenings)
                    .says("In order of time.")
                    .texts("workingLoads", s -> s.aftermath().working().stream().sorted().toList())
                    .says("Loads that work once the quick events are over.")
                    .list("traces", TRACE, Story::traces)
                    .says("Bus voltages and battery charges.")
                    .list("bars", BAR, Story::bars)
                    .says(
                            "What the engine, first, and each load of its logic were doing, without"
                                    + " a gap.")
                    .field("balance", BALANCE, Story::balance)
                    .says("Where the energy came from and where it went.")
                    .number("endSeconds", Story::endSeconds)
                    .says("When the telling stops (s).");

    static final JsonDocument<Verdict> STORY =
            new JsonDocument<>(
                    "What one failure does to one candidate",
                    "One failure told in order of time, with a pilot who keeps to the procedures,"
                            + " with one who is late and with one who does nothing.",
                    JsonDocument.<Verdict>start()
                            .text("failure", v -> v.failure().name())
                            .field("outcome", OUTCOME, Verdict::outcome)
                            .says(
                                    "What the failure does with a pilot who keeps to the"
                                            + " procedures, worst first in the list of values.")
                            .list("remarks", VerdictShapes.REMARK, Verdict::remarks)
                            .says("What that outcome alone does not say, the gravest first.")
                            .field("outcomePilotLate", OUTCOME, v -> v.outcome(Pilot.LATE))
                            .says("The same with a pilot who takes three times as long.")
                            .field("outcomePilotDoesNothing", OUTCOME, v -> v.outcome(Pilot.NEVER))
                            .says("The same with one who does nothing.")
                            .maybe("actBySeconds", JsonTypes.NUMBER, Verdict::actBySeconds)
                            .says(
                                    "When the engine stops if the pilot does nothing (s); null"
                                            + " where it does not depend on him.")
                            .maybe(
                                    "withinTolerance",
                                    VerdictShapes.WITHIN_TOLERANCE,
                                    Verdict::inBand)
                            .says(
                                    "The worst that the tolerance of the protectors leaves open;"
                                            + " null for nothing.")
                            .field("losses", LOSSES, Verdict::losses)
                            .field("pilotAsPlanned", TOLD, Verdict::planned)
                            .says("With a pilot who keeps to the procedures.")
                            .field("pilotLate", TOLD, Verdict::late)
                            .says("With one who takes three times as long.")
                            .field("pilotDoesNothing", TOLD, Verdict::unaided)
                            .says("With one who does nothing.")
                            .maybe("propellerStands", TOLD, Verdict::standing)
                            .says(
                                    "With a pilot who keeps to the procedures, the propeller"
                                            + " standing still once the engine stops; null if it"
                                            + " does not stop."));

    private StoryJson() {}
}
