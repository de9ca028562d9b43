package stillturning.desktop.view.breaking;

import javafx.scene.control.ScrollPane;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.picture.PlotView;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.Scrubber;
import stillturning.report.StoryPlot;
import stillturning.report.drawing.plot.TimePlot;

/** Voltages and charges beside the time; a click goes to its time. */
final class PlotPane extends ScrollPane {

    private final Breaking breaking;
    private final PlotView view = new PlotView();

    PlotPane(Breaking breaking) {
        this.breaking = breaking;
        view.setId("story-plot");
        Layout.scroll(this, view);
        setMinHeight(0);
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
        breaking.story()
                .map(watched -> StoryPlot.plot("plot", "", watched.story(), breaking::called))
                .ifPresent(plot -> view.show(TimePlot.sheet(plot)));
        view.secondsProperty().set(breaking.scrubber().seconds().get());
    }
}
