package stillturning.desktop.draft;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.value.Variation;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;

class DraftTest {

    private static final String ONE_BUS = "one-bus.yaml";

    @TempDir Path folder;

    @BeforeEach
    void copyAStudy() throws IOException {
        Studies.copy("first-steps", folder);
    }

    private static Change title(String title) {
        YamlEdit edit = new YamlEdit.Set("candidate", YamlValue.text(title));
        return new Change("Call it " + title, List.of(new DraftStep.Edit(ONE_BUS, edit)));
    }

    @Test
    void anEditIsUnsavedUndoneAndRedoneByName() throws Exception {
        Draft draft = Draft.open(folder);
        String before = draft.state().texts().get(ONE_BUS);
        assertTrue(draft.state().isSaved());
        assertEquals(Optional.empty(), draft.state().undo());

        DraftState after = draft.make(title("Everything on one bar"));

        assertEquals(Set.of(ONE_BUS), after.unsaved());
        assertEquals(Optional.of("Call it Everything on one bar"), after.undo());
        assertTrue(
                requireNonNull(after.texts().get(ONE_BUS))
                        .startsWith("candidate: Everything on one bar           # everything on"));
        DraftState undone = draft.undo();
        assertEquals(before, undone.texts().get(ONE_BUS));
        assertTrue(undone.isSaved());
        assertEquals(Optional.of("Call it Everything on one bar"), undone.redo());
        assertEquals(after.texts(), draft.redo().texts());
        assertEquals(Optional.empty(), draft.state().redo());
    }

    @Test
    void theReaderSeesTheTextsAndNotTheDisk() throws Exception {
        Draft draft = Draft.open(folder);
        draft.make(title("Edited"));
        assertEquals(
                "Edited",
                draft.reader()
                        .study(Variation.NONE)
                        .study()
                        .orElseThrow()
                        .candidates()
                        .get(1)
                        .title());
        assertFalse(Files.readString(folder.resolve(ONE_BUS)).contains("Edited"));
    }

    @Test
    void aChangeIsMadeAsAWholeOrNotAtAll() throws Exception {
        Draft draft = Draft.open(folder);
        DraftState before = draft.state();
        YamlEdit nowhere = new YamlEdit.Set("parts.nothing", YamlValue.text("x"));
        Change half =
                title("Half").then(new Change("", List.of(new DraftStep.Edit(ONE_BUS, nowhere))));
        ChangeRefused refused = assertThrows(ChangeRefused.class, () -> draft.make(half));
        assertTrue(refused.why().contains("there is no such place"), refused.why());
        assertEquals(before, draft.state());
    }

    @Test
    void filesAreMadeRenamedAndDeletedAndAllOfItUndone() throws Exception {
        Draft draft = Draft.open(folder);
        DraftState before = draft.state();
        String text = requireNonNull(before.texts().get(ONE_BUS));
        draft.make(
                new Change(
                        "Shuffle",
                        List.of(
                                new DraftStep.Create("third.yaml", text),
                                new DraftStep.RenameFile(ONE_BUS, "single-bus.yaml"),
                                new DraftStep.Delete("bus-and-battery.yaml"))));
        assertEquals(
                Set.of("single-bus.yaml", "study.yaml", "third.yaml"),
                draft.state().texts().keySet());
        assertEquals(4, draft.state().unsaved().size());
        assertEquals(before.texts(), draft.undo().texts());
        draft.redo();

        assertEquals(List.of(), draft.save());

        assertEquals(text, Files.readString(folder.resolve("single-bus.yaml")));
        assertFalse(Files.exists(folder.resolve(ONE_BUS)));
        assertEquals(text, Files.readString(folder.resolve(ONE_BUS + "~")));
        assertTrue(draft.state().isSaved());
        draft.undo();
        assertEquals(List.of(), draft.save());
        assertEquals(text, Files.readString(folder.resolve(ONE_BUS)));
        assertFalse(Files.exists(folder.resolve("third.yaml")));
    }

    @Test
    void namesAndTheStudysFileAreGuarded() throws Exception {
        Draft draft = Draft.open(folder);
        for (DraftStep step :
                List.of(
                        new DraftStep.Create("Big Name.yaml", ""),
                        new DraftStep.Create("../out.yaml", ""),
                        new DraftStep.Create("no-ending", ""),
                        new DraftStep.Create(ONE_BUS, ""),
                        new DraftStep.RenameFile(ONE_BUS, "study.yaml"),
                        new DraftStep.RenameFile("study.yaml", "x.yaml"),
                        new DraftStep.Delete("study.yaml"),
                        new DraftStep.Delete("nothing.yaml"),
                        new DraftStep.Replace(ONE_BUS, "half \ud800"))) {
            assertThrows(
                    ChangeRefused.class,
                    () -> draft.make(new Change("Do it", List.of(step))),
                    step.toString());
        }
        assertTrue(draft.state().isSaved());
    }

    @Test
    void typingWithoutAPauseIsUndoneAtOnce() throws Exception {
        MovingClock clock = new MovingClock();
        try (var executor = new ByHand();
                Draft draft =
                        Draft.open(
                                folder,
                                new JournalPolicy(folder.resolve("kept"), executor, clock))) {
            String text = draft.state().texts().get(ONE_BUS);
            draft.make(Change.typing(ONE_BUS, text + "#"));
            clock.pass(Duration.ofSeconds(1));
            draft.make(Change.typing(ONE_BUS, text + "# a"));
            clock.pass(Duration.ofSeconds(3));
            draft.make(Change.typing(ONE_BUS, text + "# a note"));
            assertEquals(Optional.of("Type in " + ONE_BUS), draft.state().undo());
            assertEquals(text + "# a", draft.undo().texts().get(ONE_BUS));
            assertEquals(text, draft.undo().texts().get(ONE_BUS));
            draft.redo();
            draft.make(Change.typing(ONE_BUS, text + "# ab"));
            assertEquals(text + "# a", draft.undo().texts().get(ONE_BUS));
        }
    }

