package stillturning.desktop.view.window;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.desktop.draft.edits.StudyEdits;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.files.finding.FileFinding;

class DrawSceneTest {

    @TempDir Path folder;

    private OnScreen screen;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        Path study = folder.resolve("study");
        Samples.copy("first-steps", study);
        Settings settings = Settings.USUAL.with(new Settings.SidePanels(true, true));
        screen = OnScreen.open(folder.resolve("set"), settings, 1280, 800);
        screen.study(study);
        desk = screen.window.study().orElseThrow().desk();
        OnScreen.on(
                () -> {
                    screen.window.show(AreaName.DRAW);
                    desk.open("one-bus");
                    return true;
                });
        screen.settle();
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private <T extends Node> T find(String selector, Class<T> type) {
        return type.cast(
                Optional.ofNullable(screen.stage.getScene().lookup(selector))
                        .orElseThrow(() -> new AssertionError("no " + selector)));
    }

    private static void press(Node node, KeyCode code) {
        node.fireEvent(
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
    }

    private void add(String search) {
        OnScreen.on(
                () -> {
                    TextField field = find("#palette-search", TextField.class);
                    field.setText(search);
                    field.getOnAction().handle(new javafx.event.ActionEvent());
                    return true;
                });
        screen.settle();
    }

    private String type(String field, String text) {
        OnScreen.on(
                () -> {
                    TextField box = find(field, TextField.class);
                    box.requestFocus();
                    box.setText(text);
                    return true;
                });
        String error =
                OnScreen.on(
                        () -> {
                            Node line = find(field, TextField.class).getParent().getParent();
                            Label told = (Label) line.lookup(".field-error");
                            return told.isVisible() ? told.getText() : "";
                        });
        OnScreen.on(
                () -> {
                    find(field, TextField.class)
                            .getOnAction()
                            .handle(new javafx.event.ActionEvent());
                    return true;
                });
        screen.settle();
        return error;
    }

    private String text() {
        return text("one-bus.yaml");
    }

    private String text(String file) {
        return requireNonNull(desk.draft().state().texts().get(file));
    }

    @Test
    void aPartIsAddedSetRefusedAcceptedAndAllIsUndone() {
        SortedMap<String, String> before = desk.draft().state().texts();
        add("battery");
        assertTrue(
                text().contains("battery-2: {is: battery") || text().contains("battery-2:"),
                text());
        assertEquals("battery-2", OnScreen.on(() -> find("#form-title", Label.class).getText()));
        String error = type("#field-capacity", "20 V");
        assertTrue(error.contains("is a voltage"), error);
        assertFalse(text().contains("20 V"));
        assertEquals("", type("#field-capacity", "20 Ah (measured)"));
        assertTrue(text().contains("capacity: 20 Ah (measured)"), text());
        OnScreen.on(
                () -> {
                    while (desk.texts().get().undo().isPresent()) {
                        desk.undo();
                    }
                    return true;
                });
        screen.settle();
        assertEquals(before, desk.draft().state().texts());
    }

    @Test
    void findingsLeadToThePartAndTheLine() {
        OnScreen.on(
                () -> {
                    ToggleButton besides = find("#draw-text-toggle", ToggleButton.class);
                    besides.fire();
                    return true;
                });
        OnScreen.on(
                () -> {
                    CodeArea area = find("#side-text", CodeArea.class);
                    area.replaceText(
                            area.getText().replaceFirst("(is: battery[^}]*)}", "$1, mass: 5}"));
                    return true;
                });
        screen.settle();
        List<FileFinding> found =
                OnScreen.on(
                        () -> {
                            @SuppressWarnings("unchecked") // a list of findings
                            ListView<FileFinding> list = find("#findings", ListView.class);
                            list.getSelectionModel().selectFirst();
                            press(list, KeyCode.ENTER);
                            return List.copyOf(list.getItems());
                        });
        assertTrue(found.get(0).mistake());
        assertTrue(found.get(0).words().contains("has no unit"), found.get(0).words());
        String part = found.get(0).parts().get(0);
        assertEquals(part, OnScreen.on(() -> find("#form-title", Label.class).getText()));
        assertEquals(
                found.get(0).line(),
                OnScreen.on(() -> find("#side-text", CodeArea.class).getCurrentParagraph() + 1));
    }

    /** Each a line high, and none of its words cut. */
    @Test
    void whatCanBeAddedStandsInEvenRows() {
        Set<Double> heights =
                OnScreen.on(
                        () ->
                                find("#palette", ListView.class).lookupAll(".list-cell").stream()
                                        .map(node -> (ListCell<?>) node)
                                        .filter(cell -> !cell.isEmpty())
                                        .map(ListCell::getHeight)
                                        .collect(Collectors.toSet()));
        assertEquals(1, heights.size(), heights::toString);
        List<String> cut = OnScreen.on(() -> Cut.in(find("#palette", ListView.class)));
        assertEquals(List.of(), cut);
    }

    @Test
    void anEmptyCandidateIsDrawnUntilItReadsWithoutMistakes() {
        OnScreen.on(
                () -> {
                    desk.make(
                            new StudyEdits(
                                            desk.draft().document("study.yaml").orElseThrow(),
                                            List.of())
                                    .empty("fresh", "From nothing"));
                    desk.open("fresh");
                    return true;
                });
        screen.settle();
        add("breaker");
        assertTrue(desk.candidates().contains("fresh"));
        List<FileFinding> findings =
                requireNonNull(desk.reading().get().candidates().get("fresh")).findings();
        assertTrue(findings.stream().anyMatch(f -> f.parts().contains("breaker")), "" + findings);
        OnScreen.on(
                () -> {
                    press(find("#paper", Node.class), KeyCode.DELETE);
                    return true;
                });
        screen.settle();
        assertFalse(text("fresh.yaml").contains("is: breaker"));
    }

    private void key(KeyCode code) {
        key(code, false);
    }

    /** Presses a key where the focus is, as a keyboard does. */
    private void key(KeyCode code, boolean control) {
        OnScreen.on(
                () -> {
                    Node owner = screen.stage.getScene().getFocusOwner();
                    owner.fireEvent(
                            new KeyEvent(
                                    KeyEvent.KEY_PRESSED,
                                    "",
                                    "",
                                    code,
                                    false,
                                    control,
                                    false,
                                    false));
                    return true;
                });
        screen.settle();
    }

    private boolean onPaper() {
        return OnScreen.on(
                () -> {
                    Node paper = find("#paper", Node.class);
                    for (Node up = screen.stage.getScene().getFocusOwner();
                            up != null;
                            up = up.getParent()) {
                        if (up == paper) {
                            return true;
                        }
                    }
                    return false;
                });
    }

    /** What is chosen. */
    private String title() {
        return OnScreen.on(() -> find("#form-title", Label.class).getText());
    }

    @Test
    void partsAreAddedReachedAndJoinedByKeysAlone() {
        String before = text();
        OnScreen.on(
                () -> {
                    find("#palette-search", TextField.class).requestFocus();
                    find("#palette-search", TextField.class).setText("battery");
                    return true;
                });
        key(KeyCode.ENTER);
        assertEquals("battery-2", title());
        OnScreen.on(
                () -> {
                    find("#paper", Node.class).requestFocus();
                    return true;
                });
        key(KeyCode.ENTER);
        assertTrue(onPaper());
        walkTo("battery-2");
        key(KeyCode.J);
        walkTo("main-bus");
        key(KeyCode.J);
        key(KeyCode.ENTER);
        assertNotEquals(before, text());
        assertTrue(text().contains("battery-2"), text());
        assertTrue(
                text().lines().anyMatch(l -> l.contains("battery-2") && l.contains("main-bus")),
                text());
        assertTrue(onPaper(), "the focus stays on the paper");
        key(KeyCode.ESCAPE);
        key(KeyCode.ESCAPE);
        assertEquals("the candidate", title());
    }

    /** Goes from symbol to symbol by arrow keys until one is chosen. */
    private void walkTo(String part) {
        KeyCode[] ways = {KeyCode.RIGHT, KeyCode.DOWN, KeyCode.LEFT, KeyCode.UP};
        java.util.Random random = new java.util.Random(1);
        for (int step = 0; step < 400 && !title().equals(part); step++) {
            key(ways[random.nextInt(ways.length)], random.nextInt(4) == 0);
        }
        assertEquals(part, title());
    }

    @Thorough
    @Test
    void aLoadOfTheStudyCanBeLeftOutInstead() {
        OnScreen.on(
                () -> {
                    desk.go(
                            stillturning.desktop.viewmodel.Destination.of(
                                    AreaName.DRAW, "one-bus", "radio"));
                    return true;
                });
        screen.settle();
        OnScreen.on(
                () -> {
                    press(find("#paper", Node.class), KeyCode.DELETE);
                    return true;
                });
        screen.settle();
        assertTrue(OnScreen.on(() -> find("#draw-leave-out", Node.class).getParent().isVisible()));
        OnScreen.on(
                () -> {
                    find("#draw-leave-out", javafx.scene.control.Button.class).fire();
                    return true;
                });
        screen.settle();
        assertTrue(text().contains("leaves-out: [radio]"), text());
        assertFalse(OnScreen.on(() -> find("#draw-leave-out", Node.class).getParent().isVisible()));
    }

    @Thorough
    @Test
    void aHalfDrawnCandidateIsListedBesideTheRankingWithItsReason() {
        OnScreen.on(
                () -> {
                    String half = text().replace("parts:", "parts: [");
                    desk.make(
                            new stillturning.desktop.draft.Change(
                                    "Begin anew",
                                    List.of(
                                            new stillturning.desktop.draft.DraftStep.Replace(
                                                    "one-bus.yaml", half))));
                    return true;
                });
        screen.settle();
        OnScreen.on(
                () -> {
                    screen.window.show(AreaName.DECIDE);
                    return true;
                });
        screen.settle();
        OnScreen.until(() -> screen.stage.getScene().lookup("#left-out .label") != null);
        String told = OnScreen.on(() -> find("#left-out .label", Label.class).getText());
        assertTrue(told.contains("one-bus"), told);
        assertTrue(told.contains("is left out: "), told);
        String status =
                OnScreen.on(
                        () ->
                                find(".status-line", Node.class).lookupAll(".label").stream()
                                        .map(n -> ((Label) n).getText())
                                        .toList()
                                        .toString());
        assertTrue(status.contains("for 1 of 2 candidates"), status);
    }
}
