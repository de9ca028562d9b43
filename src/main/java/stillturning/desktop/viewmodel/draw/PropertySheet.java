package stillturning.desktop.viewmodel.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.draft.edits.StudyEdits;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.ChangeRefused;
import stillturning.quantity.UnitSystem;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;
import stillturning.yaml.notation.Checked;
import stillturning.yaml.shape.Form;
import stillturning.yaml.shape.FormField;

/**
 * The values of what is chosen, as lines to be filled in; each text that is taken is one change. A
 * text with a fault stays where it was typed, until it is mended or another thing is chosen.
 */
public final class PropertySheet {

    private final Desk desk;
    private final Consumer<ChangeWork> maker;
    private final ObservableList<FormRow> rows = FXCollections.observableArrayList();
    // kept, since listeners at a view of a list are heard only as long as somebody has the view
    private final ObservableList<FormRow> shownRows =
            FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper inside = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<Adding>> adding =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Deque<FormPlace> opened = new ArrayDeque<>();
    private final Map<String, String> faulty = new HashMap<>();
    private List<FormPlace> shown = List.of();
    private String heading = "";

    /**
     * What one more entry of a list or of names needs.
     *
     * @param named whether it needs a name
     * @param kinds the kinds of which it is one; empty if there is only one
     */
    public record Adding(boolean named, List<String> kinds) {
        public Adding {
            kinds = List.copyOf(kinds);
        }
    }

    PropertySheet(Desk desk, Consumer<ChangeWork> maker) {
        this.desk = desk;
        this.maker = maker;
    }

    /** The lines, in the order of the schema. */
    public ObservableList<FormRow> rows() {
        return shownRows;
    }

    /** What the lines are about. */
    public ReadOnlyStringProperty title() {
        return title.getReadOnlyProperty();
    }

    /** Whether a group of what is chosen is open, so that one can go back. */
    public ReadOnlyBooleanProperty inside() {
        return inside.getReadOnlyProperty();
    }

    /** Whether one more entry can be added here, and what it needs. */
    public ReadOnlyObjectProperty<Optional<Adding>> adding() {
        return adding.getReadOnlyProperty();
    }

    /** Shows these places one below the other. */
    void show(String about, List<FormPlace> places) {
        if (!places.equals(shown)) {
            opened.clear();
            faulty.clear();
        }
        heading = about;
        shown = List.copyOf(places);
        refresh();
    }

    /** Opens the form that a line leads to. */
    public void open(FormRow row) {
        opened.push(
                new FormPlace(row.inStudy(), DocumentPlaces.keys(row.field().path()), List.of()));
        refresh();
    }

    /** Goes back to the form that led here. */
    public void back() {
        if (!opened.isEmpty()) {
            opened.pop();
            refresh();
        }
    }

    /** What a reader would say of a text that is being typed. */
    public Optional<Checked.TextFault> fault(FormRow row, String text) {
        return row.field().check(text).fault();
    }

    /** Takes a text: as one change if it is right, else the fault is kept beside it. */
    public void take(FormRow row, String text) {
        String path = row.field().path();
        if (text.strip().equals(row.text()) && !faulty.containsKey(path)) {
            return;
        }
        Checked checked = row.field().check(text);
        if (checked.fault().isPresent()) {
            faulty.put(path, text);
            refresh();
            return;
        }
        boolean wasFaulty = faulty.remove(path) != null;
        if (wasFaulty && text.strip().equals(written(row.field()))) {
            refresh();
        } else if (checked.value().isPresent()) {
            maker.accept(() -> set(row, checked.value().get()));
        } else if (row.field().text().isPresent()) {
            maker.accept(() -> clear(row));
        } else {
            refresh();
        }
    }

    private String written(FormField field) {
        return field.text().map(t -> field.shown(t, units())).orElse("");
    }

    /** Adds one more entry, to be filled in. */
    public void add(String name, Optional<String> kind) {
        FormPlace place = place();
        String change = ("Add " + name).strip();
        form(place)
                .flatMap(Form::further)
                .ifPresent(
                        more -> maker.accept(() -> added(place, more, name, kind).named(change)));
    }

