package stillturning.desktop.view.window;

import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;

/** Below everything: whether the files hold, how old the results are, what is under way. */
final class StatusLine extends HBox {

    private final Hyperlink mistakes = new Hyperlink();
    private final Label results = new Label();
    private final Label words = new Label();
    private final ProgressBar bar = new ProgressBar();
    private final Button cancel = new Button("Call off");

    StatusLine(BackgroundWork work) {
        getStyleClass().add("status-line");
        setAlignment(Pos.CENTER_LEFT);

        cancel.getStyleClass().add("small");
        bar.setPrefWidth(120);
        bar.setAccessibleText("Progress of what is under way");
        getChildren().addAll(mistakes, results, Layout.gap(), words, bar, cancel);
        work.running().addListener((ListChangeListener<Running>) change -> tell(work));
        tell(work);
        clear();
    }

    private void tell(BackgroundWork work) {
        Optional<Running> first = work.running().stream().findFirst();
        words.setText(first.map(Running::words).orElse(""));
        bar.setProgress(first.map(Running::share).orElse(0.0));
        bar.setVisible(first.isPresent());
        cancel.setVisible(first.isPresent());
        cancel.setOnAction(event -> first.map(Running::name).ifPresent(work::cancel));
    }

    /** Nothing is open. */
    void clear() {
        shown(mistakes, "");
        results.setText("");
    }

    /** Follows an open study. */
    void follow(Desk desk) {
        desk.read().addListener((of, before, now) -> tell(desk));
        desk.results().addListener((of, before, now) -> tell(desk));
        mistakes.setOnAction(event -> desk.go(Destination.of(AreaName.DRAW)));
        tell(desk);
    }

    private void tell(Desk desk) {
        int wrong = desk.read().get().problems().size();
        shown(
                mistakes,
                wrong == 0 ? "" : "\u2716 " + wrong + (wrong == 1 ? " mistake" : " mistakes"));
        results.setText(age(desk, wrong));
    }

    private static String age(Desk desk, int wrong) {
        String refusal = desk.results().get().refusal();
        if (!refusal.isEmpty()) {
            return "\u26A0 Not computed: " + refusal;
        }
        if (desk.results().get().assessment().isEmpty()) {
            return wrong == 0 ? "" : "Nothing can be computed before they are mended.";
        }
        return desk.stale()
                ? "\u25CB Results are older than the files"
                : "\u25CF Results are of now" + scope(desk);
    }

    /** What is half drawn has none. */
    private static String scope(Desk desk) {
        int all = desk.candidates().size();
        int assessed = desk.results().get().assessment().map(a -> a.appraisals().size()).orElse(0);
        return assessed == all ? "" : ", for " + assessed + " of " + all + " candidates";
    }

    private static void shown(Hyperlink link, String text) {
        link.setText(text);
        Showing.set(link, !text.isEmpty());
    }
}
