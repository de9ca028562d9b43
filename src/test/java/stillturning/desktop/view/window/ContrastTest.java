package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ListView;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.desktop.view.OnStage;
import stillturning.desktop.view.Theme;
import stillturning.desktop.viewmodel.Settings;
import stillturning.report.drawing.Paper;

/**
 * Borders of fields and rings of focus. Web Content Accessibility Guidelines 2.1, 1.4.11 and 2.4.7:
 * at least 3 to 1, and a focus that can be seen.
 */
@Timeout(120)
class ContrastTest {

    private static final double LEAST = 3;

    /** Controls, and the piece of each that has its border; empty for the whole. */
    private final Map<Control, String> bordered =
            Map.of(
                    new TextField("words"), "",
                    new ComboBox<String>(), "",
                    new CheckBox("so"), ".box",
                    new RadioButton("or so"), ".radio");

    private final List<Control> others =
            List.of(
                    new Button("do"),
                    flat(),
                    accent(),
                    new ToggleButton("on"),
                    new Hyperlink("there"),
                    new Slider(),
                    new ListView<String>(),
                    new TableView<String>());

    private final Button tool = new Button("tool");

    @BeforeAll
    static void start() {
        OnStage.start();
    }

    private static Button flat() {
        Button flat = new Button("flat");
        flat.getStyleClass().add("flat");
        return flat;
    }

    private static Button accent() {
        Button accent = new Button("main");
        accent.getStyleClass().add("accent");
        return accent;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void bordersAndFocusCanBeSeen(Paper paper) {
        OnStage.on(
                () -> {
                    VBox all = new VBox(new ToolBar(tool));
                    all.getChildren().addAll(bordered.keySet());
                    all.getChildren().addAll(others);
                    Stage stage = new Stage();
                    stage.setScene(new Scene(all, 400, 900));
                    Theme.apply(stage.getScene(), Settings.USUAL.with(paper));
                    stage.show();
                    all.applyCss();
                    bordered.forEach((control, piece) -> border(control, piece, paper));
                    List<Control> controls =
                            Stream.of(bordered.keySet().stream(), others.stream(), Stream.of(tool))
                                    .flatMap(s -> s)
                                    .collect(Collectors.toList());
                    for (Control control : controls) {
                        focus(control, controls);
                    }
                    stage.close();
                    return true;
                });
    }

    private static void border(Control control, String piece, Paper paper) {
        Node of = piece.isEmpty() ? control : control.lookup(piece);
        List<Color> fills =
                ((Region) of)
                        .getBackground().getFills().stream().map(f -> (Color) f.getFill()).toList();
        Color paperColour = (Color) control.getScene().getFill();
        double contrast = Faint.contrast(fills.get(0), fills.get(fills.size() - 1));
        assertTrue(
                contrast >= LEAST,
                () -> paper + ", " + control + ": " + contrast + " on " + paperColour);
    }

    /** What has the focus looks otherwise than without it. */
    private static void focus(Control control, List<Control> all) {
        Control elsewhere = all.get(control == all.get(0) ? 1 : 0);
        elsewhere.requestFocus();
        control.getScene().getRoot().applyCss();
        String before = looks(control);
        control.requestFocus();
        control.getScene().getRoot().applyCss();
        assertEquals(control, control.getScene().getFocusOwner());
        assertNotEquals(before, looks(control), control.toString());
    }

    private static String looks(Control control) {
        Node piece = control instanceof Slider ? control.lookup(".thumb") : control;
        Region region = (Region) piece;
        return (region.getBackground() == null
                        ? ""
                        : region.getBackground().getFills().stream()
                                .map(f -> f.getFill() + " " + f.getInsets())
                                .toList()
                                .toString())
                + (region.getBorder() == null
                        ? ""
                        : region.getBorder().getStrokes().stream()
                                .map(s -> s.getTopStroke() + " " + s.getWidths().getTop())
                                .toList()
                                .toString());
    }
}
