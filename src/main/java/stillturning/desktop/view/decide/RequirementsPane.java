package stillturning.desktop.view.decide;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.WrappedCell;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DifferenceRow.CandidateFailure;
import stillturning.model.Candidate;
import stillturning.report.Spoken;

/** Each requirement against each candidate, and the failures that break it. */
final class RequirementsPane extends VBox {

    private static final PseudoClass MISSED = PseudoClass.getPseudoClass("missed");

    /** Share of the width for the titles of candidates, and what the frame takes of it. */
    private static final double NAME = 0.31;

    private static final double MARGIN = 18;

    /** Least width of the titles (em). */
    private static final double NAME_LEAST = 9.5;

    /** Least width of what is said of a requirement (em). */
    private static final double SAID_LEAST = 5.9;

    /** What a requirement says of a candidate. */
    private record Judged(Appraisal appraisal, RequirementMet met) {
        Candidate candidate() {
            return appraisal.candidate();
        }
    }

    private final Deciding deciding;
    private final TableView<Appraisal> table = new TableView<>();
    private final Label reason = Labels.wrapped("");
    private final Button mend =
            Controls.button("What would mend this?", "mend-requirement", this::mend);
    private final ListView<String> failures = new ListView<>();
    private Optional<Judged> chosen = Optional.empty();

    RequirementsPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        table.setId("requirements");
        table.getStyleClass().add("least-high");
        table.setAccessibleText("Requirements by candidate");
        table.getSelectionModel().setCellSelectionEnabled(true);
        table.getSelectionModel().getSelectedCells().addListener((Observable cells) -> choose());
        table.setPlaceholder(
                Labels.empty(
                        "The study asks for nothing yet. Write requirements: into the study, such"
                                + " as endurance-without-charging: 30 min, and every candidate is"
                                + " held against them here."));
        failures.setId("breaking-failures");
        failures.setAccessibleText("Failures that break the requirement; Enter opens the story");
        failures.setCellFactory(of -> new CulpritCell());
        failures.setPlaceholder(Labels.empty("No failure breaks it."));
        Controls.onOpen(failures, this::open);
        failures.getStyleClass().addAll("dense", "breaking-failures");
        failures.setMinHeight(Region.USE_PREF_SIZE);
        HBox why = Layout.inLine(Layout.wide(reason), mend);
        reason.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(Layout.high(table), why, failures);
        deciding.appraisals().addListener((value, from, to) -> refill(to));
        refill(deciding.appraisals().get());
    }

    private void refill(List<Appraisal> appraisals) {
        List<RequirementMet> asked = appraisals.isEmpty() ? List.of() : appraisals.get(0).met();
        double all = asked.stream().mapToDouble(met -> least(met.requirement())).sum();
        TableColumn<Appraisal, String> name =
                column("Candidate", appraisal -> appraisal.candidate().title());
        name.setCellFactory(column -> new WrappedCell<>());
        broad(name, letter -> nameWidth(letter, all));
        table.getColumns().clear();
        table.getColumns().add(name);
        for (int i = 0; i < asked.size(); i++) {
            table.getColumns().add(column(asked.get(i).requirement(), i, all));
        }
        table.getItems().setAll(asked.isEmpty() ? List.of() : appraisals);
        chosen = Optional.empty();
        selectFirstMissed();
        tell();
    }

    /** Least width of the column of a requirement (em). */
    private static double least(String requirement) {
        return Math.max(SAID_LEAST, Layout.narrowest(requirement));
    }

    /** Its share, or less where the requirements need the room. */
    private double nameWidth(double letter, double all) {
        double width = table.getWidth() - MARGIN;
        return Math.max(NAME_LEAST * letter, Math.min(NAME * width, width - all * letter));
    }

    private void broad(TableColumn<?, ?> column, DoubleUnaryOperator width) {
        column.prefWidthProperty()
                .bind(
                        Bindings.createDoubleBinding(
                                () -> width.applyAsDouble(reason.getFont().getSize()),
                                table.widthProperty(),
                                reason.fontProperty()));
    }

    private static <T> TableColumn<Appraisal, T> column(String head, Function<Appraisal, T> value) {
        TableColumn<Appraisal, T> column = new TableColumn<>(head);
        column.setCellValueFactory(
                line -> new ReadOnlyObjectWrapper<>(value.apply(line.getValue())));
        column.setSortable(false);
        return column;
    }

    /**
     * @param all least width of the columns of all requirements (em)
     */
    private TableColumn<Appraisal, Judged> column(String requirement, int index, double all) {
        TableColumn<Appraisal, Judged> column = column("", appraisal -> judged(appraisal, index));
        Layout.narrowHead(column, requirement);
        broad(
                column,
                letter ->
                        Math.max(
                                least(requirement) * letter,
                                (table.getWidth() - MARGIN - nameWidth(letter, all))
                                        * least(requirement)
                                        / all));
        column.setCellFactory(c -> new MetCell());
        return column;
    }

    private static Judged judged(Appraisal appraisal, int index) {
        return new Judged(appraisal, appraisal.met().get(index));
    }

    private void selectFirstMissed() {
        for (int row = 0; row < table.getItems().size(); row++) {
            List<RequirementMet> met = table.getItems().get(row).met();
            for (int i = 0; i < met.size(); i++) {
                if (!met.get(i).met()) {
                    table.getSelectionModel().select(row, table.getColumns().get(i + 1));
                    return;
                }
            }
        }
    }

    private void choose() {
        chosen =
                table.getSelectionModel().getSelectedCells().stream()
                        .findFirst()
                        .filter(at -> at.getRow() >= 0 && at.getColumn() > 0)
                        .map(at -> judged(table.getItems().get(at.getRow()), at.getColumn() - 1));
        tell();
    }

    private void tell() {
        reason.setText(chosen.map(RequirementsPane::words).orElse("Choose a cell to read why."));
        Showing.set(mend, chosen.filter(c -> !c.met.met()).isPresent());
        failures.getItems().setAll(chosen.map(c -> c.met.culprits()).orElse(List.of()));
    }

    private void mend() {
        chosen.ifPresent(c -> deciding.mend(c.appraisal, c.met));
    }

    private static String words(Judged judged) {
        RequirementMet met = judged.met;
        return judged.candidate().title()
                + " \u2013 "
                + met.requirement()
                + ": "
                + word(met)
                + ", "
                + met.reason()
                + (met.margin().isEmpty() ? "" : ", " + met.margin())
                + (met.culprits().isEmpty() ? "." : ". Enter on a failure opens its story.");
    }

    private static String word(RequirementMet met) {
        return met.met() ? "\u2713 met" : "\u2716 missed";
    }

    private void open() {
        String failure = failures.getSelectionModel().getSelectedItem();
        if (failure != null) {
            chosen.ifPresent(c -> deciding.open(new CandidateFailure(c.candidate().id(), failure)));
        }
    }

    /** A failure as a person calls it. */
    private final class CulpritCell extends ItemCell<String> {
        private final Label words = Labels.wrapped("");

        @Override
        protected void show(String failure) {
            words.setText(
                    chosen.map(c -> new Spoken(c.candidate()).failure(failure)).orElse(failure));
            setGraphic(words);
            setAccessibleText(words.getText());
        }
    }

    /** A verdict by sign and word. */
    private static final class MetCell extends TableCell<Appraisal, Judged> {

        MetCell() {
            getStyleClass().add("met-cell");
        }

        @Override
        protected void updateItem(@Nullable Judged judged, boolean empty) {
            super.updateItem(judged, empty);
            Optional<Judged> shown = empty ? Optional.empty() : Optional.ofNullable(judged);
            pseudoClassStateChanged(MISSED, shown.filter(j -> !j.met.met()).isPresent());
            setText(shown.map(j -> text(j.met)).orElse(null));
            setAccessibleText(shown.map(RequirementsPane::words).orElse(null));
        }

        private static String text(RequirementMet met) {
            boolean counted = !met.met() && !met.culprits().isEmpty();
            return counted ? "\u2716 by " + met.culprits().size() : word(met);
        }
    }
}
