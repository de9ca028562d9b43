package stillturning.reliability.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.story.PilotView;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;

/** An engine bus with two feeds, each behind a switch and a diode: worked out by hand. */
class RunUpTest {

    static final String STUDY =
            """
            study: Two feeds
            invented: yes
            nominal: 14 V
            zones: {panel: {across: 0.5 m, reach: seat}}
            loads:
              computer: {zone: panel, draws: 4 A, minimum: 7 V}
              radio:    {zone: panel, draws: 1.5 A, minimum: 10 V, noticed: yes}
              heater:   {zone: panel, draws: 1 A, minimum: 7 V}
            engine: {needs: computer, tolerates: 1 s, restarts-in: 3 s, windmills: no}
            phases:
              - {name: taxi, lasts: 5 min, alternator: 4000 rpm}
              - {name: cruise, lasts: 60 min, alternator: 6000 rpm}
            failures-in: cruise
            run-up-in: taxi
            time-to-land: 20 min
            """;

    static final String CANDIDATE =
            """
            candidate: Engine bus with two feeds
            parts:
              battery:    {is: battery, class: agm, zone: panel, capacity: 18 Ah}
              alternator: {is: alternator, class: automotive, zone: panel, rating: 30 A}
              main-bus:   {is: bus, zone: panel}
              engine-bus: {is: bus, zone: panel}
              main:       {is: switch, zone: panel}
              standby:    {is: switch, zone: panel}
              main-diode: {is: diode, class: schottky-50, zone: panel}
              standby-diode: {is: diode, class: schottky-50, zone: panel}
              ground:     {is: ground, zone: panel, on-structure: yes}
            returns: {panel: ground}
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
              heater:   from main-bus, breaker 5 A
            positions: {flight: {main: on, standby: on}}
            sees: {low-voltage: {watches: low-voltage, at: main-bus.bar, below: 12.5 V}}
            procedures: {look: {when: [low-voltage], after: 60 s, sheds: []}}
            """;

    private static CombinedResult joint;
    private static Card card;

    @BeforeAll
    static void made(@TempDir Path folder) throws IOException, UntoldStory {
        Files.writeString(folder.resolve("study.yaml"), STUDY);
        Files.writeString(folder.resolve("two-feeds.yaml"), CANDIDATE);
        ReadStudy read = StudyReader.read(folder);
        Study study =
                read.study().orElseThrow(() -> new AssertionError(read.problems().toString()));
        Candidate candidate = study.candidates().get(0);
        joint =
                CombinedFailures.of(
                        study,
                        candidate,
                        CombinedFailures.events(candidate, List.of()),
                        2,
                        SetSearchWatch.NOBODY);
        card = RunUp.of(study, joint);
    }

    private static String name(int event) {
        return joint.events().get(event).name();
    }

