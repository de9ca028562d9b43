package stillturning.desktop.view.breaking;

import javafx.animation.AnimationTimer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.Scrubber;
import stillturning.report.EventLines;

/** Plays a story, or goes through it from event to event. */
final class TimeBar extends HBox {

    private static final double NANOS = 1e9;

    private final Scrubber scrubber;
    private final TimeTrack track;
    private final Label time = new Label();
    private final Button play = new Button();
    private final AnimationTimer clock = new Clock();

    /** Runs the story with the screen's pulse. */
    private final class Clock extends AnimationTimer {
        private long before;

        @Override
        public void start() {
            before = 0;
            super.start();
        }

        @Override
        public void handle(long now) {
            if (before > 0) {
                scrubber.run((now - before) / NANOS);
            }
            before = now;
        }
    }

    TimeBar(Breaking breaking) {
        this.scrubber = breaking.scrubber();
        this.track = new TimeTrack(breaking);
        getStyleClass().addAll("in-line", "time-bar");
        Button back = Controls.button("|\u25C0", "time-back", scrubber::previous);
        told(back, "Back to the event before");
        Button on = Controls.button("\u25B6|", "time-on", scrubber::next);
        told(on, "On to the next event");
        play.setId("time-play");
        play.getStyleClass().add("time-play");
        play.setOnAction(event -> scrubber.toggle());
        time.setId("time-now");
        time.getStyleClass().add("time-now");
        getChildren().addAll(back, play, on, Layout.wide(track), time);
        scrubber.playing().addListener((of, before, now) -> show());
        scrubber.seconds().addListener((of, before, now) -> tell());
        show();
        tell();
    }

    private static void told(Button button, String words) {
        button.setAccessibleText(words);
        button.setTooltip(new Tooltip(words));
    }

    /** Marks the events of the story again. */
    void mark() {
        track.mark();
        setDisable(scrubber.axis().isEmpty());
    }

    private void show() {
        boolean plays = scrubber.playing().get();
        play.setText(plays ? "\u275A\u275A" : "\u25B6");
        play.setAccessibleText(plays ? "Hold the story" : "Play the story");
        if (plays) {
            clock.start();
        } else {
            clock.stop();
        }
    }

    private void tell() {
        time.setText(EventLines.time(scrubber.seconds().get()));
    }
}
