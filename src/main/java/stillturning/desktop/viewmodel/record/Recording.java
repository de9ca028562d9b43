package stillturning.desktop.viewmodel.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.record.AskedFor;
import stillturning.dossier.record.AskedGroup;
import stillturning.dossier.record.Causes;
import stillturning.dossier.record.Entered;
import stillturning.dossier.record.Held;
import stillturning.dossier.record.Recorded;
import stillturning.dossier.record.ValueOffers;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.record.BlankForm.FilledIn;
import stillturning.files.record.FormReader;
import stillturning.files.record.MeasuredEntry;
import stillturning.files.record.MeasuredFile;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.groundtest.GroundTests;
import stillturning.report.page.Block;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.FormLine;
import stillturning.report.record.MeasuredSheet;
import stillturning.story.UntoldStory;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/**
 * What was measured of the candidate that is open: entered, held against what is predicted, added
 * to its record. To be used on the screen's thread.
 */
public final class Recording {

    /** The work before anything can be entered, as the user reads of it. */
    public static final String PLANNING = "Planning what can be measured";

    /** The work of comparing, as the user reads of it. */
    public static final String COMPARING = "Holding what was measured against what is predicted";

    private final Desk desk;
    private final Supplier<String> today;
    private final ObservableList<EntryGroup> groups = FXCollections.observableArrayList();
    private final StringProperty date = new SimpleStringProperty("");
    private final StringProperty by = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper advice = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<AsBuilt>> built =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<TypedForm> form = Optional.empty();
    private Optional<Entered> entered = Optional.empty();
    private Optional<FilledIn> recorded = Optional.empty();
    private boolean looking;

    /**
     * @param today the day that a new entry is proposed to be of, such as 2026-05-17
     */
    public Recording(Desk desk, Supplier<String> today) {
        this.desk = desk;
        this.today = today;
        desk.read().addListener((of, before, now) -> anew());
        desk.candidate().addListener((of, before, now) -> anew());
    }

    /** The blanks, group by group; none before they are planned. */
    public ObservableList<EntryGroup> groups() {
        return groups;
    }

    /** Day of the measurements. */
    public StringProperty date() {
        return date;
    }

    /** Who measured. */
    public StringProperty by() {
        return by;
    }

    /** Of which candidate. */
    public ReadOnlyStringProperty title() {
        return title.getReadOnlyProperty();
    }

    /** What to do, or what was done, in sentences. */
    public ReadOnlyStringProperty advice() {
        return advice.getReadOnlyProperty();
    }

    /** What could not be done, and what to do; empty if nothing. */
    public ReadOnlyStringProperty refusal() {
        return refusal.getReadOnlyProperty();
    }

    /** Whether something is being computed. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** What came of comparing; absent before. */
    public ReadOnlyObjectProperty<Optional<AsBuilt>> built() {
        return built.getReadOnlyProperty();
    }

    /** The same in words. */
    public List<Block> blocks() {
        return built.get().map(MeasuredSheet::of).orElse(List.of());
    }

    /** To be told whether somebody looks at it: it is planned only then. */
    public void look(boolean now) {
        looking = now;
        if (looking && form.isEmpty() && !working.get()) {
            plan();
        }
    }

    private void anew() {
        keep();
        desk.work().cancel(PLANNING);
        desk.work().cancel(COMPARING);
        working.set(false);
        form = Optional.empty();
        forget();
        groups.clear();
        if (looking) {
            plan();
        }
    }

    private void forget() {
        entered = Optional.empty();
        built.set(Optional.empty());
    }

