package stillturning.desktop.view.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.desktop.view.OnStage;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.size.FindingRow;
import stillturning.desktop.viewmodel.size.Proposing;
import stillturning.desktop.viewmodel.size.Sizes;

class SizeAreaTest {

    private static final String CANDIDATE = "bus-and-battery";

    @TempDir private Path folder;
    private final List<Destination> visited = new ArrayList<>();
    private Sizes sizes;
    private OnStage stage;

    @BeforeEach
    void show() throws IOException {
        OnStage.start();
        OpenDesk.copy("first-steps", folder);
        Path file = folder.resolve(CANDIDATE + ".yaml");
        String thin =
                Files.readString(file).replace("wire AWG 8, fuse 40 A", "wire AWG 12, fuse 40 A");
        Files.writeString(file, thin);
        Desk desk = OnStage.on(() -> OpenDesk.at(Platform::runLater, folder));
        sizes =
                OnStage.on(
                        () -> {
                            desk.open(CANDIDATE);
                            desk.guide(visited::add);
                            return new Sizes(desk, place -> {});
                        });
        stage =
                OnStage.show(
                        OnStage.on(() -> new SizeArea(desk, sizes, new Proposing(desk, sizes))));
        OnStage.until(() -> sizes.report().get().isPresent());
    }

    @AfterEach
    void close() {
        stage.close();
    }

    @Test
    void enterOnAFindingShowsItsPartInTheDrawing() {
        @SuppressWarnings("unchecked")
        ListView<FindingRow> findings = stage.find(ListView.class, "findings");
        FindingRow first =
                OnStage.on(
                        () -> {
                            findings.getSelectionModel().selectFirst();
                            return findings.getSelectionModel().getSelectedItem();
                        });

        stage.press(findings, KeyCode.ENTER);

        assertEquals(
                List.of(Destination.of(AreaName.DRAW, CANDIDATE, first.part().orElseThrow())),
                visited);
        Label headline = stage.find(Label.class, "size-headline");
        assertTrue(OnStage.on(headline::getText).contains("broken"));
    }

    @Test
    void everyTableCanBeTurnedTo() {
        ListView<?> contents = stage.find(ListView.class, "size-contents");
        int tables = OnStage.on(() -> sizes.tables().size());

        for (int i = 0; i < tables; i++) {
            int at = i;
            OnStage.on(
                    () -> {
                        contents.getSelectionModel().select(at + 2);
                        TableView<?> table = (TableView<?>) stage.scene().lookup("#size-table");
                        assertEquals(
                                sizes.tables().get(at).cells().size(), table.getItems().size());
                        return true;
                    });
        }
        assertTrue(tables > 8);
    }

    @Test
    void whileSizesAreComputedNothingIsSaidOfThem() {
        Label words = (Label) stage.find(ListView.class, "findings").getPlaceholder();
        String during =
                OnStage.on(
                        () -> {
                            sizes.size();
                            return words.getText();
                        });
        OnStage.until(() -> !sizes.working().get());

        assertTrue(during.contains("being computed"), during);
        assertEquals("No size breaks a limit.", OnStage.on(words::getText));
    }
}
