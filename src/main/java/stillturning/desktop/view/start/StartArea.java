package stillturning.desktop.view.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Area;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.start.NewStudy;
import stillturning.desktop.viewmodel.start.NewStudy.Begun;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.Protection;
import stillturning.report.Cautions;

/** Where a study begins: a few questions, the demo, or what was open before. */
public final class StartArea implements Area {

    /** Ways out of this area. */
    public interface Doors {
        /** Opens a study. */
        void open(Path folder);

        /** Asks the user for a folder. */
        Optional<Path> choose(String title, Path from);
    }

    private final NewStudy beginning;
    private final ObjectProperty<Settings> settings;
    private final Doors doors;
    private final Label refusal = new Label();
    private final VBox recent = new VBox();
    private final ScrollPane view = new ScrollPane();

    public StartArea(NewStudy beginning, ObjectProperty<Settings> settings, Doors doors) {
        this.beginning = beginning;
        this.settings = settings;
        this.doors = doors;
        HBox columns = new HBox(questions(), others());
        columns.getStyleClass().add("start-columns");
        VBox page = new VBox(headline(), columns, caution());
        page.getStyleClass().add("start-page");
        view.setContent(page);
        view.setFitToWidth(true);
        view.getStyleClass().add("edge-to-edge");
        settings.addListener((of, before, now) -> listRecent());
        listRecent();
    }

    @Override
    public AreaName name() {
        return AreaName.START;
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
        Label title = new Label("After this failure, is the propeller still turning?");
        title.getStyleClass().add("title-1");
        Label words =
                wrapped(
                        "Describe how electricity reaches your engine in a few layouts. Every part"
                                + " of every layout is broken in turn, what follows is played in"
                                + " time, and you see which layout keeps the engine running, for"
                                + " how long, and what the pilot has to do.");
        return new VBox(title, words);
    }

    private static Node caution() {
        Label caution = wrapped(Cautions.SHORT);
        caution.getStyleClass().add("caution");
        return caution;
    }

    private Node questions() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.getColumnConstraints().addAll(asWideAsWords(), growing());
        TextField title = new TextField();
        title.setId("study-title");
        title.textProperty().bindBidirectional(beginning.title());
        row(grid, "Name of the study", title);
        row(grid, "Goes into", place());
        row(grid, "Batteries", count("Batteries", beginning.batteries()));
        row(grid, "Alternators", count("Alternators", beginning.alternators()));
        row(grid, "Engine computers", count("Engine computers", beginning.computers()));
        row(grid, "Fuel pumps", count("Fuel pumps", beginning.pumps()));
        row(
                grid,
                "Protected and switched by",
                new ChoiceQuestion<>(
                        "Protected and switched by",
                        beginning.protection(),
                        List.of(
                                new ChoiceQuestion.Choice<>(Protection.BREAKERS, "breakers"),
                                new ChoiceQuestion.Choice<>(
                                        Protection.SOLID_STATE, "solid state"))));
        row(
                grid,
                "Voltage while charging",
                new ChoiceQuestion<>(
                        "Voltage while charging",
                        beginning.nominal(),
                        List.of(
                                new ChoiceQuestion.Choice<>(Nominal.FOURTEEN_VOLTS, "14 V"),
                                new ChoiceQuestion.Choice<>(Nominal.TWENTY_EIGHT_VOLTS, "28 V"))));
        Button make = new Button("Make the study");
        make.setId("make-study");
        make.setDefaultButton(true);
        make.getStyleClass().add("accent");
        make.setOnAction(event -> take(beginning.begin()));
        refusal.getStyleClass().addAll("danger", "text");
        refusal.setWrapText(true);
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        return card(
                "A new study",
                "Eight answers give two or three layouts to start from and compare. Their values"
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
        HBox.setHgrow(place, Priority.ALWAYS);
        place.textProperty()
                .bind(
                        Bindings.createStringBinding(
                                () -> beginning.folder().map(Path::toString).orElse("\u2014"),
                                beginning.title(),
                                beginning.parent()));
        Tooltip whole = new Tooltip();
        whole.textProperty().bind(place.textProperty());
        place.setTooltip(whole);
        Button other = new Button("Elsewhere \u2026");
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.setOnAction(
                event ->
                        doors.choose("Where new studies go", beginning.parent().get())
                                .ifPresent(beginning.parent()::set));
        HBox box = new HBox(place, other);
        box.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("in-line");
        return box;
    }

    private Node others() {
        Button demo = new Button("Look at the demo");
        demo.setId("open-demo");
        demo.setOnAction(event -> take(beginning.sample()));
        Node sample =
                card(
                        "Sandpiper, a demo",
                        "An invented two-seat amphibian with six layouts, all its values and the"
                                + " builder's reasons. A copy of your own: change what you like.",
                        demo);
        Button folder = new Button("Open a folder \u2026");
        folder.setId("open-folder");
        folder.setOnAction(
                event ->
                        doors.choose("A study's folder", beginning.parent().get())
                                .ifPresent(doors::open));
        Node before =
                card(
                        "Go on with",
                        "A study is a folder with a study.yaml in it. You can also drag one into"
                                + " this window.",
                        recent,
                        folder);
        VBox column = new VBox(sample, before);
        column.getStyleClass().add("start-column");
        HBox.setHgrow(column, Priority.ALWAYS);
        return column;
    }

    private void listRecent() {
        recent.getChildren().setAll(settings.get().recent().stream().map(this::link).toList());
        if (recent.getChildren().isEmpty()) {
            recent.getChildren().add(wrapped("Nothing was open yet."));
        }
    }

    private Node link(String folder) {
        Path path = Path.of(folder);
        Hyperlink link = new Hyperlink(String.valueOf(path.getFileName()));
        link.setOnAction(event -> doors.open(path));
        link.setTooltip(new Tooltip(folder));
        link.setAccessibleText("Open " + folder);
        Label where = new Label(String.valueOf(path.getParent()));
        where.getStyleClass().add("text-muted");
        where.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
        HBox row = new HBox(link, where);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("in-line");
        return row;
    }

    private void take(Begun begun) {
        refusal.setText(begun instanceof Begun.Refused refused ? refused.words() : "");
        if (begun instanceof Begun.In in) {
            doors.open(in.folder());
        }
    }

    private static ChoiceQuestion<Integer> count(String question, ObjectProperty<Integer> answer) {
        return new ChoiceQuestion<>(
                question,
                answer,
                List.of(
                        new ChoiceQuestion.Choice<>(1, "one"),
                        new ChoiceQuestion.Choice<>(2, "two")));
    }

    private static void row(GridPane grid, String question, Node answer) {
        Label label = new Label(question);
        label.setLabelFor(answer);
        grid.addRow(grid.getRowCount(), label, answer);
    }

    private static ColumnConstraints asWideAsWords() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(Region.USE_PREF_SIZE);
        return column;
    }

    private static ColumnConstraints growing() {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(Priority.ALWAYS);
        return column;
    }

    private static Node card(String title, String words, Node... rest) {
        Label heading = new Label(title);
        heading.getStyleClass().add("title-3");
        VBox card = new VBox(heading, wrapped(words));
        card.getChildren().addAll(rest);
        card.getStyleClass().add("card-box");
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }

    private static Label wrapped(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
