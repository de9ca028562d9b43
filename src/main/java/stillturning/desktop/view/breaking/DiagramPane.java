package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.picture.PictureView;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureChoice;
import stillturning.desktop.viewmodel.breaking.PlayedFailure;
import stillturning.model.failure.Failure;
import stillturning.report.drawing.Picture;

/** The diagram as it looks at the present time; a part offers the ways in which it can fail. */
final class DiagramPane extends StackPane {

    private final Breaking breaking;
    private final PictureView view;
    private final ContextMenu menu = new ContextMenu();
    private Optional<Picture> shown = Optional.empty();
    private Optional<String> laid = Optional.empty();
    private Optional<Failure> failing = Optional.empty();
    private double mouseX;
    private double mouseY;

    DiagramPane(Breaking breaking, PictureView view) {
        this.breaking = breaking;
        this.view = view;
        view.setId("break-diagram");
        view.setOnMenu(this::ask);
        view.setOnOpen(this::askInMiddle);
        view.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> menu.hide());
        view.addEventFilter(MouseEvent.MOUSE_RELEASED, this::remember);
        view.setOnPick(this::askAtMouse);
        getChildren().add(view);
        getStyleClass().add("paper-frame");
        setMinSize(0, 0);
        breaking.scrubber().seconds().addListener((of, before, now) -> show());
    }

    private void remember(MouseEvent event) {
        mouseX = event.getScreenX();
        mouseY = event.getScreenY();
    }

    private void askAtMouse(List<String> keys) {
        if (keys.size() == 1) {
            ask(Optional.of(keys.get(0)), mouseX, mouseY);
        }
    }

    private void askInMiddle(String key) {
        Bounds on = view.localToScreen(view.getBoundsInLocal());
        ask(Optional.of(key), on.getCenterX(), on.getCenterY());
    }

    /** Shows the picture of the present time. */
    void show() {
        Optional<PlayedFailure> played = breaking.played().get();
        Optional<Picture> picture = breaking.picture();
        if (played.isPresent() && picture.isPresent() && !same(picture.get())) {
            boolean another = !laid.equals(Optional.of(played.get().laid().candidate().id()));
            laid = Optional.of(played.get().laid().candidate().id());
            view.show(played.get().laid().sheet(), picture.get());
            if (another) {
                view.fitToRead();
            }
            bring(played.get());
            shown = picture;
        }
    }

    /** What fails is in sight when it begins to. */
    private void bring(PlayedFailure played) {
        if (failing.filter(played.failure()::equals).isEmpty()) {
            failing = Optional.of(played.failure());
            breaking.picked().stream()
                    .flatMap(choice -> choice.part().stream())
                    .flatMap(part -> played.laid().drawn().keysOf(part).stream())
                    .findFirst()
                    .ifPresent(view::reveal);
        }
    }

    /** Pictures are kept while nothing changes, so being the same object tells. */
    @SuppressWarnings("ReferenceEquality")
    private boolean same(Picture picture) {
        return shown.isPresent() && shown.get() == picture;
    }

    private void ask(Optional<String> key, double screenX, double screenY) {
        menu.getItems().setAll(offers(key));
        if (!menu.getItems().isEmpty()) {
            menu.show(view, screenX, screenY);
        }
    }

    /** How the part at a symbol or line can fail, under its name; nothing where there is none. */
    List<MenuItem> offers(Optional<String> key) {
        Optional<String> part =
                breaking.played().get().flatMap(p -> key.flatMap(p.laid().drawn()::partAt));
        List<FailureChoice> modes = part.map(breaking::of).orElse(List.of());
        List<MenuItem> items = new ArrayList<>();
        if (!modes.isEmpty()) {
            Label heading =
                    Labels.of(breaking.called(part.orElseThrow()) + " fails:", "text-muted");
            CustomMenuItem title = new CustomMenuItem(heading, false);
            title.setDisable(true);
            items.add(title);
            modes.forEach(mode -> items.add(item(mode)));
        }
        return items;
    }

    private MenuItem item(FailureChoice choice) {
        boolean second = !breaking.picked().isEmpty() && !breaking.picked().contains(choice);
        if (!second) {
            return Controls.item(choice.mode(), () -> breaking.pick(choice));
        }
        Menu both = new Menu(choice.mode());
        both.getItems()
                .addAll(
                        Controls.item("alone", () -> breaking.pick(choice)),
                        Controls.item(
                                "together with what fails already",
                                () -> breaking.alsoPick(choice)));
        return both;
    }
}
