package stillturning.desktop.view.draw;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.picture.PictureView;
import stillturning.desktop.view.picture.Printing;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings.SidePanels;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.draw.BoardDrawing;
import stillturning.desktop.viewmodel.draw.PaletteEntry;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.files.finding.FileFinding;
import stillturning.report.Cautions;

/** Where a candidate is drawn: what can be added, the diagram, values, findings, the text. */
public final class DrawArea implements Area {

    private static final double FORM_SHARE = 0.48;

    /** Room that the paper needs with a pane on either side (em). */
    private static final double BROAD = 62;

    private static final String EMPTY =
            "Nothing is drawn yet. Add a battery and a bus from the list on the left, then drag"
                    + " from one terminal to the other to join them.";

    private static final String COMING =
            "The drawing is being laid out. With many parts that takes a while; everything else can"
                    + " be used meanwhile.";

    private final Desk desk;
    private final OfferedDrawings offers;
    private final Board board;
    private final PictureView paper = new PictureView();
    private final TextPane text;
    private final Node additions;
    private final Node values;
    private final ToggleButton adding = new ToggleButton("Add");
    private final ToggleButton valuing = new ToggleButton("Values");
    private final DrawCommands commands;
    private final Label said = Labels.notice("draw-said", "accent");
    private final Label empty = Labels.empty(EMPTY);
    private final ToggleButton besides = new ToggleButton("Text");
    private final SplitPane middle = new SplitPane();
    private final BorderPane view = new BorderPane();
    private ContextMenu menu = new ContextMenu();
    private boolean drawn;
    private boolean awaited;

    /** Whether nothing was drawn when the candidate was opened, so that parts come first. */
    private boolean blank;

    /**
     * @param offers what the program offers to draw otherwise
     */
    public DrawArea(Desk desk, OfferedDrawings offers) {
        this.desk = desk;
        this.offers = offers;
        board = new Board(desk, paper.shape());
        text = new TextPane(desk, board);
        commands = new DrawCommands(board, this::showText);
        view.setId("draw-area");
        board.said().addListener((of, before, now) -> said.setText(now));
        Button leaveOut =
                Controls.button(
                        "Leave it out of this candidate",
                        "draw-leave-out",
                        board.loadToDelete()::leaveOut);
        Button everywhere =
                Controls.button(
                        "Delete it from the study",
                        "draw-delete-everywhere",
                        board.loadToDelete()::deleteEverywhere);
        HBox instead = Layout.inLine(leaveOut, everywhere);
        instead.getStyleClass().add("area-pane");
        Showing.whileTrue(instead, board.loadToDelete().asked().map(Optional::isPresent));
        view.setTop(new VBox(tools(), said, instead));
        additions = new PalettePane(board);
        values = right();
        view.setCenter(middle());
        desk.settings().addListener((of, before, now) -> showBeside());
        view.widthProperty().addListener((of, before, now) -> showBeside());
        empty.fontProperty().addListener((of, before, now) -> showBeside());
        showBeside();
        listen();
        show(board.laid().get());
    }

    private void listen() {
        paper.setId("paper");
        paper.setOnPick(board::pick);
        paper.setOnOpen(key -> board.pick(List.of(key)));
        paper.setOnJoin(
                (one, other) -> {
                    board.join(one.symbol(), one.port(), other.symbol(), other.port());
                    paper.requestFocus();
                });
        paper.setOnDrop(
                (dropped, at, key) -> {
                    PaletteEntry.carried(dropped).ifPresent(entry -> board.add(entry, at));
                    paper.requestFocus();
                });
        paper.setOnMenu(this::openMenu);
        paper.addEventHandler(
                KeyEvent.KEY_PRESSED, event -> commands.key(event, view.getScene().getWindow()));
        board.laid().addListener((of, before, now) -> show(now));
        board.chosen().addListener((Observable of) -> choose());
    }

    /** What is chosen and not drawn yet is brought into sight when it is. */
    private void choose() {
        List<String> keys = board.chosenKeys();
        paper.choose(keys);
        if (awaited && !keys.isEmpty()) {
            paper.reveal(keys.get(0));
        }
        awaited = keys.isEmpty() && !board.chosen().isEmpty();
    }

    private void openMenu(Optional<String> key, double screenX, double screenY) {
        key.filter(k -> !paper.chosen().contains(k)).ifPresent(k -> board.pick(List.of(k)));
        menu.hide();
        menu = commands.menu(view.getScene().getWindow());
        menu.show(paper, screenX, screenY);
    }

    private void show(Optional<BoardDrawing> laid) {
        laid.ifPresent(l -> paper.show(l.sheet(), l.picture()));
        boolean first = laid.isPresent() && !drawn;
        boolean nothing = laid.filter(l -> l.candidate().parts().isEmpty()).isPresent();
        drawn = laid.isPresent();
        if (first) {
            paper.fitToRead();
            blank = nothing;
            showBeside();
        }
        choose();
        empty.setText(drawn ? EMPTY : COMING);
        empty.setVisible(drawn ? nothing : desk.openReading().isPresent());
        paper.setVisible(drawn);
    }

