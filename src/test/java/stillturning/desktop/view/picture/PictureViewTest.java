package stillturning.desktop.view.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.image.WritableImage;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.drawing.layout.SymbolPosition;

class PictureViewTest {

    private static final Diagram DIAGRAM = Shown.sandpiper("split-batteries");
    private static final Sheet SHEET = OneLine.laidOut(DIAGRAM);
    private static Stage stage;
    private static StackPane root;
    private PictureView view;

    @BeforeAll
    static void open() {
        root = new StackPane();
        stage = Shown.stage(root, 900, 500);
    }

    @AfterAll
    static void close() {
        Shown.run(stage::close);
    }

    @BeforeEach
    void show() {
        view = Shown.on(PictureView::new);
        Shown.run(
                () -> {
                    root.getChildren().setAll(view);
                    view.show(SHEET, SHEET.picture());
                    root.applyCss();
                    root.layout();
                });
    }

    private static Box box(String symbol) {
        return Optional.ofNullable(SHEET.spots().get(symbol)).orElseThrow().box();
    }

    private static Point middle(Box box) {
        return new Point(box.x() + box.width() / 2, box.y() + box.height() / 2);
    }

    private Point inWindow(Point at) {
        return view.viewport().onWindow(at);
    }

    private static Point port(String symbol, String port) {
        SymbolPosition spot = Optional.ofNullable(SHEET.spots().get(symbol)).orElseThrow();
        return spot.ports().stream()
                .filter(p -> p.port().equals(port))
                .findFirst()
                .orElseThrow()
                .at();
    }

    private void mouse(EventType<MouseEvent> type, Point at, boolean shift, boolean still) {
        MouseEvent event =
                new MouseEvent(
                        type,
                        at.x(),
                        at.y(),
                        at.x(),
                        at.y(),
                        MouseButton.PRIMARY,
                        1,
                        shift,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        false,
                        false,
                        still,
                        null);
        Shown.run(() -> Event.fireEvent(view, event));
    }

    private void drag(Point from, Point to, boolean shift) {
        mouse(MouseEvent.MOUSE_PRESSED, from, shift, true);
        mouse(MouseEvent.MOUSE_DRAGGED, to, shift, false);
        mouse(MouseEvent.MOUSE_RELEASED, to, shift, false);
    }

    private void click(Point at) {
        mouse(MouseEvent.MOUSE_CLICKED, at, false, true);
    }

