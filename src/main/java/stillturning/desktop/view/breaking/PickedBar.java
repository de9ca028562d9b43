package stillturning.desktop.view.breaking;

import java.util.Locale;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureChoice;
import stillturning.desktop.viewmodel.breaking.MomentChoice;
import stillturning.story.Pilot;

/** What fails, when, and what the pilot does about it. */
final class PickedBar extends FlowPane {

    private final Breaking breaking;
    private final HBox picked = Layout.inLine();
    private final Chooser<MomentChoice> when;

    PickedBar(Breaking breaking) {
        this.breaking = breaking;
        getStyleClass().add("picked-bar");

        when =
                new Chooser<>(
                        "When in the flight it happens",
                        MomentChoice::words,
                        chosen -> breaking.moment().set(Optional.of(chosen.moment())));
        when.setId("break-moment");
        when.getStyleClass().add("moment");
        getChildren().addAll(picked, Layout.named("during", when), Layout.named("pilot", pilot()));
        breaking.picked().addListener((ListChangeListener<FailureChoice>) change -> list());
        breaking.played().addListener((of, before, now) -> offer());
        list();
        offer();
    }

    private Node pilot() {
        HBox buttons = new HBox();
        ToggleGroup group = new ToggleGroup();
        for (Pilot pilot : Pilot.values()) {
            ToggleButton button = new ToggleButton(pilot.words());
            button.setId("pilot-" + pilot.name().toLowerCase(Locale.ROOT));
            button.setAccessibleText("Pilot acts " + pilot.words());
            button.setToggleGroup(group);
            button.getStyleClass()
                    .add(
                            pilot == Pilot.PLANNED
                                    ? "left-pill"
                                    : pilot == Pilot.NEVER ? "right-pill" : "center-pill");
            button.setSelected(breaking.pilot().get() == pilot);
            button.setOnAction(event -> breaking.pilot().set(pilot));
            breaking.pilot().addListener((of, before, now) -> button.setSelected(now == pilot));
            buttons.getChildren().add(button);
        }
        return buttons;
    }

    private void offer() {
        breaking.moments().stream()
                .filter(w -> breaking.moment().get().map(w.moment()::equals).orElse(true))
                .findFirst()
                .ifPresent(chosen -> when.offer(breaking.moments(), chosen));
    }

    private void list() {
        picked.getChildren().clear();
        if (breaking.picked().isEmpty()) {
            picked.getChildren().add(Labels.of("Nothing fails yet.", "text-muted"));
        }
        for (FailureChoice choice : breaking.picked()) {
            Button away = new Button(breaking.calledFailure(choice.name()) + "  \u00D7");
            away.getStyleClass().addAll("picked-failure", "small");
            away.setAccessibleText("Let it not fail: " + breaking.calledFailure(choice.name()));
            away.setOnAction(event -> breaking.alsoPick(choice));
            picked.getChildren().add(away);
        }
    }
}