    private Node tools() {
        Button undo = Controls.button("Undo", "draw-undo", desk::undo);
        Button redo = Controls.button("Redo", "draw-redo", desk::redo);
        desk.texts().addListener((of, before, now) -> name(undo, redo));
        name(undo, redo);
        besides.setId("draw-text-toggle");
        besides.setTooltip(new Tooltip("The candidate's file beside the diagram"));
        besides.setOnAction(event -> showBesides());
        Button duplicate = Controls.button("Duplicate", "draw-duplicate", board::duplicate);
        Button delete = Controls.button("Delete", "draw-delete", board::delete);
        Button breakIt = Controls.button("Break it", "draw-break", board::breakIt);
        board.chosen()
                .addListener(
                        (Observable of) -> {
                            duplicate.setDisable(board.chosen().isEmpty());
                            delete.setDisable(board.chosen().isEmpty());
                            breakIt.setDisable(board.chosen().size() != 1);
                        });
        List.of(duplicate, delete, breakIt).forEach(b -> b.setDisable(true));

        beside(adding, "draw-adding", "What can be added, on the left of the paper (F7)");
        beside(valuing, "draw-valuing", "Values and findings, on the right of the paper (F8)");
        return new ToolBar(
                adding,
                undo,
                redo,
                duplicate,
                delete,
                breakIt,
                Layout.gap(),
                Controls.button(
                        "New candidate \u2026",
                        "draw-copy-candidate",
                        () -> commands.copyCandidate(view.getScene().getWindow())),
                Controls.button("Fit", "draw-fit", paper::fit),
                besides,
                Controls.button("Print \u2026", "draw-print", this::print),
                valuing);
    }

    private void beside(ToggleButton button, String id, String words) {
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(words));
        button.setAccessibleText(words);
        button.setOnAction(
                event -> {
                    boolean alone = narrow() && button.isSelected();
                    blank = false;
                    SidePanels beside =
                            new SidePanels(
                                    adding.isSelected() && !(alone && button == valuing),
                                    valuing.isSelected() && !(alone && button == adding));
                    desk.settings().set(desk.settings().get().with(beside));
                });
    }

    /** Whether there is room for one pane only beside the paper. */
    private boolean narrow() {
        return view.getWidth() > 0 && view.getWidth() < BROAD * empty.getFont().getSize();
    }

    private void showBeside() {
        SidePanels beside = desk.settings().get().beside();
        boolean adds = blank || (beside.additions() && !(narrow() && beside.values()));
        boolean tells = beside.values() && !(narrow() && blank);
        adding.setSelected(adds);
        valuing.setSelected(tells);
        view.setLeft(adds ? additions : null);
        view.setRight(tells ? values : null);
    }

    private void name(Button undo, Button redo) {
        name(undo, "Undo", desk.texts().get().undo());
        name(redo, "Redo", desk.texts().get().redo());
    }

    private static void name(Button button, String word, Optional<String> what) {
        String words = what.map(w -> word + ": " + w).orElse(word);
        button.setDisable(what.isEmpty());
        button.setTooltip(new Tooltip(words));
        button.setAccessibleText(words);
    }

    private Node middle() {

        empty.setMouseTransparent(true);
        StackPane stack = new StackPane(paper, empty, new OfferSheet(offers));
        stack.getStyleClass().add("paper-frame");
        stack.setMinWidth(0);
        middle.getItems().setAll(stack);
        return middle;
    }

    private Node right() {
        FormPane form = new FormPane(board.sheet());
        FindingsPane findings = new FindingsPane(board, this::follow);
        VBox below =
                new VBox(Layout.high(findings), Layout.high(new TroublePane(board, offers::ask)));
        SplitPane split = Layout.above(FORM_SHARE, form, below);
        split.getStyleClass().add("draw-right");
        split.setMinWidth(Region.USE_PREF_SIZE);
        split.setMaxWidth(Region.USE_PREF_SIZE);
        OfferPane offered = new OfferPane(offers);
        Showing.whileTrue(offered, offers.open());
        Showing.whileTrue(split, offers.open().not());
        return new StackPane(split, offered);
    }

    private void follow(FileFinding finding) {
        board.follow(finding);
        board.chosenKeys().stream().findFirst().ifPresent(paper::zoomTo);
        text.goTo(finding.line());
    }

    private void showText() {
        besides.setSelected(true);
        showBesides();
        if (board.chosen().size() == 1) {
            text.goTo(board.lineOf(board.chosen().get(0)));
        }
    }

    private void showBesides() {
        if (!besides.isSelected()) {
            middle.getItems().remove(text);
        } else if (!middle.getItems().contains(text)) {
            middle.getItems().add(text);
            middle.setDividerPositions(0.5);
        }
    }

    private void print() {
        Optional<BoardDrawing> laid = board.laid().get();
        if (laid.isEmpty()) {
            return;
        }
        Printing.job()
                .ifPresentOrElse(
                        job -> {
                            if (job.showPrintDialog(view.getScene().getWindow())) {
                                Printing.print(laid.get().picture(), words(laid.get()), job);
                            }
                        },
                        () -> said.setText(Printing.withoutPrinter()));
    }

    private static Printing.PageWords words(BoardDrawing laid) {
        return new Printing.PageWords(
                laid.candidate().title(), LocalDate.now(ZoneId.systemDefault()), Cautions.SHORT);
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        destination.subject().ifPresent(board::show);
        board.chosenKeys().stream()
                .findFirst()
                .filter(key -> destination.subject().isPresent())
                .ifPresent(paper::zoomTo);
    }
}
