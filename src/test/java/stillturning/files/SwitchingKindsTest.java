package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.structure.Structure;

/** Candidates with relays, changeover and selector switches, and keys, as somebody writes them. */
class SwitchingKindsTest {

    private static final String STUDY =
            """
            study: Bench
            nominal: 14 V
            zones: {panel: {across: 0.4 m, reach: seat}}
            loads:
              computer: {zone: panel, draws: 2 A}
            engine: {needs: computer, tolerates: 500 ms, restarts-in: 2 s, windmills: yes}
            phases: [{name: cruise, lasts: 60 min, alternator: 6000 rpm}]
            failures-in: cruise
            time-to-land: 30 min
            """;

    private static final String SOURCES =
            """
            candidate: Two batteries
            parts:
              main: {is: battery, zone: panel}
              standby: {is: battery, zone: panel}
              bus: {is: bus, zone: panel}
              ground: {is: ground, zone: panel, on-structure: yes}
            %s
            returns: {panel: ground}
            links:
              main-minus: from main.minus to ground, wire AWG 4
              standby-minus: from standby.minus to ground, wire AWG 4
            %s
            feeds:
              computer: from bus, breaker 5 A
            """;

    private static final String NO_LEVERS = "positions: {}\n";

    @TempDir Path folder;

    /** Reads it, and asks the shape and the stories of each of its failures. */
    private Candidate answered(String part, String links, String positions)
            throws IOException, UntoldStory {
        ReadStudy read = read(part, links, positions);
        Candidate candidate = SampleStudy.one(read);
        Study study = read.study().orElseThrow();
        assertTrue(Structure.of(study.aircraft(), candidate).engineSupplied());
        Timeline timeline = new Timeline(study, candidate);
        assertTrue(timeline.normal().engineRuns());
        for (var failure : FailureCatalogue.singlesOf(candidate)) {
            timeline.tell(failure, Pilot.PLANNED);
        }
        return candidate;
    }

    private String refused(String part, String links, String positions) throws IOException {
        return SampleStudy.told(read(part, links, positions));
    }

    private ReadStudy read(String part, String links, String positions) throws IOException {
        String parts = part.strip().indent(2).stripTrailing();
        String one = SOURCES.formatted(parts, links.stripTrailing()) + positions;
        return SampleStudy.read(folder, STUDY, one);
    }

    @Test
    void aChargeRelayBetweenTwoBatteries() throws IOException, UntoldStory {
        Candidate candidate =
                answered(
                        "relay: {is: charge-relay, zone: panel, closes-at: 13.5 V}",
                        """
                          main-lead: from main to bus, fuse 60 A
                          charge: from bus to standby.plus, fuse 30 A, via relay
                          sensing: from relay.minus to ground, wire AWG 22
                        """,
                        NO_LEVERS);
        assertEquals("closes at 13.5 V", candidate.part("relay").orElseThrow().detail());
    }

    @Test
    void aChangeoverRelay() throws IOException, UntoldStory {
        answered(
                "relay: {is: changeover-relay, zone: panel}",
                """
                  main-lead: from main to relay.normally-open, fuse 20 A
                  standby-lead: from standby to relay.normally-closed, fuse 20 A
                  coil: from main to relay.coil-plus, fuse 3 A
                  coil-ground: from relay.coil-minus to ground, wire AWG 22
                  bus-lead: from relay to bus, wire AWG 10
                """,
                NO_LEVERS);
    }

    @Test
    void aChangeoverSwitch() throws IOException, UntoldStory {
        String part = "source: {is: changeover-switch, zone: panel}";
        String links =
                """
                  main-lead: from main to bus, fuse 20 A, via source.a
                  standby-lead: from standby to source.b, fuse 20 A
                """;
        Candidate candidate = answered(part, links, "positions: {flight: {source: a}}\n");
        assertEquals(Map.of("source", "a"), candidate.cockpit().flight());
        String silent = refused(part, links, NO_LEVERS);
        assertTrue(silent.contains("where the changeover switch \"source\" stands"), silent);
    }

    @Test
    void aSelectorSwitch() throws IOException, UntoldStory {
        Candidate candidate =
                answered(
                        "source: {is: selector-switch, zone: panel}",
                        """
                          main-lead: from main to source.1, wire AWG 4
                          standby-lead: from standby to source.2, wire AWG 4
                          bus-lead: from source to bus, fuse 60 A
                        """,
                        """
                        positions: {flight: {source: 1}, master-off: {source: off}}
                        sees: {lamp: {watches: low-voltage, at: bus, below: 11 V}}
                        procedures: {other: {when: [lamp], after: 10 s, moves: {source: 2}}}
                        """);
        assertEquals(
                List.of("off", "both", "2"),
                FailureCatalogue.leftSwitchesOf(candidate).stream()
                        .map(FailureCatalogue.Misplaced::position)
                        .toList());
    }

    @Test
    void aKeySwitchThatStartsAndCannotBeLeftAtStart() throws IOException, UntoldStory {
        String part =
                """
                key: {is: key-switch, zone: panel}
                starter-relay: {is: contactor, class: relay, zone: panel}
                """;
        String links =
                """
                  main-lead: from main to bus, fuse 20 A, via key
                  standby-lead: from standby to starter-relay, fuse 20 A
                  start: from key.start to starter-relay.coil-plus, wire AWG 22
                  start-ground: from starter-relay.coil-minus to ground, wire AWG 22
                  engaged: from starter-relay to bus, fuse 20 A
                """;
        answered(part, links, "positions: {flight: {key: on}, starting: {key: start}}\n");
        String held = refused(part, links, "positions: {flight: {key: start}}\n");
        assertTrue(held.contains("position \"start\""), held);
    }
}
