package stillturning.desktop.view.breaking;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Folded;
import stillturning.desktop.view.Folded.FoldedPane;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.picture.PictureView;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureMatrix;
import stillturning.desktop.viewmodel.breaking.JointFailures;
import stillturning.desktop.viewmodel.breaking.PlayedFailure;

/** Breaking parts and watching what follows; and all failures of all candidates at a glance. */
public final class BreakArea implements Area {

    private static final double[] COLUMNS = {0.2, 0.74};

    /** Opacity of what is not of now. */
    private static final double OLDER = 0.4;

    private static final double STORY_OVER_STEPS = 0.7;
    private static final double DIAGRAM_OVER_PLOT = 0.66;

    /** Room that the columns need beside each other, and the pictures below each other (em). */
    private static final double BROAD = 66;

    private static final double HIGH = 28;
    private static final double HIGH_WORDS = 24;

    private final Breaking breaking;
    private final DiagramPane diagram;
    private final TimeBar timeBar;
    private final PlotPane plot;
    private final StoryPane story;
    private final StepsPane steps;
    private final EndingPane ending;
    private final LoadsPane loads;
    private final Label outcome = Labels.wrapped("", "title-4", "break-outcome");
    private final Label notice = Labels.notice("break-notice", "warning");
    private final Folded columns;
    private final Tab one;
    private final TabPane view;

    public BreakArea(Desk desk) {
        PictureView paper = new PictureView();
        breaking = new Breaking(desk, paper.shape());
        diagram = new DiagramPane(breaking, paper);
        timeBar = new TimeBar(breaking);
        plot = new PlotPane(breaking);
        story = new StoryPane(breaking);
        steps = new StepsPane(breaking);
        ending = new EndingPane(breaking);
        loads = new LoadsPane(breaking);
        columns =
                new Folded(
                                Orientation.HORIZONTAL,
                                BROAD,
                                COLUMNS,
                                List.of(
                                        new FoldedPane("What fails?", new FailureList(breaking)),
                                        new FoldedPane("What happens", middle()),
                                        new FoldedPane("In words", right())))
                        .keeping(0)
                        .keeping(2)
                        .named("break-fold");
        one = Layout.tab("One story", columns);
        MatrixPane matrix = new MatrixPane(new FailureMatrix(desk));
        view =
                new TabPane(
                        one,
                        Layout.tab("All failures", Layout.roomy(matrix)),
                        Layout.tab("Two together", new JointFailuresPane(new JointFailures(desk))));
        view.setId("break-tabs");
        breaking.played().addListener((of, before, now) -> take());
        breaking.pilot().addListener((of, before, now) -> take());
        breaking.coming().addListener((of, before, now) -> tellOutcome(told()));
        breaking.refusal().addListener((of, before, now) -> warn());
        desk.read().addListener((of, before, now) -> warn());
        take();
    }

    private Node middle() {
        Folded pictures =
                Layout.high(
                        new Folded(
                                        Orientation.VERTICAL,
                                        HIGH,
                                        new double[] {DIAGRAM_OVER_PLOT},
                                        List.of(
                                                new FoldedPane("Diagram", diagram),
                                                new FoldedPane("Over time", plot)))
                                .named("pictures-fold"));
        pictures.getStyleClass().add("least-pictures");
        VBox middle = new VBox(new PickedBar(breaking), notice, timeBar, pictures);
        return Layout.roomy(middle);
    }

    private Node right() {
        outcome.setId("break-outcome");
        ScrollPane scroll = new ScrollPane();
        Layout.scroll(scroll, steps);
        Folded words =
                new Folded(
                                Orientation.VERTICAL,
                                HIGH_WORDS,
                                new double[] {STORY_OVER_STEPS},
                                List.of(
                                        new FoldedPane("What happens", story),
                                        new FoldedPane("What to do", scroll)))
                        .named("words-fold");
        TabPane tabs =
                new TabPane(
                        Layout.tab("Events", words),
                        Layout.tab("Loads", loads),
                        Layout.tab("Outcome", ending));
        tabs.setId("story-tabs");
        return new VBox(outcome, Layout.high(tabs));
    }

    private void take() {
        tellOutcome(told());
        timeBar.mark();
        plot.take();
        story.tell();
        steps.take();
        ending.take();
        loads.take();
        diagram.show();
        warn();
    }

    /** What is shown belongs to what is picked, or it is said that it does not yet. */
    private void tellOutcome(Optional<PlayedFailure> told) {
        boolean coming = breaking.coming().get();
        outcome.setText(
                coming
                        ? "\u2026  being played"
                        : told.map(p -> EndingPane.outcome(breaking, p)).orElse("Nothing fails"));
        for (Node older : List.of(diagram, plot, story, steps, ending, loads)) {
            older.setOpacity(coming ? OLDER : 1);
        }
    }

    private Optional<PlayedFailure> told() {
        return breaking.played().get().filter(p -> !breaking.picked().isEmpty());
    }

    DiagramPane diagram() {
        return diagram;
    }

    private void warn() {
        notice.setText(breaking.notice());
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        destination
                .subject()
                .ifPresent(
                        subject -> {
                            view.getSelectionModel().select(one);
                            columns.front(1);
                            if (!breaking.pick(subject)) {
                                breaking.search().set(subject);
                            }
                        });
    }
}