    private Change added(FormPlace place, FormField more, String name, Optional<String> kind)
            throws ChangeRefused {
        String mapping = form(place).map(Form::path).orElse("");
        YamlValue value =
                kind.flatMap(k -> more.kindKey().map(key -> YamlValue.field(key, k)))
                        .<YamlValue>map(YamlValue::fields)
                        .or(() -> more.check(more.example()).value())
                        .orElseGet(YamlValue::fields);
        if (more.isItem()) {
            return edit(place.inStudy(), new YamlEdit.AddItem(mapping, value));
        }
        return place.inStudy()
                ? studyEdits().set(mapping, name, value)
                : Change.of(candidateEdits().setAt(mapping, name, value));
    }

    private Change edit(boolean inStudy, YamlEdit edit) {
        String file = inStudy ? Desk.STUDY_FILE : Desk.file(desk.candidate().get());
        return new Change("Change " + file, List.of(new DraftStep.Edit(file, edit)));
    }

    private Change set(FormRow row, YamlValue value) throws ChangeRefused {
        String name = "Set " + row.label() + " of " + heading;
        String key = row.field().key();
        if (key.isEmpty()) {
            return edit(row.inStudy(), new YamlEdit.Set(row.field().path(), value)).named(name);
        }
        Change change =
                row.inStudy()
                        ? studyEdits().set(row.mapping(), key, value)
                        : Change.of(candidateEdits().setAt(row.mapping(), key, value));
        return change.named(name);
    }

    private Change clear(FormRow row) throws ChangeRefused {
        String path = row.field().path();
        Change change =
                row.inStudy()
                        ? studyEdits().clear(path)
                        : Change.of(candidateEdits().clearAt(path));
        return change.named("Clear " + row.label() + " of " + heading);
    }

    private CandidateEdits candidateEdits() throws ChangeRefused {
        return new CandidateEdits(
                document(Desk.file(desk.candidate().get())), document(Desk.STUDY_FILE));
    }

    private StudyEdits studyEdits() throws ChangeRefused {
        return new StudyEdits(document(Desk.STUDY_FILE), List.of());
    }

    private YamlDocument document(String file) throws ChangeRefused {
        return desk.draft()
                .document(file)
                .orElseThrow(() -> new ChangeRefused("there is no file " + file + " any more"));
    }

    /** Makes the lines again, from the texts as they are now. */
    void refresh() {
        List<FormRow> now = new ArrayList<>();
        List<FormPlace> places = opened.isEmpty() ? shown : List.of(opened.element());
        for (FormPlace place : places) {
            form(place).ifPresent(form -> addRows(place, form, now));
        }
        if (!rows.equals(now)) {
            rows.setAll(now);
        }
        title.set(opened.isEmpty() ? heading : opened.element().title());
        inside.set(!opened.isEmpty());
        adding.set(
                Optional.of(place())
                        .filter(p -> p.only().isEmpty())
                        .flatMap(this::form)
                        .flatMap(Form::further)
                        .map(more -> new Adding(!more.isItem(), more.kinds())));
    }

    private void addRows(FormPlace place, Form form, List<FormRow> rows) {
        form.fields().stream()
                .filter(place::shows)
                .forEach(field -> rows.add(row(place, form, field)));
    }

    private FormPlace place() {
        return opened.isEmpty()
                ? shown.stream().findFirst().orElse(FormPlace.candidate())
                : opened.element();
    }

    private Optional<Form> form(FormPlace place) {
        Optional<YamlDocument> study = desk.draft().document(Desk.STUDY_FILE);
        Optional<YamlDocument> candidate = desk.draft().document(Desk.file(desk.candidate().get()));
        return study.flatMap(s -> candidate.flatMap(c -> place.form(s, c)));
    }

    private FormRow row(FormPlace place, Form form, FormField field) {
        String text = written(field);
        Optional<String> kept = Optional.ofNullable(faulty.get(field.path()));
        String key = field.key().isEmpty() ? field.path() : field.key();
        return new FormRow(
                field,
                place.inStudy(),
                form.path(),
                key.replace('-', ' '),
                kept.orElse(text),
                field.otherwise().map(t -> field.shown(t, units())).orElse(""),
                kept.or(field::text)
                        .filter(t -> !field.input().hasFormOfItsOwn())
                        .flatMap(t -> field.check(t).fault()));
    }

    private UnitSystem units() {
        return desk.settings().get().units();
    }
}
