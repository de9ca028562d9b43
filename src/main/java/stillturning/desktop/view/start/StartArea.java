package stillturning.desktop.view.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.start.ChoiceQuestion.ChoiceOption;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.start.NewStudy;
import stillturning.desktop.viewmodel.start.NewStudy.Begun;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.report.Cautions;

/** Where a study begins: a few questions, the demo, or what was open before. */
public final class StartArea implements Area {

    /**
     * Ways out of this area.
     *
     * @param open opens a study
     * @param chooser asks the user for a folder, by a title and where to start looking
     */
    public record Doors(Consumer<Path> open, BiFunction<String, Path, Optional<Path>> chooser) {}

    /** Room that two columns need (em). */
    private static final double BROAD = 68;

    private final NewStudy study;
    private final ObjectProperty<Settings> settings;
    private final Doors doors;
    private final Label refusal = Labels.refusal();
    private final VBox recent = new VBox();
    private final ScrollPane view = new ScrollPane();

    public StartArea(NewStudy study, ObjectProperty<Settings> settings, Doors doors) {
        this.study = study;
        this.settings = settings;
        this.doors = doors;
        Node questions = questions();
        Node others = others();
        HBox columns = new HBox(questions, others);
        columns.getStyleClass().add("start-columns");
        VBox oneColumn = new VBox();
        oneColumn.getStyleClass().add("start-columns");
        Label caution = Labels.wrapped(Cautions.SHORT, "caution");
        VBox page = new VBox(headline(), columns, oneColumn, caution);
        view.widthProperty()
                .addListener(
                        (of, before, now) -> {
                            boolean one = now.doubleValue() < BROAD * caution.getFont().getSize();
                            columns.getChildren()
                                    .setAll(one ? List.of() : List.of(questions, others));
                            oneColumn
                                    .getChildren()
                                    .setAll(one ? List.of(questions, others) : List.of());
                            Showing.set(columns, !one);
                            Showing.set(oneColumn, one);
                        });
        page.getStyleClass().add("start-page");
        Layout.scroll(view, page);
        settings.addListener((of, before, now) -> listRecent());
        listRecent();
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        listRecent();
    }

    private static Node headline() {
        String question = "After this failure, is the propeller still turning?";
        Label words =
                Labels.wrapped(
                        "Describe how electricity reaches your engine in a few layouts. Every part"
                                + " of every layout is broken in turn, what follows is played in"
                                + " time, and you see which layout keeps the engine running, for"
                                + " how long, and what the pilot has to do.");
        return new VBox(Labels.wrapped(question, "title-1"), words);
    }

    private Node questions() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.getColumnConstraints().addAll(Layout.asWideAsWords(), Layout.growing());
        TextField title = new TextField();
        title.setId("study-title");
        title.textProperty().bindBidirectional(study.title());
        row(grid, "Name of the study", title);
        row(grid, "Goes into", place());
        List<ChoiceOption<Integer>> counts =
                List.of(new ChoiceOption<>(1, "one"), new ChoiceOption<>(2, "two"));
        ask(grid, "Batteries", study.numbers().batteries(), counts);
        ask(grid, "Alternators", study.numbers().alternators(), counts);
        ask(grid, "Engine computers", study.numbers().computers(), counts);
        ask(grid, "Fuel pumps", study.numbers().pumps(), counts);
        ask(
                grid,
                "Protected and switched by",
                study.protection(),
                List.of(
                        new ChoiceOption<>(LoadProtection.BREAKERS, "breakers"),
                        new ChoiceOption<>(LoadProtection.SOLID_STATE, "solid state")));
        ask(
                grid,
                "Voltage while charging",
                study.nominal(),
                List.of(
                        new ChoiceOption<>(Nominal.FOURTEEN_VOLTS, "14 V"),
                        new ChoiceOption<>(Nominal.TWENTY_EIGHT_VOLTS, "28 V")));
        ask(
                grid,
                "Structure that leads current",
                study.structure(),
                List.of(
                        new ChoiceOption<>(AirframeStructure.METAL, "metal"),
                        new ChoiceOption<>(AirframeStructure.NONE, "none (wood, composite)")));
        Button make = Controls.button("Make the study", "make-study", () -> take(study.begin()));
        make.setDefaultButton(true);
        make.getStyleClass().add("accent");

        return card(
                "A new study",
                "Nine answers give four layouts to start from and compare. Their values"
                        + " are guesses until you put yours in their place.",
                grid,
                refusal,
                make);
    }

    private Node place() {
        Label place = new Label();
        place.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
        place.setMinWidth(0);
        place.setMaxWidth(Double.MAX_VALUE);
        place.textProperty()
                .bind(
                        Bindings.createStringBinding(
                                () -> study.folder().map(Path::toString).orElse("\u2014"),
                                study.title(),
                                study.parent()));
        Tooltip whole = new Tooltip();
        whole.textProperty().bind(place.textProperty());
        place.setTooltip(whole);
        Button other =
                Controls.button(
                        "Elsewhere \u2026",
                        "study-place",
                        () -> choose("Where new studies go").ifPresent(study.parent()::set));
        return Layout.inLine(Layout.wide(place), other);
    }

    private Node others() {
        Button demo = Controls.button("Look at the demo", "open-demo", () -> take(study.sample()));
        Node sample =
                card(
                        "Sandpiper, a demo",
                        "An invented two-seat amphibian with seven layouts, all its values and the"
                                + " builder's reasons. A copy of your own: change what you like.",
                        demo);
        Button folder =
                Controls.button(
                        "Open a folder \u2026",
                        "open-folder",
                        () -> choose("A study's folder").ifPresent(doors.open));
        Node before =
                card(
                        "Go on with",
                        "A study is a folder with a study.yaml in it. You can also drag one into"
                                + " this window.",
                        recent,
                        folder);
        VBox column = new VBox(sample, before);
        column.getStyleClass().add("start-column");
        return Layout.wide(column);
    }

    private Optional<Path> choose(String title) {
        return doors.chooser.apply(title, study.parent().get());
    }

    private void listRecent() {
        recent.getChildren().setAll(settings.get().recent().stream().map(this::link).toList());
        if (recent.getChildren().isEmpty()) {
            recent.getChildren().add(Labels.wrapped("Nothing was open yet."));
        }
    }

    private Node link(String folder) {
        Path path = Path.of(folder);
        Hyperlink link = new Hyperlink(String.valueOf(path.getFileName()));
        link.setOnAction(event -> doors.open.accept(path));
        link.setTooltip(new Tooltip(folder));
        link.setAccessibleText("Open " + folder);
        Label where = Labels.of(String.valueOf(path.getParent()), "text-muted");
        where.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
        return Layout.inLine(link, where);
    }

    private void take(Begun begun) {
        refusal.setText(begun.refusal());
        begun.folder().ifPresent(doors.open);
    }

    private static <T> void ask(
            GridPane grid,
            String question,
            ObjectProperty<T> answer,
            List<ChoiceOption<T>> answers) {
        row(grid, question, new ChoiceQuestion<>(question, answer, answers));
    }

    private static void row(GridPane grid, String question, Node answer) {
        Label label = new Label(question);
        label.setLabelFor(answer);
        grid.addRow(grid.getRowCount(), label, answer);
    }

    private static Node card(String title, String words, Node... rest) {
        VBox card = new VBox(Labels.wrapped(title, "title-3"), Labels.wrapped(words));
        card.getChildren().addAll(rest);
        card.getStyleClass().add("card-box");
        return Layout.wide(card);
    }
}
