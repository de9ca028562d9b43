package stillturning.reliability.groundtest;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.reliability.groundtest.NotShown.Why;
import stillturning.story.PilotView;
import stillturning.story.Spell;
import stillturning.story.Spell.HeldCondition;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** An engine bus with two feeds, each behind a switch and a diode: worked out by hand. */
class GroundTestTest {

    private static final String STUDY =
            """
            study: Two feeds
            invented: yes
            nominal: 14 V
            zones: {panel: {across: 0.5 m, reach: seat}, tail: {across: 0.5 m, reach: none}}
            distances: [{from: panel, to: tail, length: 1 m}]
            loads:
              computer: {zone: panel, draws: 4 A, minimum: 7 V}
              radio:    {zone: panel, draws: 1.5 A, minimum: 10 V, noticed: yes}
              lights:   {zone: tail, draws: 3 A, minimum: 7 V, shed: 1}
              bilge:    {zone: tail, draws: 4 A, minimum: 7 V, duty: 10 %}
              gear:     {zone: tail, draws: 9 A, minimum: 7 V, phases: [approach]}
            engine: {needs: computer, tolerates: 1 s, restarts-in: 3 s, windmills: no}
            phases:
              - {name: taxi, lasts: 5 min, alternator: 4000 rpm}
              - {name: cruise, lasts: 60 min, alternator: 6000 rpm}
              - {name: approach, lasts: 10 min, alternator: 5000 rpm}
            failures-in: cruise
            run-up-in: taxi
            time-to-land: 20 min
            """;

    private static final String CANDIDATE =
            """
            candidate: Engine bus with two feeds
            parts:
              battery:    {is: battery, class: agm, zone: panel, capacity: CAPACITY}
              alternator: {is: alternator, class: automotive, zone: panel, rating: 30 A}
              main-bus:   {is: bus, zone: panel}
              engine-bus: {is: bus, zone: panel}
              main:       {is: switch, zone: panel}
              standby:    {is: switch, zone: panel}
              main-diode: {is: diode, class: schottky-50, zone: panel}
              standby-diode: {is: diode, class: schottky-50, zone: panel}
              ground:     {is: ground, zone: panel, on-structure: yes}
              tail-ground: {is: ground, zone: tail, on-structure: yes}
            returns: {panel: ground, tail: tail-ground}
            links:
              battery-minus:   from battery.minus to ground, wire AWG 8
              battery-lead:    from battery to main-bus, fuse 40 A
              alternator-lead: from alternator to main-bus, wire AWG 8, fuse 40 A
              alternator-case: from alternator.case to ground, wire AWG 8
              field:           from main-bus to alternator, breaker 5 A
              main-feed:       from main-bus to engine-bus, via main, via main-diode, wire AWG 14
              standby-feed:    from battery to engine-bus, fuse 15 A, via standby, via standby-diode, wire AWG 14
            feeds:
              computer: from engine-bus, breaker 7.5 A
              radio:    from main-bus, breaker 5 A
              lights:   from main-bus, breaker 5 A
              bilge:    from main-bus, breaker 7.5 A
              gear:     from main-bus, breaker 15 A
            positions: {flight: {main: on, standby: on}}
            sees: {low-voltage: {watches: low-voltage, at: main-bus.bar, below: 13 V}}
            """;

    private static Study study;
    private static Candidate candidate;
    private static GroundTest test;

    @BeforeAll
    static void made(@TempDir Path folder) throws IOException, UntoldStory {
        study = study(folder, "18 Ah");
        candidate = study.candidates().get(0);
        test = GroundTests.of(study, candidate);
    }

