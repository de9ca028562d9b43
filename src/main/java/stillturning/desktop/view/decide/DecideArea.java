package stillturning.desktop.view.decide;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.decide.Deciding;

/** Where one decides: ranks that follow the weights on the left, their reasons on the right. */
public final class DecideArea implements Area {

    private static final double LEFT = 0.45;

    private final RankingPane ranking;
    private final VBox view;

    public DecideArea(Deciding deciding) {
        ranking = new RankingPane(deciding);
        VBox left = new VBox(ranking, new WeightsPane(deciding));
        VBox.setVgrow(ranking, Priority.ALWAYS);
        TabPane right =
                new TabPane(
                        tab("Requirements", new RequirementsPane(deciding)),
                        tab("Trade-off", new TradeOffPane(deciding, ranking::select)),
                        tab("Two side by side", new SideBySidePane(deciding)),
                        tab("Departures", new DeparturesPane(deciding)),
                        tab("Other weights", new FirmnessPane(deciding)));
        right.setId("decide-tabs");
        SplitPane split = new SplitPane(left, right);
        split.setDividerPositions(LEFT);
        SplitPane.setResizableWithParent(left, false);
        BooleanBinding none =
                Bindings.createBooleanBinding(() -> deciding.now().get().isEmpty(), deciding.now());
        Label empty = new Label();
        empty.getStyleClass().add("empty-words");
        empty.textProperty().bind(deciding.notice());
        empty.visibleProperty().bind(none);
        split.visibleProperty().bind(none.not());
        StackPane body = new StackPane(split, empty);
        VBox.setVgrow(body, Priority.ALWAYS);
        Label notice = new Label();
        notice.setId("decide-notice");
        notice.setWrapText(true);
        notice.setMaxWidth(Double.MAX_VALUE);
        notice.setMinHeight(Region.USE_PREF_SIZE);
        notice.getStyleClass().addAll("notice", "notice-warning");
        notice.textProperty().bind(deciding.notice());
        notice.visibleProperty().bind(deciding.notice().isNotEmpty().and(none.not()));
        notice.managedProperty().bind(notice.visibleProperty());
        view = new VBox(notice, body);
    }

    private static Tab tab(String words, Node content) {
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    @Override
    public AreaName name() {
        return AreaName.DECIDE;
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
