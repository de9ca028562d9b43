package stillturning.desktop.view.breaking;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.PilotStep;
import stillturning.desktop.viewmodel.breaking.PilotStep.Standing;
import stillturning.report.EventLines;

/** What is to be done, and how it stands at the present time. */
final class StepsPane extends VBox {

    private final Breaking breaking;
    private List<PilotStep> steps = List.of();
    private List<Standing> shown = List.of();

    StepsPane(Breaking breaking) {
        this.breaking = breaking;
        getStyleClass().add("steps");
        setId("pilot-steps");
        breaking.scrubber().seconds().addListener((of, before, now) -> show());
    }

    /** Takes the steps of another story. */
    void take() {
        steps = breaking.picked().isEmpty() ? List.of() : breaking.steps();
        shown = List.of();
        getChildren().clear();
        show();
    }

    private void show() {
        double now = breaking.scrubber().seconds().get();
        List<Standing> standings = steps.stream().map(step -> step.at(now)).toList();
        if (!standings.equals(shown) || getChildren().isEmpty()) {
            shown = standings;
            Label title = new Label("What the pilot has to do");
            title.getStyleClass().add("text-muted");
            getChildren().setAll(title);
            for (int i = 0; i < steps.size(); i++) {
                getChildren().add(box(steps.get(i), standings.get(i)));
            }
            if (steps.isEmpty()) {
                Label none = new Label("No procedure to follow.");
                none.getStyleClass().add("text-muted");
                getChildren().add(none);
            }
        }
    }

    private static VBox box(PilotStep step, Standing standing) {
        Label head =
                new Label(sign(standing) + "  " + step.procedure() + ": " + words(step, standing));
        head.setWrapText(true);
        head.setMinHeight(USE_PREF_SIZE);
        head.getStyleClass()
                .addAll(
                        "step-head",
                        "step-" + standing.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        String who = step.automatic().map(by -> "by itself, " + by + ": ").orElse("");
        Label does = new Label(who + step.does());
        does.setWrapText(true);
        does.setMinHeight(USE_PREF_SIZE);
        does.getStyleClass().addAll("text-muted", "step-does");
        return new VBox(head, does);
    }

    private static String words(PilotStep step, Standing standing) {
        return switch (standing) {
            case NOT_CALLED_FOR, LEFT_UNDONE -> standing.words();
            case DUE -> standing.words() + " at " + at(step.dueSeconds().orElseThrow());
            case DONE -> standing.words() + " at " + at(step.doneSeconds().orElseThrow());
            case NEEDLESS -> standing.words() + " at " + at(step.dueSeconds().orElseThrow());
        };
    }

    private static String at(double seconds) {
        return EventLines.time(seconds);
    }

    private static String sign(Standing standing) {
        return switch (standing) {
            case NOT_CALLED_FOR -> "\u25CB";
            case DUE -> "\u25D4";
            case DONE -> "\u2714";
            case NEEDLESS -> "\u2212";
            case LEFT_UNDONE -> "\u2716";
        };
    }
}
