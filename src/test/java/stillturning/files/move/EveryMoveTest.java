package stillturning.files.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.files.ReadStudy;
import stillturning.files.Starter;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;

class EveryMoveTest {

    private static List<Drawn> drawn(String study) {
        StudyReader reader = StudyReader.open(Path.of("architectures", study));
        ReadStudy read = reader.study(Variation.NONE);
        return read.study().orElseThrow().candidates().stream()
                .map(Candidate::id)
                .map(id -> drawn(reader, read, id))
                .toList();
    }

    private static Drawn drawn(StudyReader reader, ReadStudy read, String id) {
        try {
            return Drawn.of(reader, read, id);
        } catch (ChangeRefused refused) {
            throw new AssertionError(id, refused);
        }
    }

    private static Drawn of(String study, String candidate) {
        return drawn(study).stream()
                .filter(d -> d.candidate().id().equals(candidate))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Its age and its charge are the builder's, whatever it is made of; so is what it is called.
     */
    @Test
    void aBatteryOfAnotherChemistryKeepsWhatIsNotOfItsChemistry() throws ChangeRefused {
        Drawn drawn = of("sandpiper", "split-batteries");
        Move lithium =
                Moves.of(drawn).stream()
                        .filter(m -> m.words().startsWith("Take a lithium battery"))
                        .filter(m -> m.words().endsWith("for the main battery"))
                        .findFirst()
                        .orElseThrow();
        String after = lithium.on(drawn).text().text();
        assertTrue(
                after.contains(
                        "{is: battery, class: lifepo4, zone: nose, capacity: 20 Ah,"
                                + " health: 85 % (guess), charge: 95 % (guess)}"),
                after);
    }

    /** Every move of the small study, and of the big one so many that each kind is among them. */
    @ParameterizedTest
    @CsvSource({"first-steps, 1", "sandpiper, 13"})
    void aMoveLeavesAFileThatReadsAndSaysSomethingElse(String study, int every) {
        List<String> refused = new ArrayList<>();
        int made = 0;
        for (Drawn drawn : drawn(study)) {
            List<Move> moves = Moves.of(drawn);
            for (int i = 0; i < moves.size(); i += every) {
                Move move = moves.get(i);
                try {
                    Drawn after = move.on(drawn);
                    assertNotEquals(drawn.text().text(), after.text().text(), move.words());
                    made++;
                } catch (ChangeRefused e) {
                    refused.add(drawn.candidate().id() + ": " + move + ": " + e.why());
                }
            }
        }
        assertTrue(made > 80, made + " moves");
        assertTrue(refused.size() * 10 < made, String.join("\n", refused));
    }

    /** The starter of a running engine is not turned: neither for good nor by an act in flight. */
    @Test
    void theStartersKeyAndContactorAreLeftAlone(@TempDir Path folder) throws Exception {
        Path study = folder.resolve("two");
        Starter.StarterAnswers any = Starter.startingPoints().values().iterator().next();
        assertEquals(List.of(), Starter.write(study, any));
        StudyReader reader = StudyReader.open(study);
        Drawn drawn = drawn(reader, reader.study(Variation.NONE), "two-engine-buses");
        List<String> words = Moves.of(drawn).stream().map(Move::words).toList();
        assertTrue(words.contains("Take the field switch out"), words.toString());
        assertTrue(words.contains("Take the main contactor out"), words.toString());
        assertTrue(words.contains("Fly with the field switch off"), words.toString());
        assertEquals(
                List.of(),
                words.stream()
                        .filter(w -> w.contains("start button") || w.endsWith("contactor out"))
                        .filter(w -> !w.equals("Take the main contactor out"))
                        .toList());
    }

    @Test
    void aSecondPathIsWrittenAsAPersonWouldAndKeepsWhatStandsThere() throws Exception {
        Drawn drawn = of("sandpiper", "one-battery-main-bus");
        String before = drawn.text().text();
        Drawn after =
                move(
                                drawn,
                                "Feed the main bus also from the battery, by a diode, with a switch"
                                        + " of its own")
                        .on(drawn);
        List<String> more = new ArrayList<>(after.text().text().lines().toList());
        before.lines().forEach(more::remove);
        assertEquals(
                List.of(
                        "  main-bus-diode: {is: diode, zone: panel}",
                        "  main-bus-switch: {is: switch, zone: panel}",
                        "  battery-to-main-bus: from battery to main-bus, fuse 80 A class"
                                + " high-current, wire, via main-bus-switch, wire, via"
                                + " main-bus-diode",
                        "  flight:     {master: on, alternator-switch: on, main-bus-switch: on}"),
                more);
        assertTrue(
                before.lines()
                        .filter(line -> !line.startsWith("  flight:"))
                        .allMatch(after.text().text()::contains));
    }

    /** What would open only after the bus has lost its feed hangs elsewhere. */
    @Test
    void noLoadIsPutBehindAProtectorThatIsSmallerThanItsOwn() {
        List<String> words =
                Moves.of(of("sandpiper", "split-batteries")).stream().map(Move::words).toList();
        assertTrue(
                words.stream().anyMatch(w -> w.contains("lights from the engine bus b")),
                String.join("\n", words));
        assertTrue(
                words.stream().noneMatch(w -> w.contains("gear pump from the engine bus b")),
                String.join("\n", words));
    }

    private static Move move(Drawn drawn, String words) {
        List<String> all = new ArrayList<>();
        for (Move move : Moves.of(drawn)) {
            all.add(move.words());
            if (move.words().equals(words)) {
                return move;
            }
        }
        throw new AssertionError(words + " is none of\n" + String.join("\n", all));
    }
}