    private void press(KeyCode code, boolean control) {
        KeyEvent event =
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false);
        Shown.run(() -> Event.fireEvent(view, event));
    }

    private Node minimap() {
        return view.lookup(".picture-minimap");
    }

    @Test
    void thePictureIsFittedUntilItIsMoved() {
        Box seen = view.viewport().seen(view.getWidth(), view.getHeight());
        assertEquals(seen, seen.joined(new Box(0, 0, SHEET.picture().width(), 10)));
        assertFalse(minimap().isVisible());
    }

    @Test
    void theWheelKeepsWhatLiesUnderThePointerAndTheMapAppears() {
        Point pointer = new Point(300, 200);
        Point there = view.viewport().onPicture(pointer.x(), pointer.y());
        ScrollEvent event =
                new ScrollEvent(
                        ScrollEvent.SCROLL,
                        pointer.x(),
                        pointer.y(),
                        pointer.x(),
                        pointer.y(),
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        0,
                        200,
                        0,
                        200,
                        ScrollEvent.HorizontalTextScrollUnits.NONE,
                        0,
                        ScrollEvent.VerticalTextScrollUnits.NONE,
                        0,
                        0,
                        null);
        double before = view.viewport().scale();
        Shown.run(() -> Event.fireEvent(view, event));
        assertTrue(view.viewport().scale() > before);
        assertEquals(pointer.x(), inWindow(there).x(), 1e-6);
        assertEquals(pointer.y(), inWindow(there).y(), 1e-6);
        assertTrue(minimap().isVisible());
    }

    @Test
    void theFirstLookCanBeReadAndItsBeginningIsNotCovered() {
        Shown.run(
                () -> {
                    view.fitToRead();
                    root.layout();
                });
        double letters = SHEET.picture().smallestLetters().orElseThrow();
        assertTrue(view.viewport().scale() * letters >= 9 - 1e-9);
        Box first = view.viewport().onWindow(box(Targets.of(SHEET).first().orElseThrow()));
        assertTrue(first.x() >= 0 && first.bottom() <= view.getHeight(), first::toString);
        assertTrue(minimap().isVisible());
        Bounds map = minimap().getBoundsInParent();
        assertFalse(map.intersects(first.x(), first.y(), first.width(), first.height()));
    }

    @Test
    void whoWantsLettersTwiceAsLargeHasThemInThePictureToo() {
        Shown.run(
                () -> {
                    root.setStyle("-fx-font-size: 26px;");
                    view.fitToRead();
                    root.applyCss();
                    root.layout();
                });
        double letters = SHEET.picture().smallestLetters().orElseThrow();
        assertTrue(view.viewport().scale() * letters >= 18 - 1e-9);
    }

    @Test
    void aClickChoosesTheSymbolAndOneOnThePaperNothing() {
        List<List<String>> picked = new ArrayList<>();
        view.setOnPick(picked::add);
        click(inWindow(middle(box("radio"))));
        click(new Point(2, 2));
        assertEquals(List.of(List.of("radio"), List.of()), picked);
    }

    @Test
    void draggingThePaperMovesItAndWithShiftChooses() {
        Shown.run(view::actualSize);
        Viewport before = view.viewport();
        drag(new Point(100, 60), new Point(70, 40), false);
        assertEquals(before.movedBy(-30, -20), view.viewport());
        Box radio = box("radio");
        Shown.run(() -> view.move(view.viewport().centred(middle(radio), 900, 500)));
        Point from = inWindow(new Point(radio.x() - 3, radio.y() - 3));
        Point to = inWindow(new Point(radio.right() + 3, radio.bottom() + 3));
        drag(from, to, true);
        assertEquals(List.of("radio"), view.chosen());
    }

    @Test
    void aWireIsPulledFromPortToPort() {
        List<SymbolPort> joined = new ArrayList<>();
        view.setOnJoin(
                (from, to) -> {
                    joined.add(from);
                    joined.add(to);
                });
        Point battery = port("main-battery", "plus");
        Point bus = port("main-bus", "out");
        drag(inWindow(battery), inWindow(bus.movedBy(3, 0)), false);
        assertEquals(
                List.of(new SymbolPort("main-battery", "plus"), new SymbolPort("main-bus", "out")),
                joined);
        drag(inWindow(battery), new Point(2, 2), false);
        assertEquals(2, joined.size());
    }

    @Test
    void keysGoFromSymbolToSymbolAndOpen() {
        List<String> opened = new ArrayList<>();
        view.setOnOpen(opened::add);
        press(KeyCode.ENTER, false);
        List<String> first = view.chosen();
        assertEquals(1, first.size());
        press(KeyCode.RIGHT, false);
        assertNotEquals(first, view.chosen());
        press(KeyCode.ENTER, false);
        assertEquals(view.chosen(), opened);
        Node focus = Shown.on(() -> stage.getScene().getFocusOwner());
        assertFalse(focus.getAccessibleText().isBlank());
        press(KeyCode.ESCAPE, false);
        assertTrue(view.chosen().isEmpty());
        Viewport before = view.viewport();
        press(KeyCode.ADD, true);
        assertTrue(view.viewport().scale() > before.scale());
    }

    @Test
    void aMenuIsAskedForAboutWhatLiesThere() {
        List<Optional<String>> asked = new ArrayList<>();
        view.setOnMenu((key, x, y) -> asked.add(key));
        for (Point at : List.of(inWindow(middle(box("radio"))), new Point(2, 2))) {
            ContextMenuEvent event =
                    new ContextMenuEvent(
                            ContextMenuEvent.CONTEXT_MENU_REQUESTED,
                            at.x(),
                            at.y(),
                            at.x(),
                            at.y(),
                            false,
                            null);
            Shown.run(() -> Event.fireEvent(view, event));
        }
        assertEquals(List.of(Optional.of("radio"), Optional.empty()), asked);
    }

    @Test
    void theMapGoesWhereItIsClicked() {
        Shown.run(view::actualSize);
        Shown.run(() -> view.zoom(2, 0, 0));
        Shown.run(root::layout);
        Box before = view.viewport().seen(900, 500);
        MouseEvent event =
                new MouseEvent(
                        MouseEvent.MOUSE_PRESSED,
                        180,
                        80,
                        0,
                        0,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        false,
                        false,
                        true,
                        null);
        Shown.run(() -> Event.fireEvent(minimap(), event));
        assertNotEquals(before, view.viewport().seen(900, 500));
    }

    @Test
    void anotherStateLeavesTheNodesOfEverythingElse() {
        PictureNodes nodes = Shown.on(() -> new PictureNodes(c -> c));
        Shown.run(() -> nodes.show(SHEET.picture()));
        List<Node> before = List.copyOf(nodes.root().getChildren());
        Diagram dark = DIAGRAM.looking(Map.of("radio", MarkState.DARK), Map.of(), Map.of());
        Shown.run(() -> nodes.show(SHEET.picture(dark)));
        assertTrue(nodes.root().getChildren().containsAll(before));
        assertTrue(nodes.part("radio").orElseThrow().getAccessibleText().endsWith("dark"));
        Shown.run(() -> nodes.show(SHEET.picture()));
        assertEquals(before, nodes.root().getChildren());
        assertSame(before.get(1), nodes.root().getChildren().get(1));
        assertFalse(nodes.part("radio").orElseThrow().getChildren().isEmpty());
    }

    @Test
    void aDarkThemeTurnsThePaper() {
        String light = Shown.on(this::strokes);
        Shown.run(
                () -> {
                    Shown.theme(true);
                    root.applyCss();
                });
        String dark = Shown.on(this::strokes);
        Shown.run(() -> Shown.theme(false));
        assertNotEquals(light, dark);
    }

    private String strokes() {
        return view.lookupAll("Text").stream()
                .filter(Text.class::isInstance)
                .map(node -> ((Text) node).getFill().toString())
                .toList()
                .toString();
    }

    /** Pixels as dark as ink in the middle of a symbol, as the window shows it. */
    private int inkIn(Box box) {
        WritableImage image = Shown.on(() -> root.snapshot(null, null));
        Point from = inWindow(new Point(box.x(), box.y()));
        Point to = inWindow(new Point(box.right(), box.bottom()));
        int ink = 0;
        for (int y = (int) from.y() + 3; y < to.y() - 3; y++) {
            for (int x = (int) from.x() + 3; x < to.x() - 3; x++) {
                ink += image.getPixelReader().getColor(x, y).getBrightness() < 0.5 ? 1 : 0;
            }
        }
        return ink;
    }

    @Test
    void whatIsChosenCanStillBeRead() {
        Shown.run(() -> view.move(new Viewport(2, 0, 0).centred(middle(box("radio")), 900, 500)));
        int before = inkIn(box("radio"));
        Shown.run(
                () -> {
                    view.choose(List.of("radio"));
                    root.applyCss();
                });
        int chosen = inkIn(box("radio"));

        assertTrue(before > 10, before + " dark pixels");
        assertTrue(chosen > 0.9 * before, chosen + " of " + before);
    }

    @Test
    void theFirstLookIsLargeEnoughToReadAndBeginsAtTheLeft() {
        double letters = SHEET.picture().smallestLetters().orElseThrow();
        assertTrue(view.viewport().scale() * letters < 9);

        Shown.run(
                () -> {
                    view.fitToRead();
                    root.layout();
                });

        assertTrue(view.viewport().scale() * letters > 9 - 1e-9);
        assertEquals(12, inWindow(new Point(0, 0)).x(), 1e-9);
    }
}