    private static Study study(Path folder, String capacity) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), STUDY);
        Files.writeString(
                folder.resolve("two-feeds.yaml"), CANDIDATE.replace("CAPACITY", capacity));
        ReadStudy read = StudyReader.read(folder);
        return read.study().orElseThrow(() -> new AssertionError(read.problems().toString()));
    }

    private static TestStep step(Configuration configuration, String failure) {
        return test.stages().stream()
                .filter(stage -> stage.configuration() == configuration)
                .flatMap(stage -> stage.steps().stream())
                .filter(step -> step.shows().contains(failure))
                .findFirst()
                .orElseThrow(() -> new AssertionError(failure + " is not shown: " + test));
    }

    private static TestStep atRest(String failure) {
        return step(Configuration.ENGINE_STOPPED, failure);
    }

    private static Optional<NotShown> notShown(String failure) {
        return test.notShown().stream().filter(n -> n.failure().equals(failure)).findFirst();
    }

    @Test
    void everySingleFailureIsEitherShownOrListedWithTheReason() {
        Set<String> shown = new TreeSet<>();
        test.steps().forEach(step -> shown.addAll(step.shows()));
        Set<String> listed = new TreeSet<>();
        test.notShown().forEach(n -> listed.add(n.failure()));
        Set<String> both = new HashSet<>(shown);
        both.retainAll(listed);
        assertEquals(Set.of(), both);
        shown.addAll(listed);
        Set<String> all = new TreeSet<>();
        FailureCatalogue.singlesOf(candidate).stream().map(Failure::name).forEach(all::add);
        assertEquals(all, shown);
    }

    /** Either feed alone keeps the computer running; so the step shows that it stays on. */
    @Test
    void aSwitchShowsEverythingThatOpensItsFeed() {
        TestStep main = atRest("main: stuck open");
        assertEquals(Map.of("main", "off"), main.hand().levers());
        assertTrue(
                main.shows().containsAll(List.of("main-diode: open", "main-feed-wire: open")),
                main.shows().toString());
        assertEquals(List.of("computer"), main.expected().stayOn());
        assertEquals(List.of(), main.expected().dark());
        assertTrue(main.expected().engine().needsMet());
    }

    @Test
    void pullingABreakerShowsItsWholeLineAndTheLoadAtItsEnd() {
        TestStep computer = atRest("computer: stops working");
        assertEquals(Hand.HandWay.BREAKER, computer.hand().way());
        assertEquals("computer-breaker", computer.hand().part());
        assertEquals(List.of("computer"), computer.expected().dark());
        assertFalse(computer.expected().engine().needsMet());
    }

    /** Shedding the lights is for the battery's sake; a step of their own switches them on. */
    @Test
    void whatIsOffIsSwitchedOnForItsOwnStep() {
        assertEquals(List.of("lights", "bilge"), test.stages().get(0).off());
        assertEquals(
                Optional.of("lights"), atRest("lights-breaker: opens for no reason").switchedOn());
        assertEquals(Optional.of("bilge"), atRest("bilge: stops working").switchedOn());
        assertEquals(Why.NOTHING_CHANGES, notShown("gear: stops working").orElseThrow().why());
    }

    /** The lead open under load is a load dump; the alternator's breaker shows the same end. */
    @Test
    void whatWouldDoHarmIsLeftOutWithTheHarm() {
        NotShown lead = notShown("alternator-lead-wire: open").orElseThrow();
        assertEquals(Why.HARMS, lead.why());
        assertEquals(StoryEvent.Kind.LOAD_DUMP, lead.harm().orElseThrow().kind());
        TestStep field = step(Configuration.ENGINE_RUNNING, "alternator: no output");
        assertEquals("field-breaker", field.hand().part());
        assertEquals(List.of("low-voltage"), field.expected().cues());
    }

    @Test
    void nothingIsMadeToTouchMetal() {
        assertEquals(Why.OPENS_NOTHING, notShown("main-bus: short to ground").orElseThrow().why());
        assertEquals(
                Why.OPENS_NOTHING,
                notShown("computer-breaker: does not open when it should").orElseThrow().why());
    }

    @Test
    void withTheEngineRunningOnlyLeversInReachAreMovedAndNoneStopsIt() {
        List<TestStep> running =
                test.stages().stream()
                        .filter(stage -> stage.configuration() == Configuration.ENGINE_RUNNING)
                        .flatMap(stage -> stage.steps().stream())
                        .toList();
        assertFalse(running.isEmpty());
        for (TestStep step : running) {
            assertEquals(List.of(), step.hand().apart(), step.toString());
            assertTrue(
                    step.expected().engine().heard() != PilotView.EngineSound.STOPS,
                    step.toString());
            assertFalse(step.hand().part().equals("computer-breaker"), "it would stop the engine");
        }
    }

    /**
     * The plan is gone through in its order, at a pace between the two at which it was made: each
     * step begins where the last ended, what must happen happens, every reading keeps within its
     * limits, nothing is harmed.
     */
    @Test
    void everyStepIsPlayedInThePrintedOrder() throws UntoldStory {
        for (Stage stage : test.stages()) {
            Rig rig = Rig.of(study, candidate, stage.configuration());
            List<HeldCondition> conditions = new ArrayList<>();
            conditions.add(rig.intact("begins", Optional.empty()));
            for (TestStep step : stage.steps()) {
                conditions.addAll(rig.conditions(step.hand(), step.switchedOn()));
            }
            List<Spell> spells = rig.played(conditions, 1.5);
            assertEquals(stage.showing(), spells.get(0).state().cuesShowing());
            int at = 0;
            for (TestStep step : stage.steps()) {
                Spell last = spells.get(at);
                int open = at + (step.switchedOn().isPresent() ? 2 : 1);
                holds(step, spells.get(open - 1), spells.get(open));
                at += rig.conditions(step.hand(), step.switchedOn()).size();
                assertEquals(
                        last.state().working(), spells.get(at).state().working(), step.toString());
                assertEquals(
                        last.state().cuesShowing(),
                        spells.get(at).state().cuesShowing(),
                        step.toString());
            }
            for (Spell spell : spells) {
                assertEquals(List.of(), spell.damage());
            }
        }
    }

    private static void holds(TestStep step, Spell before, Spell open) {
        for (String load : step.expected().dark()) {
            assertTrue(before.state().working().contains(load), step.toString());
            assertFalse(open.state().working().contains(load), step.toString());
        }
        assertTrue(open.state().working().containsAll(step.expected().stayOn()), step.toString());
        assertTrue(open.state().cuesShowing().containsAll(step.expected().cues()), step.toString());
        assertFalse(step.readings().isEmpty(), step.toString());
        for (InstrumentReading reading : step.readings()) {
            double value =
                    switch (reading.of()) {
                        case VOLTS -> requireNonNull(open.state().busVolts().get(reading.at()));
                        case AMPS -> requireNonNull(open.state().sourceAmps().get(reading.at()));
                        case OUT_SECONDS -> reading.predicted();
                    };
            assertTrue(reading.holds(value), step + " reads " + value + " at " + reading.at());
        }
    }

    /** A third of the capacity is not enough for all steps; each stage keeps half of it. */
    @Test
    void aSmallBatteryIsChargedOnTheWay(@TempDir Path folder) throws IOException, UntoldStory {
        Study small = study(folder, "6 Ah");
        Candidate same = small.candidates().get(0);
        GroundTest plan = GroundTests.of(small, same);
        List<Stage> atRest =
                plan.stages().stream()
                        .filter(s -> s.configuration() == Configuration.ENGINE_STOPPED)
                        .toList();
        assertTrue(atRest.size() > 1, plan.toString());
        assertTrue(atRest.stream().allMatch(Stage::charged));
        Rig rig = Rig.of(small, same, Configuration.ENGINE_STOPPED);
        for (Stage stage : atRest) {
            List<HeldCondition> conditions = new ArrayList<>();
            conditions.add(rig.intact("begins", Optional.empty()));
            stage.steps().forEach(s -> conditions.addAll(rig.conditions(s.hand(), s.switchedOn())));
            List<Spell> spells = rig.played(conditions, 2);
            double begun = requireNonNull(spells.get(0).flow().charges().get("battery"));
            double left =
                    requireNonNull(spells.get(spells.size() - 1).flow().charges().get("battery"));
            assertTrue(begun - left <= 0.5, begun + " to " + left);
        }
    }
}
