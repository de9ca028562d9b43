package stillturning.desktop.view.size;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.size.FindingRow;
import stillturning.desktop.viewmodel.size.Sizes;

/** What is not as it should be, gravest first. */
final class FindingsSheet extends VBox {

    FindingsSheet(Sizes sizes) {
        getStyleClass().add("sheet");
        ListView<FindingRow> list = new ListView<>();
        list.setId("findings");
        list.getStyleClass().add("finding-list");
        list.setAccessibleText(
                "Findings, gravest first; Enter shows the part in the drawing, Shift and Enter its"
                        + " place in the file");
        list.setCellFactory(view -> new FindingCell(sizes));
        Label none = new Label();
        none.setId("no-findings");
        none.textProperty()
                .bind(
                        Bindings.createStringBinding(
                                () -> withoutFindings(sizes), sizes.working(), sizes.report()));
        none.getStyleClass().add("empty-words");
        list.setPlaceholder(none);
        list.setOnKeyPressed(
                event -> {
                    FindingRow row = list.getSelectionModel().getSelectedItem();
                    if (event.getCode() == KeyCode.ENTER && row != null) {
                        if (event.isShiftDown()) {
                            sizes.read(row);
                        } else {
                            sizes.draw(row);
                        }
                    }
                });
        VBox.setVgrow(list, Priority.ALWAYS);
        Label keys = new Label("Enter shows the part in Draw, Shift+Enter its place in the file.");
        keys.getStyleClass().addAll("text-small", "text-muted");
        getChildren().addAll(list, keys);
        sizes.findings()
                .addListener(
                        (ListChangeListener.Change<? extends FindingRow> c) ->
                                list.getItems().setAll(sizes.findings()));
        list.getItems().setAll(sizes.findings());
    }

    private static String withoutFindings(Sizes sizes) {
        if (sizes.working().get()) {
            return "Sizes are being computed; what is wrong with them is coming.";
        }
        return sizes.report().get().isPresent()
                ? "No size breaks a limit."
                : "No sizes have been computed yet.";
    }
}
