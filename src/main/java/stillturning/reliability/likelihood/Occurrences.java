package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stillturning.model.Chances;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;
import stillturning.reliability.chance.Chance;
import stillturning.reliability.chance.Exposure;
import stillturning.reliability.chance.Lognormal;
import stillturning.reliability.chance.Occurrence;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.reliability.runup.Card;

/** How often each event happens. */
final class Occurrences {

    private final CombinedResult joint;
    private final Chances chances;
    private final Odds odds;
    private final LatentEvents hidden;
    private final BetaFactors betas;
    private final List<Rate> rates = new ArrayList<>();
    private final List<Integer> sources = new ArrayList<>();

    /** What is known of a kind of thing; who has the same figures in the same words has it too. */
    private record Known(String kind, Rate rate) {}

    /**
     * @param counted events that are in a set; each source is called by the first of those, if it
     *     has one
     * @throws IllegalArgumentException if the rate of an event is not known
     */
    Occurrences(CombinedResult joint, Card card, Chances chances, Set<Integer> counted) {
        this.joint = joint;
        this.chances = chances;
        odds = chances.odds(joint.candidate().id());
        joint.events().forEach(event -> rates.add(rate(event)));
        Singles singles = new Singles(joint.events());
        hidden = new LatentEvents(joint, singles, card);
        betas = new BetaFactors(joint.events(), singles, rates);
        Map<Known, Integer> first = new HashMap<>();
        IntStream.range(0, rates.size())
                .filter(counted::contains)
                .forEach(event -> first.putIfAbsent(known(event), event));
        for (int event = 0; event < rates.size(); event++) {
            first.putIfAbsent(known(event), event);
            sources.add(first.get(known(event)));
        }
    }

    /** The run-up card gone through before every flight. */
    Exposure checked() {
        return exposure(true);
    }

    /** What nobody sees is found by inspections alone. */
    Exposure unchecked() {
        return exposure(false);
    }

    private Exposure exposure(boolean checked) {
        return new Exposure(
                chances.exposure().flightSeconds(),
                IntStream.range(0, rates.size())
                        .mapToObj(event -> occurrence(event, hidden.stays(event, checked)))
                        .toList(),
                sources);
    }

    private Occurrence occurrence(int event, boolean stays) {
        Rate rate = rates.get(event);
        Lognormal spread = new Lognormal(rate.median(), rate.errorFactor());
        return Chance.split(
                        stays ? staying(spread, rate.per()) : passing(spread, rate.per()),
                        betas.takenFrom(event))
                .own();
    }

    private static Occurrence passing(Lognormal spread, Per per) {
        return per == Per.SECOND ? new Occurrence.Active(spread) : new Occurrence.PerFlight(spread);
    }

    /** What counts by the flight grows with the time flown once it stays. */
    private Occurrence staying(Lognormal spread, Per per) {
        double seconds = per == Per.SECOND ? 1 : chances.exposure().flightSeconds();
        return new Occurrence.LatentOccurrence(
                spread.times(1 / seconds), chances.exposure().inspectionSeconds());
    }

    /** Whether units leave a share of their rates to a common cause. */
    boolean shared() {
        return betas.any();
    }

    /** Whether an event stays until an inspection finds it, if no run-up does. */
    boolean latent(int event) {
        return hidden.stays(event, false);
    }

    private Rate rate(Event event) {
        return switch (event.kind()) {
            case FAILURE -> odds(Mode.of(event.failure().hits().get(0)));
            case DEAD_LAMP -> odds(new Mode(event.deadLamp().orElseThrow(), Failure.DEAD_LAMP));
            case CAUSE ->
                    event.cause()
                            .flatMap(Cause::rate)
                            .orElseThrow(() -> unknown("common cause " + event.name()));
            case LEFT_SWITCH, NEEDLESS_DRILL -> chances.leftSwitch();
            case IDLE_PILOT -> chances.idlePilot();
        };
    }

    private Rate odds(Mode mode) {
        return Optional.ofNullable(odds.rates().get(mode))
                .orElseThrow(() -> unknown(mode.part() + ", failure mode " + mode.mode()));
    }

    private IllegalArgumentException unknown(String what) {
        return new IllegalArgumentException(
                joint.candidate().id() + ": nobody says how often this happens: " + what);
    }

    /** A share of a unit's rate is known from where the unit's is. */
    private Known known(int event) {
        int by = betas.strongest(event).orElse(event);
        Event of = joint.events().get(by);
        return new Known(
                of.kind() == EventKind.FAILURE ? kindOfPart(of) : kindOf(of), rates.get(by));
    }

    private String kindOfPart(Event event) {
        String part = event.failure().hits().get(0).part();
        return joint.candidate().part(part).orElseThrow().kind().word();
    }

    /**
     * A left switch and a needless drill are one guess: how often somebody moves the wrong thing.
     */
    private static String kindOf(Event event) {
        return switch (event.kind()) {
            case FAILURE, CAUSE -> event.cause().map(cause -> cause.kind().name()).orElseThrow();
            case DEAD_LAMP -> EventKind.DEAD_LAMP.name();
            case LEFT_SWITCH, NEEDLESS_DRILL -> EventKind.LEFT_SWITCH.name();
            case IDLE_PILOT -> EventKind.IDLE_PILOT.name();
        };
    }
}