    private void plan() {
        Optional<Candidate> open = desk.openCandidate();
        Optional<Study> study = desk.study();
        refusal.set("");
        title.set(open.map(Candidate::title).orElse(""));
        if (open.isEmpty() || study.isEmpty()) {
            advice.set("The candidate has a mistake; once it is mended, it can be predicted.");
            return;
        }
        ReadStudy read = desk.read().get();
        StudyReader reader = desk.draft().reader();
        int all = GroundTests.tries(open.get());
        int[] done = {0};
        working.set(true);
        advice.set("The ground test is planned anew, to know what can be measured in it.");
        desk.work()
                .start(
                        PLANNING,
                        progress -> {
                            AskedFor asked =
                                    AskedFor.planned(
                                            study.get(),
                                            read,
                                            open.get(),
                                            tried -> {
                                                synchronized (done) {
                                                    done[0]++;
                                                }
                                                progress.report((double) done[0] / all, tried);
                                            });
                            return new Planned(asked.groups(), TypedForm.of(asked, folder(reader)));
                        },
                        this::take,
                        this::refuse);
    }

    private record Planned(List<AskedGroup> groups, TypedForm.FoundRecord found) {}

    private static Path folder(StudyReader reader) {
        return Recorded.folder(reader).orElseGet(() -> Path.of(""));
    }

    private void take(Planned planned) {
        working.set(false);
        form = Optional.of(planned.found.form());
        FilledIn written = planned.found.written();
        date.set(written.date().isEmpty() ? today.get() : written.date());
        by.set(written.by());
        groups.setAll(
                planned.groups.stream()
                        .map(
                                group ->
                                        new EntryGroup(
                                                group.title(),
                                                group.lines().stream()
                                                        .map(line -> entry(line, written))
                                                        .toList()))
                        .toList());
        advice.set(planned.found.invitation());
    }

    private static Entry entry(FormLine line, FilledIn written) {
        return new Entry(line, written.values().getOrDefault(line.path(), ""));
    }

    private void refuse(Exception reason) {
        working.set(false);
        refusal.set(String.valueOf(reason.getMessage()));
    }

    /** Keeps what is typed in a file of its own, so that nothing is lost before it is recorded. */
    public void keep() {
        if (form.isEmpty() || recorded.filter(written()::equals).isPresent()) {
            return;
        }
        try {
            form.get().keep(written());
        } catch (IOException | UntoldStory e) {
            refusal.set("What is typed cannot be kept: " + e.getMessage());
        }
    }

    private FilledIn written() {
        Map<String, String> values = new LinkedHashMap<>();
        groups.stream()
                .flatMap(group -> group.entries().stream())
                .filter(entry -> !entry.written().get().isBlank())
                .forEach(entry -> values.put(entry.path(), entry.written().get().strip()));
        return new FilledIn(date.get().strip(), by.get().strip(), values);
    }

    /** Holds what was entered against what is predicted. */
    public void compare() {
        if (form.isEmpty() || working.get()) {
            return;
        }
        keep();
        forget();
        entries().forEach(Entry::anew);
        Entered read = read(form.get());
        if (!read.problems().isEmpty()) {
            tell(read.problems());
            return;
        }
        if (read.form().filled().isEmpty() && read.form().former().isEmpty()) {
            refusal.set("Nothing has been entered yet.");
            return;
        }
        refusal.set("");
        working.set(true);
        advice.set("Comparing; where a reading disagrees, values that would explain it are tried.");
        StudyReader reader = desk.draft().reader();
        String day = read.form().date();
        desk.work()
                .start(
                        COMPARING,
                        progress -> explained(reader, read, read.held(day, Optional.empty())),
                        found -> take(read, found),
                        this::refuse);
    }

    private static AsBuilt explained(StudyReader reader, Entered read, AsBuilt held) {
        try {
            return held.explained(new Causes(reader, read.asked()).of(held, tried -> {}));
        } catch (UntoldStory e) {
            return held.saying(
                    List.of("What would explain it cannot be computed: " + e.getMessage() + "."));
        }
    }

    private Entered read(TypedForm typed) {
        try {
            YamlDocument document = typed.document(written());
            return Entered.of(typed.asked(), document);
        } catch (UntoldStory e) {
            throw new IllegalStateException("it was planned and has no form", e);
        }
    }

