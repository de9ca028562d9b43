package stillturning.desktop.view.decide;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.model.goal.CriterionName;

/** Candidates by any two criteria. */
final class TradeOffPane extends VBox {

    TradeOffPane(Deciding deciding, Consumer<String> choosing) {
        getStyleClass().add("area-pane");
        TradeOffPicture picture = new TradeOffPicture(choosing);
        picture.setId("trade-off");
        picture.getStyleClass().add("trade-picture");

        FlowPane axes =
                new FlowPane(
                        chooser("\u2191", "Upwards", "trade-upwards", deciding.upwards()),
                        chooser("\u2192", "Across", "trade-across", deciding.across()));
        axes.getStyleClass().add("flow");
        Label legend =
                Labels.remark(
                        "\u25C6 on the line: no other candidate beats it in both.   \u25CB beaten"
                                + " in both.   \u2716 misses a requirement.");

        getChildren().addAll(axes, Layout.high(picture), legend);
        deciding.tradeOff().addListener((value, from, to) -> picture.show(to));
        picture.show(deciding.tradeOff().get());
    }

    /** Chooses what an axis shows. */
    static HBox chooser(
            String sign, String words, String name, ObjectProperty<CriterionName> criterion) {
        Chooser<CriterionName> box = new Chooser<>(words, CriterionName::words, criterion::set);
        box.setId(name);
        box.offer(List.of(CriterionName.values()), criterion.get());
        Label label = new Label(sign);
        label.setLabelFor(box);
        return Layout.inLine(label, box);
    }
}
