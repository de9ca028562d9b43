package stillturning.desktop.view.draw;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.offer.Offered;
import stillturning.desktop.viewmodel.offer.OfferedDrawing;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;

/** What is offered, in words; the one that is chosen stands on the paper. */
final class OfferPane extends VBox {

    private static final double NOTES_SHARE = 0.7;

    private final OfferedDrawings offers;
    private final ListView<OfferedDrawing> list = new ListView<>();
    private final VBox notes = new VBox();
    private final Label refusal = Labels.refusal();
    private boolean filling;

    OfferPane(OfferedDrawings offers) {
        this.offers = offers;
        setId("offers-pane");
        getStyleClass().add("draw-offers");
        Label words = Labels.wrapped(offers.words());
        words.setId("offers-words");
        list.setId("offers");
        list.setAccessibleText("What is offered; the chosen one is drawn on the paper");
        list.setCellFactory(view -> new OfferCell());
        list.getStyleClass().add("offer-list");
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener((of, before, now) -> choose(Optional.ofNullable(now)));
        notes.getStyleClass().add("sentences");
        ScrollPane below = new ScrollPane();
        Layout.scroll(below, notes);
        getChildren()
                .addAll(
                        head(),
                        searching(),
                        words,
                        Layout.high(Layout.above(NOTES_SHARE, list, below)),
                        foot(),
                        refusal);
        offers.offered().addListener((of, before, now) -> refill(now));
        offers.chosen().addListener((of, before, now) -> follow(now));
        offers.working().addListener((of, before, now) -> invite());
        refill(offers.offered().get());
    }

    private HBox head() {
        Button back = Controls.button("\u2190 Back", "offers-back", offers::dismiss);
        back.getStyleClass().add("flat");
        return Layout.inLine(back, Labels.title("Drawn otherwise"));
    }

    private HBox searching() {
        Button stop = Controls.button("Take what is found", "offers-stop", offers::stop);
        Button cancel = Controls.button("Call off", "offers-cancel", offers::dismiss);
        HBox line = Layout.inLine(stop, cancel);
        Showing.whileTrue(line, offers.working());
        return line;
    }

    private HBox foot() {
        Button save = Controls.button("Save as a new candidate", "offers-save", this::save);
        save.getStyleClass().add("accent");
        save.disableProperty().bind(offers.chosen().map(Optional::isEmpty).orElse(true));
        HBox line = Layout.inLine(save);
        line.setAlignment(Pos.CENTER_RIGHT);
        return line;
    }

    private void save() {
        refusal.setText(offers.save().orElse(""));
    }

    private void choose(Optional<OfferedDrawing> offer) {
        if (!filling) {
            refusal.setText("");
            offer.ifPresent(offers::choose);
        }
    }

    private void refill(Optional<Offered> now) {
        filling = true;
        list.getItems().setAll(now.map(Offered::offers).orElse(List.of()));
        filling = false;
        notes.getChildren()
                .setAll(
                        now.map(Offered::notes).orElse(List.of()).stream()
                                .map(Labels::remark)
                                .toList());
        refusal.setText("");
        invite();
        follow(offers.chosen().get());
    }

    private void invite() {
        list.setPlaceholder(
                Labels.empty(
                        offers.working().get()
                                ? "Each drawing is assessed in full; that takes a minute or two."
                                : "Nothing is offered."));
    }

    private void follow(Optional<OfferedDrawing> now) {
        filling = true;
        now.ifPresentOrElse(
                list.getSelectionModel()::select, list.getSelectionModel()::clearSelection);
        filling = false;
    }

    /** What one is, and what comes with it. */
    private static final class OfferCell extends ItemCell<OfferedDrawing> {

        private final Label title = Labels.wrapped("", "text-bold");
        private final VBox about = new VBox();
        private final VBox all = new VBox(title, about);

        OfferCell() {
            all.setMinWidth(0);
            all.setMinHeight(Region.USE_PREF_SIZE);
        }

        @Override
        protected void show(OfferedDrawing offer) {
            title.setText(offer.title());
            about.getChildren()
                    .setAll(
                            offer.about().stream()
                                    .map(s -> Labels.wrapped(s, "text-small"))
                                    .toList());
            setGraphic(all);
            setAccessibleText(offer.title() + ". " + String.join(" ", offer.about()));
        }
    }
}