    private static Set<String> latents(boolean mattering) {
        return card.latents().stream()
                .filter(latent -> !mattering || latent.matters())
                .map(latent -> name(latent.event()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatTheOtherFeedMakesUpForIsLatent() {
        assertTrue(
                latents(true)
                        .containsAll(
                                Set.of(
                                        "standby-diode: open",
                                        "main-diode: open",
                                        "standby: stuck open",
                                        "standby-feed-fuse: opens for no reason")));
    }

    /** The lamp alone tells that nothing charges: dark in normal flight whether it works or not. */
    @Test
    void aDeadLampIsLatentAndMattersWhereItAloneWouldTell() {
        assertTrue(latents(true).contains("low-voltage: indicator dead"));
        Set<Set<String>> pairs =
                joint.sets().ofOrder(2).stream()
                        .map(p -> p.stream().map(RunUpTest::name).collect(Collectors.toSet()))
                        .collect(Collectors.toSet());
        assertTrue(pairs.contains(Set.of("low-voltage: indicator dead", "alternator: no output")));
        assertFalse(
                pairs.contains(Set.of("low-voltage: indicator dead", "radio: stops working")),
                "the radio is heard to stop");
    }

    @Test
    void whatIsMissedIsNotLatent() {
        Set<String> all = latents(false);
        assertFalse(all.contains("radio-breaker: opens for no reason"), "the radio falls silent");
        assertFalse(all.contains("alternator: no output"), "the lamp lights");
        assertFalse(all.contains("computer: stops working"), "the engine stops");
    }

    @Test
    void whatNobodyMissesButTheEngineIsLatentAndDoesNotMatter() {
        assertTrue(latents(false).contains("heater-breaker: opens for no reason"));
        assertFalse(latents(true).contains("heater-breaker: opens for no reason"));
    }

    /** A diode that blocks no longer drags the engine bus down with a shorted main bus. */
    @Test
    void aShortedDiodeMattersAndNoSwitchShowsIt() {
        assertTrue(latents(true).contains("main-diode: shorted"));
        assertTrue(
                card.hidden().stream()
                        .map(RunUpTest::name)
                        .toList()
                        .contains("main-diode: shorted"));
    }

    /**
     * Each feed is tried by taking the other one away: one check would leave one of them out. What
     * is on the battery's side of both feeds is no longer hidden: the alternator has lost what
     * steadies it.
     */
    @Test
    void twoSwitchesAreTheFewest() {
        assertEquals(
                List.of(Map.of("main", "off"), Map.of("standby", "off")),
                switched().stream().map(Check::moves).toList());
        assertTrue(card.proven());
        assertEquals(List.of(), card.unconfirmed());
        for (Check check : switched()) {
            assertEquals(PilotView.EngineSound.RUNS, check.expected().engine());
            String other = check.moves().containsKey("main") ? "standby" : "main";
            assertTrue(
                    check.reveals().stream()
                            .map(r -> name(r.event()))
                            .toList()
                            .contains(other + "-diode: open"));
            assertEquals("on", check.back().values().iterator().next());
        }
    }

    /** Checks that move a switch and pull no breaker. */
    private static List<Check> switched() {
        return card.checks().stream()
                .filter(check -> !check.moves().containsValue(Setting.PULLED))
                .toList();
    }

    /**
     * No switch of this aircraft makes its lamp light on the ground, but the field's breaker does:
     * with the field dead nothing charges, and a lamp that then stays dark is dead.
     */
    @Test
    void theFieldsBreakerTriesTheLamp() {
        List<Check> pulled = new ArrayList<>(card.checks());
        pulled.removeAll(switched());
        assertEquals(
                List.of(Map.of("field-breaker", Setting.PULLED)),
                pulled.stream().map(Check::moves).toList());
        assertEquals(Set.of("low-voltage"), pulled.get(0).expected().cues());
        assertEquals(
                List.of("low-voltage: indicator dead"),
                pulled.get(0).reveals().stream().map(r -> name(r.event())).toList());
    }

    /**
     * Whatever a check reveals is seen as the engine stopping, since nothing else watches there.
     */
    @Test
    void aCheckSaysWhatIsSeenInstead() {
        Check check =
                card.checks().stream()
                        .filter(c -> c.moves().containsKey("main"))
                        .findFirst()
                        .orElseThrow();
        Check.Revealed revealed =
                check.reveals().stream()
                        .filter(r -> name(r.event()).equals("standby-diode: open"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(
                new SeenDifference(1, SeenDifference.What.ENGINE_STOPS, ""),
                revealed.seen().get(0));
    }

    @Test
    void everythingThatMattersIsRevealedOrNamed() {
        List<Integer> named = new ArrayList<>(card.hidden());
        card.checks().forEach(c -> c.reveals().forEach(r -> named.add(r.event())));
        assertTrue(named.containsAll(card.thatMatter().stream().map(Latent::event).toList()));
    }

    /** A pair that the shape makes obvious, and one more failure of the same feed that is none. */
    @Test
    void oneFailureOfEachFeedEndsTheEngine() {
        Set<Set<String>> pairs =
                joint.sets().ofOrder(2).stream()
                        .map(p -> p.stream().map(RunUpTest::name).collect(Collectors.toSet()))
                        .collect(Collectors.toSet());
        assertTrue(pairs.contains(Set.of("main-diode: open", "standby-diode: open")));
        assertTrue(pairs.contains(Set.of("main: stuck open", "standby-feed-wire: open")));
        assertFalse(pairs.contains(Set.of("main: stuck open", "main-diode: open")));
        assertTrue(
                joint.events().stream().anyMatch(e -> e.kind() == Event.EventKind.LEFT_SWITCH),
                "a switch left off is an event as well");
        assertTrue(pairs.contains(Set.of("main-diode: open", "standby left off before flight")));
    }
}
