package stillturning.desktop.view.draw;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.picture.Difference;
import stillturning.desktop.view.picture.PictureView;
import stillturning.desktop.viewmodel.offer.OfferSketch;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;

/** An offer on paper, to be looked at only: as it would be and as it is, the difference marked. */
final class OfferSheet extends BorderPane {

    private final OfferedDrawings offers;
    private final PictureView paper = new PictureView();
    private final RadioButton then = new RadioButton("As it would be");
    private final RadioButton now = new RadioButton("As it is");
    private final Label own = Labels.of("", "offer-key");
    private boolean fitted;

    OfferSheet(OfferedDrawings offers) {
        this.offers = offers;
        setId("offer-sheet");
        getStyleClass().add("offer-sheet");
        paper.setId("offer-paper");
        then.setId("offer-then");
        now.setId("offer-now");
        ToggleGroup which = new ToggleGroup();
        then.setToggleGroup(which);
        now.setToggleGroup(which);
        then.setSelected(true);
        which.selectedToggleProperty().addListener((of, before, after) -> draw());
        Label altered = Labels.of(Difference.ALTERED.words(), "offer-key", key(Difference.ALTERED));
        FlowPane head = new FlowPane(then, now, own, altered);
        head.getStyleClass().add("flow");
        setTop(head);
        setCenter(paper);
        offers.sketch().addListener((of, before, after) -> draw());
        offers.open().addListener((of, before, after) -> fitted = false);
        Showing.whileTrue(this, offers.chosen().map(Optional::isPresent).orElse(false));
        draw();
    }

    private static String key(Difference difference) {
        return "offer-" + difference.style();
    }

    private void draw() {
        boolean past = now.isSelected();
        Difference difference = past ? Difference.LEFT_OUT : Difference.ADDED;
        own.setText(difference.words());
        own.getStyleClass().setAll("label", "offer-key", key(difference));
        Optional<OfferSketch> sketch = offers.sketch().get();
        paper.setVisible(sketch.isPresent());
        sketch.map(s -> past ? s.now() : s.then()).ifPresent(side -> show(side, difference));
    }

    private void show(OfferSketch.SketchSide side, Difference difference) {
        paper.show(side.sheet(), side.sheet().picture());
        Map<Difference, List<String>> marks =
                Map.of(difference, side.own(), Difference.ALTERED, side.altered());
        paper.mark(marks);
        if (!fitted) {
            fitted = true;
            paper.fit();
        }
    }
}
