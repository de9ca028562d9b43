package stillturning.desktop.view.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
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
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;

class DecideAreaTest {

    @TempDir private Path folder;
    private final List<Destination> visited = new ArrayList<>();
    private Deciding deciding;
    private OfferedDrawings offers;
    private OnStage stage;

    @BeforeEach
    void show() throws IOException {
        OnStage.start();
        OpenDesk.copy("first-steps", folder);
        Path study = folder.resolve(Desk.STUDY_FILE);
        String asked = Files.readString(study);
        Files.writeString(study, asked.replace("charging: 30 min", "charging: 30 h"));
        Desk desk =
                OnStage.on(
                        () -> {
                            Desk opened = OpenDesk.at(Platform::runLater, folder);
                            opened.guide(visited::add);
                            return opened;
                        });
        offers = OnStage.on(() -> new OfferedDrawings(desk));
        deciding = OnStage.on(() -> new Deciding(desk, offers));
        stage = OnStage.show(OnStage.on(() -> new DecideArea(deciding)));
        OnStage.until(() -> !deciding.ranks().isEmpty());
    }

    @AfterEach
    void close() {
        stage.close();
    }

    @Test
    void aSliderMovedByKeyboardMovesPointsAndRanks() {
        Slider slider = stage.find(Slider.class, "weight-COST");
        double before = OnStage.on(slider::getValue);
        List<RankRow> ranked = OnStage.on(() -> List.copyOf(deciding.ranks()));

        for (int i = 0; i < 6; i++) {
            stage.press(slider, KeyCode.RIGHT);
        }

        assertEquals(before + 3, OnStage.on(slider::getValue), 1e-9);
        assertFalse(ranked.equals(OnStage.on(() -> List.copyOf(deciding.ranks()))));
        @SuppressWarnings("unchecked")
        ListView<RankRow> list = stage.find(ListView.class, "ranking");
        assertEquals(
                OnStage.on(() -> List.copyOf(deciding.ranks())),
                OnStage.on(() -> List.copyOf(list.getItems())));

        Button reset = stage.find(Button.class, "reset-weights");
        stage.press(reset, KeyCode.SPACE);

        assertEquals(before, OnStage.on(slider::getValue), 1e-9);
        assertEquals(ranked, OnStage.on(() -> List.copyOf(deciding.ranks())));
        assertTrue(OnStage.on(reset::isDisabled));
    }

    @Test
    void theTradeOffNamesEveryCandidateInsideItself() {
        TabPane tabs = stage.find(TabPane.class, "decide-tabs");
        ComboBox<?> across =
                OnStage.on(
                        () -> {
                            tabs.getSelectionModel().select(1);
                            return (ComboBox<?>) tabs.lookup("#trade-across");
                        });
        assertTrue(across.isFocusTraversable());
        OnStage.until(() -> !tabs.lookupAll(".trade-name").isEmpty());

        OnStage.on(
                () -> {
                    tabs.applyCss();
                    tabs.layout();
                    Node picture = tabs.lookup("#trade-off");
                    Set<Node> names = picture.lookupAll(".trade-name");
                    assertEquals(2, names.size());
                    for (Node name : names) {
                        assertTrue(
                                picture.getLayoutBounds().contains(name.getBoundsInParent()),
                                ((Label) name).getText());
                    }
                    return true;
                });
    }

    @Test
    void enterOnADifferenceOpensItsStory() {
        DifferenceTree tree =
                OnStage.on(
                        () -> {
                            TabPane tabs = (TabPane) find("decide-tabs");
                            tabs.getSelectionModel().select(2);
                            return (DifferenceTree) find("differences");
                        });
        OnStage.on(
                () -> {
                    for (int row = 0; row < tree.getExpandedItemCount(); row++) {
                        if (tree.getTreeItem(row).getValue().story().isPresent()) {
                            tree.getSelectionModel().select(row);
                            return true;
                        }
                    }
                    throw new AssertionError("no failure differs");
                });

        stage.press(tree, KeyCode.ENTER);

        assertEquals(1, visited.size());
        assertEquals(AreaName.BREAK, visited.get(0).area());
    }

    @Test
    void aMissedRequirementIsAskedAboutInDraw() {
        OnStage.on(
                () -> {
                    ((TabPane) find("decide-tabs")).getSelectionModel().select(1);
                    return true;
                });
        OnStage.until(() -> find("mend-requirement") != null);
        Button mend = stage.find(Button.class, "mend-requirement");
        assertTrue(OnStage.on(mend::isVisible));

        stage.press(mend, KeyCode.SPACE);

        assertEquals(AreaName.DRAW, visited.get(0).area());
        OnStage.on(
                () -> {
                    assertTrue(offers.working().get());
                    offers.dismiss();
                    assertFalse(offers.working().get());
                    return true;
                });
    }

    @Test
    void theSearchForSimplerLayoutsIsBegunAndCalledOffByKeyboard() {
        Button start =
                OnStage.on(
                        () -> {
                            ((TabPane) find("decide-tabs")).getSelectionModel().select(3);
                            return (Button) find("explore-start");
                        });
        stage.press(start, KeyCode.SPACE);
        OnStage.on(
                () -> {
                    assertTrue(start.isDisabled());
                    assertTrue(find("explore-stop").getParent().isVisible());
                    return true;
                });
        stage.press(stage.find(Button.class, "explore-cancel"), KeyCode.SPACE);
        OnStage.on(
                () -> {
                    assertFalse(start.isDisabled());
                    assertFalse(find("explore-stop").getParent().isVisible());
                    return true;
                });
    }

    private Node find(String name) {
        return stage.scene().lookup("#" + name);
    }
}