    @Test
    void whatIsTypedAndTakenOutAgainLeavesNothingToUndo() throws Exception {
        Draft draft = Draft.open(folder);
        String text = requireNonNull(draft.state().texts().get(ONE_BUS));
        draft.make(Change.typing(ONE_BUS, text + "#"));
        draft.make(Change.typing(ONE_BUS, text));
        assertEquals(Optional.empty(), draft.state().undo());
        assertTrue(draft.state().isSaved());
    }

    @Test
    void brokenYamlIsHeldAndStructuredEditsAreRefusedWithTheLine() throws Exception {
        Draft draft = Draft.open(folder);
        String text = draft.state().texts().get(ONE_BUS);
        draft.make(Change.typing(ONE_BUS, text + "broken: [\n"));
        ChangeRefused refused = assertThrows(ChangeRefused.class, () -> draft.make(title("No")));
        assertTrue(refused.why().matches(".*correct line [0-9]+ in its text.*"), refused.why());
        assertFalse(draft.reader().study(Variation.NONE).problems().isEmpty());
        assertEquals(List.of(), draft.save());
        assertTrue(Files.readString(folder.resolve(ONE_BUS)).endsWith("broken: [\n"));
    }

    @Test
    void savingWritesOnlyWhatChangedAndKeepsThePreviousVersion() throws Exception {
        Draft draft = Draft.open(folder);
        String before = draft.state().texts().get(ONE_BUS);
        draft.make(title("Saved"));
        assertEquals(List.of(), draft.save());
        assertEquals(before, Files.readString(folder.resolve(ONE_BUS + "~")));
        assertFalse(Files.exists(folder.resolve("study.yaml~")));
        assertTrue(draft.state().isSaved());
        assertFalse(draft.undo().isSaved());
        assertEquals(List.of(), draft.save());
        assertEquals(before, Files.readString(folder.resolve(ONE_BUS)));
    }

    @Test
    void listenersHearOfEachChangeUntilTheyStopListening() throws Exception {
        Draft draft = Draft.open(folder);
        List<Long> heard = new ArrayList<>();
        Runnable stop = draft.listen(state -> heard.add(state.revision()));
        draft.make(title("One"));
        draft.undo();
        stop.run();
        draft.redo();
        assertEquals(2, heard.size());
        assertTrue(heard.get(0) < heard.get(1));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsSurvive() throws Exception {
        Path file = folder.resolve(ONE_BUS);
        String windows = "\ufeff" + Files.readString(file).replace("\n", "\r\n");
        Files.writeString(file, windows);
        Draft draft = Draft.open(folder);
        draft.make(title("Marked"));
        assertEquals(List.of(), draft.save());
        assertEquals(
                windows.replace("candidate: One bus ", "candidate: Marked "),
                Files.readString(file));
    }

    @Test
    void aFileThatIsNoTextCannotBeOverwritten() throws Exception {
        Path file = folder.resolve("photo.yaml");
        byte[] bytes = {(byte) 0xff, (byte) 0xfe, 0};
        Files.write(file, bytes);
        Draft draft = Draft.open(folder);
        Change typing = Change.typing("photo.yaml", "candidate: x\n");
        ChangeRefused refused = assertThrows(ChangeRefused.class, () -> draft.make(typing));
        assertTrue(refused.why().contains("save the file as UTF-8"), refused.why());
        assertFalse(draft.reader().study(Variation.NONE).problems().isEmpty());
        assertEquals(List.of(), draft.save());
        assertEquals(3, Files.size(file));
    }

    @Test
    void anEmptyFileCanBeTypedIn() throws Exception {
        Files.writeString(folder.resolve("empty.yaml"), "");
        Draft draft = Draft.open(folder);
        draft.make(Change.typing("empty.yaml", "candidate: New\n"));
        assertEquals(List.of(), draft.save());
        assertEquals("candidate: New\n", Files.readString(folder.resolve("empty.yaml")));
    }

    @Test
    void aHugeFileIsRefusedAsATextAndLeftAlone() throws Exception {
        Path file = folder.resolve("huge.yaml");
        Files.writeString(file, "# x\n".repeat(1_100_000));
        Draft draft = Draft.open(folder);
        Change typing = Change.typing("huge.yaml", "candidate: x\n");
        ChangeRefused refused = assertThrows(ChangeRefused.class, () -> draft.make(typing));
        assertTrue(refused.why().contains("larger than 4 MB"), refused.why());
        assertEquals(4_400_000, Files.size(file));
    }

    @Test
    void whatCannotBeWrittenIsToldAndStaysUnsaved() throws Exception {
        Path inTheWay = Files.createDirectories(folder.resolve(ONE_BUS + "~"));
        Files.writeString(inTheWay.resolve("something"), "x");
        Draft draft = Draft.open(folder);
        draft.make(title("Kept"));
        assertEquals(1, draft.save().size());
        assertEquals(Set.of(ONE_BUS), draft.state().unsaved());
        assertTrue(draft.state().problems().get(0).right().contains("then save again"));

        Files.delete(inTheWay.resolve("something"));
        Files.delete(inTheWay);
        assertEquals(List.of(), draft.save());
        assertEquals(List.of(), draft.state().problems());
    }

    @Test
    void aFolderThatIsNoneIsSaidSo() {
        assertThrows(IOException.class, () -> Draft.open(folder.resolve("nowhere")));
    }
}
