package stillturning.desktop.view.window;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.AreaName;

/** The areas, one above the other; one of them is always chosen. */
final class AreaBar extends VBox {

    private static final Map<AreaName, String> TELLING =
            Map.of(
                    AreaName.START, "Begin or open a study",
                    AreaName.DRAW, "Draw a candidate and check it",
                    AreaName.SIZE, "Loads, wires and protectors of the open candidate",
                    AreaName.BREAK, "Break something and watch what follows",
                    AreaName.DECIDE, "Compare the candidates and rank them",
                    AreaName.EXPLAIN, "Write down the comparison and your reasons");

    private final Map<AreaName, ToggleButton> buttons = new EnumMap<>(AreaName.class);

    AreaBar(Consumer<AreaName> chosen) {
        getStyleClass().add("area-bar");
        setAccessibleText("Work areas");
        ToggleGroup group = new ToggleGroup();
        for (AreaName area : AreaName.values()) {
            ToggleButton button = new ToggleButton(area.words());
            button.setId("area-" + area.words().toLowerCase(Locale.ROOT));
            button.setToggleGroup(group);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setTooltip(new Tooltip(TELLING.get(area) + " (Ctrl+" + area.number() + ")"));
            button.setOnAction(event -> chosen.accept(area));
            buttons.put(area, button);
            getChildren().add(button);
        }
        group.selectedToggleProperty().addListener((of, before, now) -> keep(group, before, now));
    }

    /** A click on the chosen one would otherwise leave none chosen. */
    private static void keep(ToggleGroup group, Toggle before, Toggle now) {
        if (now == null) {
            group.selectToggle(before);
        }
    }

    /** Shows which one is in front. */
    void choose(AreaName area) {
        button(area).setSelected(true);
        if (buttons.values().stream().anyMatch(Node::isFocused)) {
            button(area).requestFocus();
        }
    }

    /** Whether the areas that need a study can be chosen. */
    void enable(boolean study) {
        buttons.forEach((area, button) -> button.setDisable(!study && area != AreaName.START));
    }

    private ToggleButton button(AreaName area) {
        return requireNonNull(buttons.get(area), area.words());
    }
}
