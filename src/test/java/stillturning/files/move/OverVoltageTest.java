package stillturning.files.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.value.Variation;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.yaml.YamlDocument;

/** What takes an alternator off whose regulator runs away. */
class OverVoltageTest {

    private static final Path STUDY = Path.of("architectures", "first-steps");
    private static final String FIELD =
            "  field:           from main-bus to alternator, breaker 5 A";
    private static final String SWITCHED =
            "  field:           from main-bus to alternator, breaker 5 A, wire, via lever, wire";

    @TempDir private Path folder = Path.of("");

    /** The small study whose engine computer bears less than a runaway, with its text changed. */
    private Drawn drawn(String... changes) throws IOException, ChangeRefused {
        String study =
                Files.readString(STUDY.resolve("study.yaml"))
                        .replace(
                                "minimum: 7 V (guess),",
                                "minimum: 7 V (guess), withstand: 16.5 V,");
        String text = Files.readString(STUDY.resolve("one-bus.yaml"));
        for (int i = 0; i < changes.length; i += 2) {
            String changed = text.replace(changes[i], changes[i + 1]);
            assertNotEquals(text, changed, changes[i]);
            text = changed;
        }
        Files.writeString(folder.resolve("study.yaml"), study);
        Files.writeString(folder.resolve("one-bus.yaml"), text);
        StudyReader reader = StudyReader.open(folder);
        ReadStudy read = reader.study(Variation.NONE);
        return Drawn.of(reader, read, "one-bus");
    }

    private static List<Move> moves(Drawn drawn) {
        return Moves.of(drawn).stream()
                .filter(move -> move.kind() == MoveKind.OVER_VOLTAGE)
                .toList();
    }

    private static Move only(Drawn drawn) {
        List<Move> moves = moves(drawn);
        assertEquals(1, moves.size(), moves.toString());
        return moves.get(0);
    }

    private static List<String> written(Drawn before, Drawn after) {
        List<String> lines = new ArrayList<>(after.text().text().lines().toList());
        before.text().text().lines().forEach(lines::remove);
        return lines;
    }

    private static boolean runsOn(Drawn drawn) throws UntoldStory {
        Failure runaway =
                FailureCatalogue.singlesOf(drawn.candidate()).stream()
                        .filter(f -> f.name().equals("alternator: over-voltage"))
                        .findFirst()
                        .orElseThrow();
        Story story =
                new Timeline(drawn.study(), drawn.candidate())
                        .tell(runaway, Setting.with(Pilot.PLANNED));
        return story.engine().endurance() instanceof NotLimited
                || story.engine().endurance().seconds() > 1800;
    }

    /** A winding without current makes no field. */
    @Test
    void aWoundFieldIsTakenAway() throws Exception {
        Drawn before = drawn();
        Drawn after = only(before).on(before);
        assertEquals(
                List.of(
                        "  field-guard: {is: overvoltage-guard, zone: panel}",
                        FIELD + ", via field-guard",
                        "  field-guard-minus: from field-guard.minus to panel-ground, wire AWG 22"),
                written(before, after));
        assertEquals(List.of(false, true), List.of(runsOn(before), runsOn(after)));
        assertEquals(List.of(), moves(after));
    }

    /** Magnets stay, and what a regulator lets through that is shorted asks for no supply. */
    @Test
    void theOutputOfMagnetsIsOpened() throws Exception {
        Drawn before = drawn("class: automotive", "class: permanent-magnet");
        Move move = only(before);
        assertEquals(
                "Put a relay into the output of the alternator, held in through an over-voltage"
                        + " guard",
                move.words());
        Drawn after = move.on(before);
        assertEquals(
                List.of(
                        "  alternator-relay: {is: contactor, class: relay, zone: panel}",
                        "  field-guard: {is: overvoltage-guard, zone: panel}",
                        "  alternator-lead: from alternator to main-bus, wire AWG 8, via"
                                + " alternator-relay, fuse 40 A",
                        "  field-guard-minus: from field-guard.minus to panel-ground, wire AWG 22",
                        "  alternator-relay-coil: from main-bus to alternator-relay.coil-plus, breaker 5 A, via field-guard",
                        "  alternator-relay-coil-minus: from alternator-relay.coil-minus to"
                                + " panel-ground, wire AWG 22"),
                written(before, after));
        assertEquals(List.of(false, true), List.of(runsOn(before), runsOn(after)));
        assertEquals(List.of(), moves(after));
    }

    /**
     * A guard that only takes the regulator's supply away is not enough, but need not be another.
     */
    @Test
    void aGuardThatIsThereIsMadeUseOf() throws Exception {
        Drawn wound =
                drawn(
                        FIELD,
                        SWITCHED,
                        "positions: {flight: {}}",
                        "positions: {flight: {lever: on}}",
                        "  main-bus: ",
                        "  lever:        {is: switch, zone: panel}\n  main-bus: ");
        Drawn guarded = only(wound).on(wound);
        Drawn before =
                guarded.with(
                        YamlDocument.of(
                                guarded.text().file(),
                                guarded.text()
                                        .text()
                                        .replace("class: automotive", "class: permanent-magnet")));
        Drawn after = only(before).on(before);
        assertEquals(
                List.of(
                        "  alternator-relay: {is: contactor, class: relay, zone: panel}",
                        "  alternator-lead: from alternator to main-bus, wire AWG 8, via"
                                + " alternator-relay, fuse 40 A",
                        FIELD,
                        "  alternator-relay-coil: from main-bus to alternator-relay.coil-plus, breaker 5 A, via field-guard, wire, via lever, wire",
                        "  alternator-relay-coil-minus: from alternator-relay.coil-minus to"
                                + " panel-ground, wire AWG 22"),
                written(before, after));
        assertEquals(List.of(false, true), List.of(runsOn(before), runsOn(after)));
        assertEquals(List.of(), moves(after));
    }

    /** A relay that only the pilot lets go is given a guard. */
    @Test
    void aRelayThatIsThereIsGuarded() throws Exception {
        Drawn before =
                drawn(
                        "class: automotive",
                        "class: permanent-magnet",
                        "wire AWG 8, fuse 40 A",
                        "wire AWG 8, via relay, fuse 40 A",
                        FIELD,
                        FIELD
                                + "\n  coil: from main-bus to relay.coil-plus, breaker 2 A"
                                + "\n  coil-minus: from relay.coil-minus to panel-ground, wire AWG 22",
                        "  main-bus: ",
                        "  relay: {is: contactor, class: relay, zone: panel}\n  main-bus: ");
        Move move = only(before);
        assertEquals(
                "Put an over-voltage guard into the coil line of the contactor relay",
                move.words());
        Drawn after = move.on(before);
        assertEquals(List.of(false, true), List.of(runsOn(before), runsOn(after)));
        assertEquals(List.of(), moves(after));
    }
}
