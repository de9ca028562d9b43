package stillturning.desktop.view.decide;

import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.WeightSlider;
import stillturning.quantity.Formats;

/** A slider for each criterion; the ranks follow while one moves. */
final class WeightsPane extends VBox {

    /** Weights are whole tenths, so that they can be read and written. */
    private static final double TENTHS = 10;

    private final Deciding deciding;
    private final GridPane grid = new GridPane();
    private final Label refusal = new Label();

    WeightsPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        grid.getStyleClass().add("weights");
        grid.getColumnConstraints().addAll(plain(), plain(), growing(), plain(), plain());
        refusal.getStyleClass().addAll("danger", "text");
        refusal.setWrapText(true);
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        getChildren().addAll(head(), grid, refusal);
        setMinHeight(Region.USE_PREF_SIZE);
        deciding.weights()
                .sliders()
                .addListener((ListChangeListener.Change<? extends WeightSlider> c) -> refill());
        refill();
    }

    private HBox head() {
        Label words = new Label("Weights");
        words.getStyleClass().add("title-4");
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        Button reset = new Button("Back to the study's");
        reset.setId("reset-weights");
        reset.disableProperty().bind(deciding.weights().moved().not());
        reset.setOnAction(event -> deciding.weights().reset());
        Button write = new Button("Write into the study");
        write.setId("write-weights");
        write.disableProperty().bind(deciding.weights().moved().not());
        write.setOnAction(event -> refusal.setText(deciding.write().orElse("")));
        HBox head = new HBox(words, between, reset, write);
        head.getStyleClass().add("in-line");
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private void refill() {
        grid.getChildren().clear();
        refusal.setText("");
        int row = 0;
        for (WeightSlider weight : deciding.weights().sliders()) {
            row(row++, weight);
        }
    }

    private void row(int row, WeightSlider weight) {
        Label number = new Label(String.valueOf(row + 1));
        number.getStyleClass().addAll("criterion", "criterion-key", "criterion-" + (row + 1));
        Label name = new Label(weight.criterion().words());
        Slider slider = new Slider(0, deciding.weights().most(), weight.value().get());
        slider.setId("weight-" + weight.criterion().name());
        slider.setBlockIncrement(0.5);
        slider.setMajorTickUnit(1);
        slider.setAccessibleText("Weight of " + weight.criterion().words());
        name.setLabelFor(slider);
        slider.valueProperty()
                .addListener((v, from, to) -> weight.value().set(rounded(to.doubleValue())));
        weight.value()
                .addListener(
                        (v, from, to) -> {
                            if (rounded(slider.getValue()) != to.doubleValue()) {
                                slider.setValue(to.doubleValue());
                            }
                        });
        Label value = new Label();
        value.getStyleClass().add("weight-value");
        value.textProperty().bind(weight.value().map(w -> Formats.fixed(w.doubleValue(), 1)));
        Label share = new Label();
        share.getStyleClass().addAll("weight-value", "text-muted");
        share.textProperty().bind(weight.share());
        grid.addRow(row, number, name, slider, value, share);
    }

    private static double rounded(double weight) {
        return Math.round(weight * TENTHS) / TENTHS;
    }

    private static ColumnConstraints plain() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(Region.USE_PREF_SIZE);
        return column;
    }

    private static ColumnConstraints growing() {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(Priority.ALWAYS);
        return column;
    }
}
