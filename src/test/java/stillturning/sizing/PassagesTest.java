package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.model.wiring.Bundles;
import stillturning.parts.Cable;
import stillturning.sizing.result.WirePassage;
import stillturning.sizing.result.WirePassage.PassageKind;
import stillturning.story.UntoldStory;

/** A computer with two feeds that share a hole, behind a firewall: worked out by hand. */
class PassagesTest {

    private static final String STUDY =
            """
            study: Two feeds
            invented: yes
            nominal: 14 V
            zones:
              panel:  {across: 0.5 m, reach: seat}
              cabin:  {across: 0.5 m}
              engine: {side: hot, hazards: [heat], across: 0.6 m, temperature: 70 degC}
            distances:
              - {from: panel, to: cabin, length: 1 m}
              - {from: cabin, to: engine, length: 1.2 m}
            loads:
              computer: {zone: engine, draws: 4 A, minimum: 7 V, inputs: [a, b]}
              radio:    {zone: panel, draws: 1.5 A, minimum: 10 V}
            engine: {needs: computer, tolerates: 1 s, restarts-in: 3 s, windmills: no}
            phases: [{name: cruise, lasts: 60 min, alternator: 6000 rpm}]
            failures-in: cruise
            time-to-land: 20 min
            """;

    private static final String CANDIDATE =
            """
            candidate: Two feeds
            parts:
              battery:    {is: battery, class: agm, zone: panel, capacity: 18 Ah}
              alternator: {is: alternator, class: automotive, zone: engine, rating: 30 A}
              main-bus:   {is: bus, zone: panel}
              ground:     {is: ground, zone: panel, on-structure: yes}
              engine-ground: {is: ground, zone: engine, on-structure: yes}
            returns: {panel: ground, engine: engine-ground}
            links:
              battery-minus:   from battery.minus to ground, wire AWG 8
              battery-lead:    from battery to main-bus, wire AWG 8
              alternator-lead: from alternator to main-bus, wire AWG 8, fuse 40 A
              alternator-case: from alternator.case to engine-ground, wire AWG 8
              field:           from main-bus to alternator, breaker 5 A
            feeds:
              computer.a: from main-bus, breaker 7.5 A, wire AWG 18
              computer.b: from battery, fuse 10 A, wire AWG 18
              radio:      from main-bus, breaker 5 A
            positions: {flight: {}}
            shares:
              - {hole: bulkhead, parts: [computer.a, computer.b]}
              - {bundle: panel-loom, parts: [battery-lead, radio]}
            """;

    private static List<WirePassage> passages;

    @BeforeAll
    static void sized(@TempDir Path folder) throws IOException, UntoldStory {
        Files.writeString(folder.resolve("study.yaml"), STUDY);
        Files.writeString(folder.resolve("two-feeds.yaml"), CANDIDATE);
        ReadStudy read = StudyReader.read(folder);
        Study study =
                read.study().orElseThrow(() -> new AssertionError(read.problems().toString()));
        passages =
                Sizing.of(study, study.candidates().get(0), read.sizes().installation())
                        .wires()
                        .passages();
    }

    private static WirePassage passage(PassageKind kind, String name) {
        return passages.stream()
                .filter(p -> p.kind() == kind && p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not among " + passages));
    }

    /**
     * Neither feed alone ends the engine; both together do, at once. Their common return, which
     * ends it alone, is no matter of the hole.
     */
    @Test
    void bothFeedsOfTheEngineMustNotShareAHole() {
        WirePassage hole = passage(PassageKind.HOLE, "bulkhead");
        assertEquals(
                List.of("computer-a-wire", "computer-b-wire", "computer-return"), hole.wires());
        assertEquals(List.of("computer-a-wire", "computer-b-wire"), hole.company().apart());
        assertTrue(hole.company().engine().orElseThrow() < 5, hole.toString());
        double wire = Cable.awg("18").orElseThrow().outsideMetres();
        assertEquals(10 * wire, hole.tied().bendMetres(), 0.1 * wire);
        assertEquals(Bundles.holeMetres(hole.tied().metres()), hole.tied().holeMetres(), 1e-9);
    }

    @Test
    void anUnprotectedLeadIsToldInABundle() {
        WirePassage loom = passage(PassageKind.BUNDLE, "panel-loom");
        assertEquals(List.of("battery-lead-wire"), loom.company().unguarded());
        assertEquals(Optional.empty(), loom.company().engine());
    }

    /** Wires to the engine go by the cabin, so they cross twice; only there is the firewall. */
    @Test
    void crossingsFollowTheShortestWayAndKnowTheFirewall() {
        WirePassage inside = passage(PassageKind.CROSSING, "panel - cabin");
        WirePassage firewall = passage(PassageKind.CROSSING, "cabin - engine");
        assertEquals(inside.wires(), firewall.wires());
        assertTrue(firewall.wires().contains("alternator-lead-wire"), firewall.toString());
        assertFalse(firewall.wires().contains("radio-wire"));
        assertFalse(inside.surroundings().firewall());
        assertTrue(firewall.surroundings().firewall());
        assertTrue(firewall.surroundings().hot());
        assertEquals(70, firewall.surroundings().celsius());
        assertEquals(List.of("computer-a-wire", "computer-b-wire"), firewall.company().apart());
    }

    @Test
    void aBundleIsNeverThinnerThanItsWires() {
        for (WirePassage passage : passages) {
            assertTrue(passage.tied().metres() >= passage.tied().thickestMetres());
            assertTrue(passage.tied().bareHoleMetres() > passage.tied().metres());
        }
    }
}
