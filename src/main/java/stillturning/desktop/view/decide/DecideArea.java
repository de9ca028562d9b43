package stillturning.desktop.view.decide;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.decide.Deciding;

/** Where one decides: ranks that follow the weights on the left, their reasons on the right. */
public final class DecideArea implements Area {

    private static final double LEFT = 0.45;

    private final RankingPane ranking;
    private final VBox view;

    public DecideArea(Deciding deciding) {
        ranking = new RankingPane(deciding);
        VBox left = new VBox(Layout.high(ranking), new WeightsPane(deciding));
        TabPane right =
                new TabPane(
                        Layout.tab("Answer", new AnswerPane(deciding)),
                        Layout.tab("Requirements", new RequirementsPane(deciding)),
                        Layout.tab("Trade-off", new TradeOffPane(deciding, ranking::select)),
                        Layout.tab("Simpler layouts", new ExplorePane(deciding.exploring())),
                        Layout.tab("Side by side", new SideBySidePane(deciding)),
                        Layout.tab("Departures", new DeparturesPane(deciding)));
        right.setId("decide-tabs");
        SplitPane split = new SplitPane(left, right);
        split.setDividerPositions(LEFT);
        SplitPane.setResizableWithParent(left, false);
        BooleanBinding none =
                Bindings.createBooleanBinding(() -> deciding.now().get().isEmpty(), deciding.now());
        Label empty = Labels.empty("");
        empty.textProperty().bind(deciding.notice());
        empty.visibleProperty().bind(none);
        split.visibleProperty().bind(none.not());
        Label notice = Labels.notice("decide-notice", "warning");
        notice.textProperty().bind(deciding.notice());
        Showing.whileTrue(notice, deciding.notice().isNotEmpty().and(none.not()));
        view = new VBox(notice, Layout.high(new StackPane(split, empty)));
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        destination.candidate().ifPresent(ranking::select);
    }
}
