package stillturning.story.timeline;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.source.CapacitorBank;
import stillturning.story.Balance;
import stillturning.story.Balance.Account;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Capacitor banks that keep a bus up, and what they are not. */
class CapacitorStoryTest {

    private static final double FARADS = 58;
    private static final double OHMS = 0.022;
    private static final double NO_LEAK = 1e-9;

    /** Below this a hardy load stops (V). */
    private static final double STOPS_VOLTS = 6;

    /** ... this much later (s). */
    private static final double RIDE_THROUGH = 0.02;

    private static CapacitorBank bank(double ohms, double leakAmps) {
        CapacitorBank.Rating rating = new CapacitorBank.Rating(16, FARADS);
        return new CapacitorBank(Bench.tag("bank"), rating, ohms, leakAmps);
    }

    /** A computer and a bank on a battery's bus. */
    private static Bench flying(CapacitorBank bank, DemandKind kind, double amps) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .part(bank)
                .join("bank", "plus", "bus", "bar")
                .join("bank", "minus", "ground", "stud")
                .load("computer", kind, amps, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), false);
    }

    private static double busVolts(Bench bench) throws UntoldStory {
        return requireNonNull(bench.timeline().normal().busVolts().get("bus"));
    }

    @Test
    void aResistanceEmptiesItByTheTextbookFormula() throws UntoldStory {
        Bench bench = flying(bank(OHMS, NO_LEAK), DemandKind.CONSTANT_RESISTANCE, 10);
        Story story = Telling.unaided(bench, "battery: disconnects itself");
        double load = 1.2;
        double atLoad = busVolts(bench) * load / (load + OHMS);
        // textbook: V(t) = V0 exp(-t / RC)
        double seconds = (load + OHMS) * FARADS * Math.log(atLoad / STOPS_VOLTS);
        assertEquals(
                seconds + RIDE_THROUGH,
                Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"),
                0.02);
    }

    @Test
    void aPowerEmptiesItByTheTextbookFormula() throws UntoldStory {
        Bench bench = flying(bank(1e-6, NO_LEAK), DemandKind.CONSTANT_POWER, 10);
        Story story = Telling.unaided(bench, "battery: disconnects itself");
        double volts = busVolts(bench);
        // textbook: t = C (V0^2 - V1^2) / 2 P
        double seconds = FARADS * (volts * volts - STOPS_VOLTS * STOPS_VOLTS) / (2 * 120);
        assertEquals(
                seconds + RIDE_THROUGH,
                Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"),
                0.02);
    }

    @Test
    void whatHasLostItsCapacitanceLastsAFifth() throws UntoldStory {
        Bench bench = flying(bank(1e-6, NO_LEAK), DemandKind.CONSTANT_POWER, 10);
        double whole = stops(bench, "battery: disconnects itself");
        Hit worn = bench.failure("bank: capacitance lost").hits().get(0);
        Failure both = bench.failure("battery: disconnects itself").and(Failure.of(worn));
        Story story = bench.timeline().tell(both, Pilot.NEVER);
        double left = Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer");
        assertEquals((whole - RIDE_THROUGH) / 5, left - RIDE_THROUGH, 0.02);
    }

    private static double stops(Bench bench, String failure) throws UntoldStory {
        return Telling.when(
                Telling.unaided(bench, failure), StoryEvent.Kind.LOAD_STOPS, "computer");
    }

    @Test
    void openItKeepsNothingUp() throws UntoldStory {
        Bench bench = flying(bank(OHMS, NO_LEAK), DemandKind.CONSTANT_POWER, 10);
        Hit open = bench.failure("bank: open").hits().get(0);
        Failure both = bench.failure("battery: disconnects itself").and(Failure.of(open));
        Story story = bench.timeline().tell(both, Pilot.NEVER);
        assertEquals(
                RIDE_THROUGH, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"), 1e-6);
    }

    @Test
    void shortedItTakesItsBusWithIt() throws UntoldStory {
        Bench bench = flying(bank(OHMS, NO_LEAK), DemandKind.CONSTANT_POWER, 10);
        Story story = Telling.unaided(bench, "bank: shorted");
        assertTrue(story.engine().endurance().seconds() < 1);
    }

    @Test
    void aShortEmptiesItAndTheStoryComesToItsEnd() throws UntoldStory {
        Bench bench = flying(bank(OHMS, 0.025), DemandKind.CONSTANT_POWER, 10);
        Failure lost = bench.failure("battery: disconnects itself");
        Story story =
                bench.timeline().tell(lost.and(bench.failure("bus: short to ground")), Pilot.NEVER);
        assertTrue(story.endSeconds() < 60, story.endSeconds() + " s");
    }

    /** Textbook: what is charged through resistance costs twice what it stores. */
    @Test
    void chargingLosesAsMuchAsItStores() throws UntoldStory {
        Bench bench =
                withAlternator(false)
                        .bus("other")
                        .closedSwitch("switch", "off")
                        .part(
                                new CapacitorBank(
                                        Bench.tag("empty"),
                                        new CapacitorBank.Rating(16, FARADS),
                                        1,
                                        NO_LEAK))
                        .join("bus", "bar", "switch", "in")
                        .join("switch", "out", "other", "bar")
                        .join("empty", "plus", "other", "bar")
                        .join("empty", "minus", "ground", "stud");
        Failure closed = Failure.levers("closed", Map.of("switch", "on"));
        Balance balance = bench.timeline().tell(closed, Pilot.NEVER).balance();
        double stored = -balance.joules(Account.CAPACITORS);
        assertEquals(1, balance.joules(Account.LOST_IN_CAPACITORS) / stored, 0.05);
        assertEquals(FARADS * 14.2 * 14.2 / 2, stored, 100);
    }

    @Test
    void itNeitherLengthensABatterysEnduranceNorCountsAsAFeed() throws UntoldStory {
        Bench bench = flying(bank(OHMS, 0.025), DemandKind.CONSTANT_CURRENT, 10);
        Failure nothing = Failure.levers("nothing", Map.of());
        Story rests = bench.timeline().tell(nothing, Pilot.NEVER);
        Story open = Telling.unaided(bench, "bank: open");
        double seconds = assertInstanceOf(Lasts.class, open.engine().endurance()).seconds();
        // it leaks 25 mA of 10 A, and gives 8 V of 58 F at the end: 47 s of 10 A
        assertEquals(seconds * (1 - 0.02 / 10) + 40, rests.engine().endurance().seconds(), 25);
        assertTrue(
                bench.timeline().normal().feeds().stream()
                        .noneMatch(feed -> feed.source().equals("bank")));
        assertTrue(rests.balance().residual() < 1e-6);
    }

    private static Bench withAlternator(boolean needsBattery) {
        return flying(bank(OHMS, NO_LEAK), DemandKind.CONSTANT_POWER, 10)
                .part(Shelf.alternator("alternator", 14.2, 45, needsBattery))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar");
    }

    /** A bank of this size takes up what the alternator gives too much, as a battery does. */
    @Test
    void itSteadiesAnAlternatorInPlaceOfTheBattery() throws UntoldStory {
        Story story = Telling.unaided(withAlternator(true), "battery: disconnects itself");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.SOURCE_STOPS));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_STOPS));
    }

    @Test
    void itsEnergyIsAccountedFor() throws UntoldStory {
        Bench bench = flying(bank(OHMS, 0.025), DemandKind.CONSTANT_POWER, 10);
        double volts = busVolts(bench);
        Balance balance = Telling.unaided(bench, "battery: disconnects itself").balance();
        double given = balance.joules(Account.CAPACITORS);
        assertTrue(given > 0.7 * FARADS * volts * volts / 2, given + " J");
        assertTrue(balance.joules(Account.LOST_IN_CAPACITORS) > 0);
        assertEquals(0, balance.joules(Account.BATTERIES), 1e-9);
        assertTrue(balance.residual() < 1e-6);
    }
}