    private List<Entry> entries() {
        return groups.stream().flatMap(group -> group.entries().stream()).toList();
    }

    private void tell(List<Problem> problems) {
        Map<String, Entry> byPath = new HashMap<>();
        entries().forEach(entry -> byPath.put(entry.path(), entry));
        List<String> elsewhere = new ArrayList<>();
        for (Problem problem : problems) {
            String words = problem.wrong() + "; " + problem.right();
            Optional<Entry> at = Optional.ofNullable(byPath.get(problem.path()));
            at.ifPresent(entry -> entry.wrong(words));
            if (at.isEmpty()) {
                elsewhere.add((problem.path().isEmpty() ? "" : problem.path() + ": ") + words);
            }
        }
        refusal.set(
                problems.size()
                        + (problems.size() == 1 ? " mistake" : " mistakes")
                        + " in what was entered; nothing was compared."
                        + (elsewhere.isEmpty() ? "" : " " + String.join(". ", elsewhere) + "."));
    }

    private void take(Entered read, AsBuilt found) {
        working.set(false);
        entered = Optional.of(read);
        Map<String, FormLine> lines = new HashMap<>();
        found.lines().forEach(line -> lines.put(line.path(), line));
        entries().forEach(e -> Optional.ofNullable(lines.get(e.path())).ifPresent(e::compared));
        built.set(Optional.of(found));
        advice.set("Compared. Add it to the record, behind what is there already.");
    }

    /** Adds what was compared to the record of the candidate, behind all that is there. */
    public void record() {
        if (entered.isEmpty() || built.get().isEmpty() || form.isEmpty()) {
            refusal.set("Compare first, so that you know what goes into the record.");
            return;
        }
        String day = date.get().strip();
        if (!FormReader.isDay(day)) {
            refusal.set("Say on which day it was measured, such as " + today.get() + ".");
            return;
        }
        AsBuilt now = built.get().get().on(day);
        MeasuredEntry entry =
                Held.entry(now, entered.map(Entered::form), desk.read().get().fingerprint());
        try {
            MeasuredFile file =
                    MeasuredFile.of(folder(desk.draft().reader()), now.candidate().id());
            if (!file.problems().isEmpty()) {
                refusal.set("The record was spoilt, nothing was added: " + file.problems().get(0));
                return;
            }
            boolean added = file.add(entry);
            form = Optional.of(form.get().recorded());
            recorded = Optional.of(written());
            refusal.set("");
            advice.set(
                    added
                            ? "Added to the record: " + file.file() + "."
                            : "The record has just this entry already; nothing was added.");
        } catch (IOException e) {
            refusal.set("The record cannot be written: " + e.getMessage());
        }
    }

    /** Puts the measured values that are offered into the study; one change, to be taken back. */
    public void offer() {
        if (built.get().isEmpty() || built.get().get().offers().isEmpty()) {
            refusal.set("What was measured offers no value of the study.");
            return;
        }
        AsBuilt now = built.get().get();
        try {
            List<DraftStep> steps = new ArrayList<>();
            for (YamlDocument changed : ValueOffers.taken(desk.draft().reader(), now.offers())) {
                String file = String.valueOf(changed.file().getFileName());
                steps.add(new DraftStep.Replace(file, changed.text()));
            }
            Optional<String> refused =
                    desk.attempt(new Change("Take what was measured", List.copyOf(steps)));
            refusal.set(refused.orElse(""));
        } catch (ChangeRefused refused) {
            refusal.set(refused.why());
        }
    }

    /** Empties every blank; what was recorded stays recorded. */
    public void clear() {
        entries().forEach(entry -> entry.written().set(""));
        entries().forEach(Entry::anew);
        forget();
        keep();
        refusal.set("");
        advice.set("Emptied.");
    }
}
