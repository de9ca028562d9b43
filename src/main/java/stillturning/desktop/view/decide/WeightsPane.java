package stillturning.desktop.view.decide;

import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.ScaleField;
import stillturning.desktop.viewmodel.decide.WeightSlider;
import stillturning.quantity.Formats;

/** A slider and a scale for each criterion; the ranks follow while one changes. */
final class WeightsPane extends VBox {

    /** Weights are whole tenths, so that they can be read and written. */
    private static final double TENTHS = 10;

    private static final int ACCEPTABLE = 5;
    private static final int ENOUGH = 6;
    private static final int END_COLUMNS = 5;

    /** Least width of a criterion's name, which goes on in the next line (em). */
    private static final double NAME = 6.5;

    private final Deciding deciding;
    private final GridPane grid = new GridPane();
    private final Label refusal = Labels.refusal();

    WeightsPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        grid.getStyleClass().add("weights");
        grid.getColumnConstraints()
                .addAll(
                        Layout.asWideAsWords(),
                        Layout.growing(),
                        Layout.growing(),
                        Layout.asWideAsWords(),
                        Layout.asWideAsWords(),
                        Layout.asWideAsWords(),
                        Layout.asWideAsWords());

        getChildren().addAll(head(), grid, refusal);
        deciding.weights()
                .sliders()
                .addListener((ListChangeListener.Change<? extends WeightSlider> c) -> refill());
        deciding.scales()
                .fields()
                .addListener((ListChangeListener.Change<? extends ScaleField> c) -> refill());
        deciding.scales().refusal().addListener((v, from, to) -> refusal.setText(to));
        refill();
    }

    private HBox head() {
        Button reset = button("Back to the study's", "reset-weights", this::reset);
        Button write =
                button(
                        "Write into the study",
                        "write-weights",
                        () -> refusal.setText(deciding.write().orElse("")));
        return Layout.inLine(Labels.title("Weights"), Layout.gap(), reset, write);
    }

    private Button button(String words, String id, Runnable act) {
        Button button = Controls.button(words, id, act);
        button.disableProperty()
                .bind(deciding.weights().moved().or(deciding.scales().moved()).not());
        return button;
    }

    private void refill() {
        grid.getChildren().clear();
        refusal.setText("");
        grid.add(Labels.of("acceptable", "text-muted"), ACCEPTABLE, 0);
        grid.add(Labels.of("enough", "text-muted"), ENOUGH, 0);
        int row = 1;
        for (WeightSlider weight : deciding.weights().sliders()) {
            row(row++, weight);
        }
    }

    private void row(int row, WeightSlider weight) {
        String place = String.valueOf(row);
        Label number = Labels.of(place, "criterion", "criterion-key", "criterion-" + place);
        Label name = Labels.wrapped(weight.criterion().words());
        name.setMinWidth(NAME * name.getFont().getSize());
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
        Label value = Labels.of("", "weight-value");
        value.textProperty().bind(weight.value().map(w -> Formats.fixed(w.doubleValue(), 1)));
        Label share = Labels.of("", "weight-value", "text-muted");
        share.textProperty().bind(weight.share());
        grid.addRow(row, number, name, slider, value, share);
        deciding.scales().fields().stream()
                .filter(field -> field.before().criterion() == weight.criterion())
                .forEach(field -> ends(row, field));
    }

    private void ends(int row, ScaleField field) {
        String words = field.before().criterion().words();
        grid.add(end(field.acceptable(), "Acceptable " + words), ACCEPTABLE, row);
        grid.add(end(field.enough(), "Enough " + words), ENOUGH, row);
    }

    private static TextField end(StringProperty text, String words) {
        TextField field = new TextField();
        field.setPrefColumnCount(END_COLUMNS);
        field.getStyleClass().add("small");
        field.setAccessibleText(words);
        field.textProperty().bindBidirectional(text);
        return field;
    }

    private void reset() {
        deciding.scales().reset();
        deciding.weights().reset();
    }

    private static double rounded(double weight) {
        return Math.round(weight * TENTHS) / TENTHS;
    }
}
