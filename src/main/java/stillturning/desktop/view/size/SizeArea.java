package stillturning.desktop.view.size;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Folded;
import stillturning.desktop.view.Folded.FoldedPane;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.size.Proposing;
import stillturning.desktop.viewmodel.size.Sizes;
import stillturning.report.table.Table;

/** Where the open candidate's sizes are held against their limits: findings first, then tables. */
public final class SizeArea implements Area {

    private static final double CONTENTS_SHARE = 0.25;

    /** Room that the contents need beside a sheet (em). */
    private static final double BROAD = 60;

    private static final String FINDINGS = "Findings";
    private static final String PROPOSAL = "Proposal";

    private final Desk desk;
    private final Sizes sizes;
    private final ListView<String> contents = new ListView<>();
    private final StackPane sheet = new StackPane();
    private final FindingsSheet findings;
    private final ProposalSheet proposal;
    private final TableSheet table = new TableSheet();
    private final Label said = new Label();
    private final Folded columns =
            new Folded(
                            Orientation.HORIZONTAL,
                            BROAD,
                            new double[] {CONTENTS_SHARE},
                            List.of(
                                    new FoldedPane("Sheets", contents),
                                    new FoldedPane("Sheet", sheet)))
                    .keeping(0)
                    .named("size-fold");
    private final BorderPane view = new BorderPane();

    public SizeArea(Desk desk, Sizes sizes, Proposing proposing) {
        this.desk = desk;
        this.sizes = sizes;
        findings = new FindingsSheet(sizes);
        proposal = new ProposalSheet(proposing);
        contents.setId("size-contents");
        contents.setAccessibleText("Sheets of the sizing");
        contents.getStyleClass().addAll("dense", "size-contents");
        contents.setCellFactory(of -> new TitleCell());
        contents.getSelectionModel()
                .selectedIndexProperty()
                .addListener((value, from, to) -> turnTo(to.intValue()));
        sizes.tables().addListener((ListChangeListener.Change<? extends Table<?>> c) -> refill());
        VBox top = new VBox(head(), notice());
        view.setTop(top);
        view.setCenter(columns);
        contents.addEventHandler(MouseEvent.MOUSE_CLICKED, event -> columns.front(1));
        Controls.onEnter(contents, chosen -> columns.front(1));
        view.sceneProperty().addListener((value, from, to) -> sizes.look(to != null));
        refill();
    }

    /** The title of a sheet. */
    private static final class TitleCell extends ItemCell<String> {
        private final Label words = Labels.wrapped("");

        @Override
        protected void show(String title) {
            words.setText(title);
            setGraphic(words);
        }
    }

    private Node head() {
        Label title = Labels.wrapped("", "title-4");
        title.setMinWidth(0);
        title.textProperty()
                .bind(
                        Bindings.createStringBinding(
                                () -> desk.openCandidate().map(c -> c.title()).orElse(""),
                                desk.candidate(),
                                desk.read()));
        Label headline = new Label();
        headline.setId("size-headline");
        headline.setMinWidth(Region.USE_PREF_SIZE);
        headline.textProperty().bind(sizes.headline());
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        ProgressIndicator turning = new ProgressIndicator();
        turning.getStyleClass().add("turning");
        Button cancel = button("Cancel", "cancel-sizing", sizes::cancel);
        HBox busy = new HBox(turning, new Label("Sizing \u2026"), cancel);
        busy.getStyleClass().add("in-line");
        busy.setAlignment(Pos.CENTER_LEFT);
        busy.visibleProperty().bind(sizes.working());
        busy.managedProperty().bind(sizes.working());
        Button again = button("Size again", "size-again", sizes::size);
        again.disableProperty().bind(sizes.working());
        Button export = button("Export tables \u2026", "export-sizes", this::export);
        export.disableProperty().bind(sizes.report().map(Optional::isEmpty));
        HBox head = new HBox(title, headline, between, busy, again, export);
        head.getStyleClass().add("size-head");
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private static Button button(String words, String name, Runnable action) {
        Button button = new Button(words);
        button.setId(name);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private Node notice() {
        Label notice = new Label();
        notice.setId("size-notice");
        notice.setWrapText(true);
        notice.setMaxWidth(Double.MAX_VALUE);
        notice.getStyleClass().addAll("notice", "notice-warning");
        notice.textProperty().bind(sizes.notice());
        notice.managedProperty().bind(notice.visibleProperty());
        notice.visibleProperty().bind(sizes.notice().isNotEmpty());
        said.setMaxWidth(Double.MAX_VALUE);
        said.getStyleClass().addAll("notice", "notice-accent");
        said.managedProperty().bind(said.visibleProperty());
        said.visibleProperty().bind(said.textProperty().isNotEmpty());
        return new VBox(notice, said);
    }

    private void export() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Folder for the tables, one file each");
        File folder = chooser.showDialog(view.getScene().getWindow());
        if (folder != null) {
            said.setText(sizes.export(folder.toPath()));
        }
    }

    private void refill() {
        int at = Math.max(0, contents.getSelectionModel().getSelectedIndex());
        List<String> titles = new ArrayList<>(List.of(FINDINGS, PROPOSAL));
        sizes.tables().forEach(t -> titles.add(t.title()));
        contents.getItems().setAll(titles);
        contents.getSelectionModel().select(at < titles.size() ? at : 0);
        turnTo(contents.getSelectionModel().getSelectedIndex());
    }

    private void turnTo(int index) {
        if (index <= 0) {
            sheet.getChildren().setAll(findings);
        } else if (index == 1) {
            sheet.getChildren().setAll(proposal);
        } else if (index - 2 < sizes.tables().size()) {
            table.show(sizes.tables().get(index - 2));
            sheet.getChildren().setAll(table);
        }
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        contents.getSelectionModel().select(0);
        columns.front(1);
        sizes.look(true);
    }
}
