package stillturning.desktop.view.breaking;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.PilotStep;
import stillturning.desktop.viewmodel.breaking.PilotStep.StepState;
import stillturning.report.EventLines;

/** What is to be done, and how it stands at the present time. */
final class StepsPane extends VBox {

    private final Breaking breaking;
    private List<PilotStep> steps = List.of();
    private List<StepState> shown = List.of();

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
        List<StepState> states = steps.stream().map(step -> step.at(now)).toList();
        if (!states.equals(shown) || getChildren().isEmpty()) {
            shown = states;
            getChildren().setAll(Labels.of("What the pilot has to do", "text-muted"));
            for (int i = 0; i < steps.size(); i++) {
                getChildren().add(box(steps.get(i), states.get(i)));
            }
            if (steps.isEmpty()) {
                getChildren().add(Labels.of("No procedure to follow.", "text-muted"));
            }
        }
    }

    private VBox box(PilotStep step, StepState state) {
        Label head =
                Labels.wrapped(
                        sign(state)
                                + "  "
                                + breaking.called(step.procedure())
                                + ": "
                                + words(step, state),
                        "step-head",
                        "step-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        String who = step.automatic().map(by -> "by itself, " + by + ": ").orElse("");
        return new VBox(
                head,
                Labels.wrapped(breaking.spoken(who + step.does()), "text-muted", "step-does"));
    }

    private static String words(PilotStep step, StepState state) {
        return switch (state) {
            case NOT_CALLED_FOR, LEFT_UNDONE -> state.words();
            case DUE, NEEDLESS -> at(state, step.dueSeconds());
            case DONE -> at(state, step.doneSeconds());
        };
    }

    private static String at(StepState state, OptionalDouble seconds) {
        return state.words() + " at " + EventLines.time(seconds.orElseThrow());
    }

    private static String sign(StepState state) {
        return switch (state) {
            case NOT_CALLED_FOR -> "\u25CB";
            case DUE -> "\u25D4";
            case DONE -> "\u2714";
            case NEEDLESS -> "\u2212";
            case LEFT_UNDONE -> "\u2716";
        };
    }
}
