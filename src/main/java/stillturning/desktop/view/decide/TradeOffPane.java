package stillturning.desktop.view.decide;

import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.model.CriterionName;

/** Candidates by any two criteria. */
final class TradeOffPane extends VBox {

    TradeOffPane(Deciding deciding, Consumer<String> choosing) {
        getStyleClass().add("area-pane");
        TradeOffPicture picture = new TradeOffPicture(choosing);
        picture.setId("trade-off");
        VBox.setVgrow(picture, Priority.ALWAYS);
        FlowPane axes =
                new FlowPane(
                        chooser("\u2191", "Upwards", "trade-upwards", deciding.upwards()),
                        chooser("\u2192", "Across", "trade-across", deciding.across()));
        axes.getStyleClass().add("flow");
        Label legend =
                new Label(
                        "\u25C6 on the line: no other candidate beats it in both.   \u25CB beaten in"
                                + " both.   \u2716 misses a requirement.");
        legend.setWrapText(true);
        legend.getStyleClass().addAll("text-small", "text-muted");
        getChildren().addAll(axes, picture, legend);
        deciding.tradeOff().addListener((value, from, to) -> picture.show(to));
        picture.show(deciding.tradeOff().get());
    }

    private static HBox chooser(
            String sign, String words, String name, ObjectProperty<CriterionName> criterion) {
        ComboBox<CriterionName> box = new ComboBox<>();
        box.setId(name);
        box.getItems().setAll(CriterionName.values());
        box.setConverter(
                new StringConverter<>() {
                    @Override
                    public String toString(@Nullable CriterionName of) {
                        return of == null ? "" : of.words();
                    }

                    @Override
                    public CriterionName fromString(String words) {
                        return criterion.get();
                    }
                });
        box.setAccessibleText(words);
        box.valueProperty().bindBidirectional(criterion);
        Label label = new Label(sign);
        label.setLabelFor(box);
        HBox both = new HBox(label, box);
        both.getStyleClass().add("in-line");
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }
}
