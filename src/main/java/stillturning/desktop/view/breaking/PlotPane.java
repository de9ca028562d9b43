package stillturning.desktop.view.breaking;

import java.util.Optional;
import javafx.scene.control.ScrollPane;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.picture.PlotView;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.Scrubber;
import stillturning.report.StoryPlot;
import stillturning.report.drawing.plot.Plot;
import stillturning.report.drawing.plot.TimePlot;

/** Voltages and charges beside the time; a click goes to its time. */
final class PlotPane extends ScrollPane {

    private final Breaking breaking;
    private final PlotView view = new PlotView();
    private Optional<Plot> shown = Optional.empty();

    PlotPane(Breaking breaking) {
        this.breaking = breaking;
        view.setId("story-plot");
        Layout.scroll(this, view);
        setMinHeight(0);
        view.breadth().addListener((of, before, now) -> draw());
        Scrubber scrubber = breaking.scrubber();
        scrubber.seconds()
                .addListener((of, before, now) -> view.secondsProperty().set(now.doubleValue()));
        view.secondsProperty()
                .addListener(
                        (of, before, now) -> {
                            if (now.doubleValue() != scrubber.seconds().get()) {
                                scrubber.playing().set(false);
                                scrubber.to(now.doubleValue());
                            }
                        });
    }

    /** Shows the plot of another story. */
    void take() {
        shown =
                breaking.story()
                        .map(told -> StoryPlot.plot("plot", "", told.story(), breaking::called));
        draw();
        view.secondsProperty().set(breaking.scrubber().seconds().get());
    }

    private void draw() {
        shown.ifPresent(plot -> view.show(TimePlot.sheet(plot, view.breadth().get())));
    }
}
