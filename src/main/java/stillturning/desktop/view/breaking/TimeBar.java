package stillturning.desktop.view.breaking;

import javafx.animation.AnimationTimer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
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
        Button back = button("|\u25C0", "Back to the event before", scrubber::previous);
        back.setId("time-back");
        Button on = button("\u25B6|", "On to the next event", scrubber::next);
        on.setId("time-on");
        play.setId("time-play");
        play.getStyleClass().add("time-play");
        play.setOnAction(event -> scrubber.toggle());
        time.setId("time-now");
        time.getStyleClass().add("time-now");
        HBox.setHgrow(track, Priority.ALWAYS);
        getChildren().addAll(back, play, on, track, time);
        scrubber.playing().addListener((of, before, now) -> show());
        scrubber.seconds().addListener((of, before, now) -> tell());
        show();
        tell();
    }

    private static Button button(String sign, String words, Runnable what) {
        Button button = new Button(sign);
        button.setAccessibleText(words);
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip(words));
        button.setOnAction(event -> what.run());
        return button;
    }

    /** Marks the events of the story anew. */
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
