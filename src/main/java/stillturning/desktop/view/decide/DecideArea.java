package stillturning.desktop.view.decide;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Folded;
import stillturning.desktop.view.Folded.FoldedPane;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.decide.Deciding;

/** Where one decides: ranks that follow the weights on the left, their reasons on the right. */
public final class DecideArea implements Area {

    private static final double LEFT = 0.45;
    private static final double UPPER = 0.55;

    /** Room that all of it needs beside each other, and below each other (em). */
    private static final double BROAD = 75;

    private static final double HIGH = 37;

    private final RankingPane ranking;
    private final StackPane view;

    public DecideArea(Deciding deciding) {
        ranking = new RankingPane(deciding);
        ScrollPane weights = new ScrollPane();
        Layout.scroll(weights, new WeightsPane(deciding));
        Folded left =
                new Folded(
                                Orientation.VERTICAL,
                                HIGH,
                                new double[] {UPPER},
                                List.of(
                                        new FoldedPane("Ranking", ranking),
                                        new FoldedPane("Weights", weights)))
                        .keeping(1);
        TabPane right =
                new TabPane(
                        Layout.tab("Answer", new AnswerPane(deciding)),
                        Layout.tab("Required", Layout.roomy(new RequirementsPane(deciding))),
                        Layout.tab(
                                "Trade-off",
                                Layout.roomy(new TradeOffPane(deciding, ranking::select))),
                        Layout.tab("Simpler", new ExplorePane(deciding.exploring())),
                        Layout.tab("Pair", Layout.roomy(new SideBySidePane(deciding))),
                        Layout.tab("Complexity", new ComplexityPane(deciding)),
                        Layout.tab("Departures", Layout.roomy(new DeparturesPane(deciding))));
        right.setId("decide-tabs");
        Folded split =
                new Folded(
                                Orientation.HORIZONTAL,
                                BROAD,
                                new double[] {LEFT},
                                List.of(
                                        new FoldedPane("Ranking and weights", left),
                                        new FoldedPane("Reasons", right)))
                        .keeping(0)
                        .named("decide-fold");
        left.named("ranking-fold");
        BooleanBinding none =
                Bindings.createBooleanBinding(() -> deciding.now().get().isEmpty(), deciding.now());
        Label empty = Labels.empty("");
        empty.textProperty().bind(deciding.notice());
        empty.visibleProperty().bind(none);
        split.visibleProperty().bind(none.not());
        view = new StackPane(split, empty);
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
