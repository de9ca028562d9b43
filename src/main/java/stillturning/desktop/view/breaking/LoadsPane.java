package stillturning.desktop.view.breaking;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.LoadsNow;
import stillturning.desktop.viewmodel.breaking.LoadsNow.LoadNow;

/** What each load has at the present time. */
final class LoadsPane extends VBox {

    private final Breaking breaking;
    private final ListView<LoadNow> list = new ListView<>();
    private Optional<LoadsNow> loads = Optional.empty();

    LoadsPane(Breaking breaking) {
        this.breaking = breaking;
        list.setId("loads-now");
        list.setAccessibleText("What each load has at the present time");
        list.setCellFactory(of -> new LoadCell());
        list.setPlaceholder(Labels.empty("What each load has is told here once it is played."));
        getChildren().add(Layout.high(list));
        breaking.scrubber().seconds().addListener((of, before, now) -> show());
    }

    /** Takes the loads of another story. */
    void take() {
        loads = breaking.loadsNow();
        show();
    }

    private void show() {
        double now = breaking.scrubber().seconds().get();
        List<LoadNow> rows = loads.map(l -> l.at(now)).orElse(List.of());
        if (rows.size() != list.getItems().size()) {
            list.getItems().setAll(rows);
            return;
        }
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).equals(list.getItems().get(i))) {
                list.getItems().set(i, rows.get(i));
            }
        }
    }

    private static final class LoadCell extends ItemCell<LoadNow> {
        private final Label name = Labels.wrapped("");
        private final Label now = Labels.wrapped("", "text-small");
        private final VBox row = new VBox(name, now);

        @Override
        protected void show(LoadNow load) {
            String style = "load-now-" + load.supply().name().toLowerCase(Locale.ROOT);
            name.setText(load.supply().sign() + "  " + load.name());
            name.getStyleClass().removeIf(s -> s.startsWith("load-now-"));
            name.getStyleClass().add(style);
            now.setText(load.has() + ": " + load.does());
            setGraphic(row);
            setAccessibleText(load.name() + ": " + load.has() + ", " + load.does());
        }
    }
}
