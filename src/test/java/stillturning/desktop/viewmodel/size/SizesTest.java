package stillturning.desktop.viewmodel.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.finding.PartPlace;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Table;
import stillturning.sizing.result.Rule.Gravity;
import stillturning.yaml.YamlDocument;

class SizesTest {

    private static final String CANDIDATE = "bus-and-battery";

    @TempDir private Path folder;
    @TempDir private Path out;
    private final List<PartPlace> read = new ArrayList<>();
    private OpenDesk open;
    private Sizes sizes;

    @BeforeEach
    void open() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        open.desk().open(CANDIDATE);
        sizes = new Sizes(open.desk(), read::add);
    }

    /** Gives the alternator's lead a wire that its fuse does not suit. */
    private void thinned() {
        String thin = text().replace("wire AWG 8, fuse 40 A", "wire AWG 12, fuse 40 A");
        try {
            open.desk().make(Change.typing(CANDIDATE + ".yaml", thin));
        } catch (ChangeRefused e) {
            throw new AssertionError(e);
        }
        open.until(() -> !open.desk().work().busy("Reading the study"));
    }

    private void sized() {
        sizes.look(true);
        open.until(() -> sizes.report().get().isPresent() && !sizes.working().get());
    }

    @Test
    void nothingIsSizedBeforeSomebodyLooks() {
        assertFalse(sizes.working().get());
        assertTrue(sizes.report().get().isEmpty());
    }

    @Test
    void findingsStandGravestFirstAndTablesHoldSomething() {
        thinned();
        sized();

        assertEquals(Gravity.WRONG, sizes.findings().get(0).gravity());
        assertTrue(sizes.headline().get().contains("broken"), sizes.headline().get());
        assertEquals(sizes.report().get().orElseThrow().findings().size(), sizes.findings().size());
        List<Gravity> gravities = sizes.findings().stream().map(FindingRow::gravity).toList();
        assertEquals(gravities.stream().sorted().toList(), gravities);
        assertTrue(sizes.tables().stream().noneMatch(t -> t.rows().isEmpty()));
        assertFalse(sizes.stale());
    }

    @Test
    void aFindingLeadsToItsPartAndToItsPlaceInTheFile() {
        thinned();
        sized();
        FindingRow row =
                sizes.findings().stream()
                        .filter(f -> f.part().isPresent() && f.place().isPresent())
                        .findFirst()
                        .orElseThrow();

        sizes.draw(row);
        sizes.read(row);

        assertEquals(
                List.of(Destination.of(AreaName.DRAW, CANDIDATE, row.part().orElseThrow())),
                open.visited());
        assertEquals(List.of(row.place().orElseThrow()), read);
        assertEquals(CANDIDATE + ".yaml", read.get(0).file().getFileName().toString());
    }

    @Test
    void anotherCandidateIsSizedWhileOneLooks() {
        sized();
        open.desk().open("one-bus");
        open.until(
                () ->
                        sizes.report()
                                .get()
                                .filter(r -> r.candidate().id().equals("one-bus"))
                                .isPresent());

        assertFalse(sizes.stale());
    }

    @Test
    void callingOffLeavesWhatWasThere() {
        sizes.look(true);
        sizes.cancel();

        assertFalse(sizes.working().get());
        assertTrue(sizes.notice().get().startsWith("Called off"));
    }

    @Test
    void tablesAreWrittenAsFilesInTheChosenUnits() throws IOException {
        open.desk().settings().set(Settings.USUAL.with(UnitSystem.US));
        sized();

        String said = sizes.export(out.resolve("tables"));

        assertTrue(said.contains("files are in"), said);
        String wires = Files.readString(out.resolve("tables").resolve("wires.csv"));
        assertTrue(wires.startsWith("candidate,wire,AWG,length (ft)"), wires);
        Table<?> weight =
                sizes.tables().stream()
                        .filter(t -> t.name().equals("weight"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("weight (lb)", weight.heads().get(2));
        double pounds = Double.parseDouble(weight.cells().get(weight.cells().size() - 1).get(2));
        double kilograms = sizes.report().get().orElseThrow().purchase().weight().kilograms();
        assertEquals(kilograms / 0.45359237, pounds, 0.0006);
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws IOException {
        sized();
        Path file = Files.writeString(out.resolve("file"), "");

        assertTrue(sizes.export(file).contains("cannot be written"));
    }

    @Test
    void aProposalIsListedTakenAsOneChangeAndUndone() {
        Proposing proposing = new Proposing(open.desk(), sizes);
        proposing.propose();
        assertTrue(proposing.words().get().contains("sized first"), proposing.words().get());
        sized();
        String before = text();

        proposing.propose();
        open.until(() -> proposing.proposal().get().isPresent());
        assertFalse(proposing.resizes().isEmpty());
        proposing.resizes().forEach(r -> assertFalse(r.from().equals(r.to()), r.toString()));
        assertEquals(Optional.empty(), proposing.apply());

        assertFalse(before.equals(text()));
        assertTrue(
                open.desk().texts().get().undo().orElse("").startsWith("Take the proposed sizes"));
        open.desk().undo();
        assertEquals(before, text());
    }

    @Test
    void whatWasProposedForAnotherTextIsRefused() throws Exception {
        sized();
        Proposing proposing = new Proposing(open.desk(), sizes);
        proposing.propose();
        open.until(() -> proposing.proposal().get().isPresent());
        open.desk().draft().make(Change.typing(CANDIDATE + ".yaml", text() + "# another line\n"));

        assertTrue(proposing.apply().orElse("").contains("propose again"));
    }

    private String text() {
        return open.desk()
                .draft()
                .document(CANDIDATE + ".yaml")
                .map(YamlDocument::text)
                .orElseThrow();
    }
}
