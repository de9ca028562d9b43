package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.bench.Bench;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances;
import stillturning.model.Chances.ExposureTimes;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;
import stillturning.parts.FailureMode;
import stillturning.parts.element.Demand;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.CheckMoves;
import stillturning.reliability.runup.Latent;
import stillturning.story.PilotView;
import stillturning.story.Rehearsal;

/** Events, sets, rates and a run-up card made up by a test, without any story. */
final class HandMade {

    private static final double HOUR = 3600;

    private final Bench bench =
            new Bench().load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY);
    private final List<Event> events = new ArrayList<>();
    private final Map<Mode, Rate> rates = new LinkedHashMap<>();
    private final List<Latent> latents = new ArrayList<>();
    private final List<Check.Revealed> revealed = new ArrayList<>();
    private final List<Integer> hidden = new ArrayList<>();
    private final List<Integer> unconfirmed = new ArrayList<>();
    private ExposureTimes flown = new ExposureTimes(HOUR, 100 * HOUR);
    private Rate leftSwitch = perFlight(1e-3);

    static Rate perFlight(double probability) {
        return new Rate(probability, 1, Per.FLIGHT, "made up");
    }

    static Rate perHour(double median) {
        return perHour(median, 1, "made up");
    }

    static Rate perHour(double median, double errorFactor, String source) {
        return new Rate(median / HOUR, errorFactor, Per.SECOND, source);
    }

    /** A wire that fails in one way. */
    HandMade wire(String id, Rate rate) {
        bench.wire(id, 1, .02);
        return mode(id, "fails", rate);
    }

    /** One more way in which a part fails. */
    HandMade mode(String part, String mode, Rate rate) {
        rates.put(new Mode(part, mode), rate);
        return unknown(part, mode, false);
    }

    /** A failure mode of which nobody says how often it happens. */
    HandMade unknown(String part, String mode, boolean whateverItsSupply) {
        FailureMode plain = FailureMode.of(mode.replace(' ', '-'));
        FailureMode made = whateverItsSupply ? plain.whateverItsSupply() : plain;
        return event(Event.EventKind.FAILURE, Failure.of(new Hit(part, made)), Optional.empty());
    }

    /** The engine's one load fails by itself. */
    HandMade engineLoad(Rate rate) {
        rates.put(new Mode("engine-needs", "stops working"), rate);
        return unknown("engine-needs", "stops working", true);
    }

    /** What takes several of the events above. */
    HandMade cause(Cause.CauseKind kind, String name, Optional<Rate> rate, int... takes) {
        List<Hit> hits =
                Arrays.stream(takes)
                        .mapToObj(event -> events.get(event).failure().hits().get(0))
                        .toList();
        Failure failure = new Failure(name, hits, Map.of());
        return event(
                Event.EventKind.CAUSE,
                failure,
                Optional.of(new Cause(kind, name, failure, name, rate)));
    }

    HandMade leftSwitch(String name, Rate rate) {
        leftSwitch = rate;
        return event(Event.EventKind.LEFT_SWITCH, Failure.levers(name, Map.of()), Optional.empty());
    }

    HandMade needlessDrill(String name) {
        return event(
                Event.EventKind.NEEDLESS_DRILL, Failure.levers(name, Map.of()), Optional.empty());
    }

    HandMade idlePilot() {
        Failure nothing = Failure.levers("pilot does nothing", Map.of());
        return event(Event.EventKind.IDLE_PILOT, nothing, Optional.empty());
    }

    private HandMade event(Event.EventKind kind, Failure failure, Optional<Cause> cause) {
        events.add(new Event(kind, failure.name(), failure, cause));
        return this;
    }

    HandMade flown(double flightHours, double inspectionHours) {
        flown = new ExposureTimes(flightHours * HOUR, inspectionHours * HOUR);
        return this;
    }

    /** Nobody sees it, and no check reveals it. */
    HandMade hidden(int event, Integer... with) {
        latents.add(new Latent(event, List.of(with)));
        hidden.add(event);
        return this;
    }

    /** Nobody sees it, and the card reveals it. */
    HandMade revealed(int event, Integer... with) {
        latents.add(new Latent(event, List.of(with)));
        revealed.add(new Check.Revealed(event, List.of()));
        return this;
    }

    /** Nobody sees it, and a check alone reveals it, but not the card in its order. */
    HandMade unconfirmed(int event, Integer... with) {
        revealed(event, with);
        unconfirmed.add(event);
        return this;
    }

    Study study() {
        return bench.study();
    }

    CombinedResult joint(List<List<Integer>> sets) {
        return joint(new CutSets(2, sets, List.of(), List.of(), sets.size(), true));
    }

    CombinedResult joint(CutSets sets) {
        return new CombinedResult(bench.candidate(), events, sets, List.of(), 0);
    }

    LikelihoodResult likely(List<List<Integer>> sets) {
        return likely(joint(sets));
    }

    LikelihoodResult likely(CombinedResult joint) {
        return Likelihood.of(study(), joint, card(), chances());
    }

    private Card card() {
        PilotView sight = new PilotView(Set.of(), Set.of(), Set.of(), PilotView.EngineSound.RUNS);
        Check check =
                new Check(
                        new CheckMoves(Map.of("a", "off"), Map.of("a", "on"), 30),
                        sight,
                        sight,
                        revealed);
        List<Check> checks = Stream.of(check).filter(c -> !c.reveals().isEmpty()).toList();
        return new Card(
                latents,
                "cruise",
                new Rehearsal.MovePace(2, 30),
                List.of(),
                checks,
                true,
                new Card.Missing(hidden, unconfirmed, List.of()));
    }

    private Chances chances() {
        Odds odds = new Odds(rates, List.of(), Map.of());
        return new Chances(
                flown,
                Map.of(),
                Map.of(),
                leftSwitch,
                new Rate(1e-2, 1, Per.NEED, "made up"),
                Map.of(bench.candidate().id(), odds));
    }
}
