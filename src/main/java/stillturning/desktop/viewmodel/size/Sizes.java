package stillturning.desktop.viewmodel.size;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.ReadStudy;
import stillturning.files.finding.PartPlace;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.quantity.UnitSystem;
import stillturning.report.PrintedNames;
import stillturning.report.sizes.SelectivityTable;
import stillturning.report.sizes.SizeFiles;
import stillturning.report.sizes.SizeTables;
import stillturning.report.table.Table;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.SizingReport;
import stillturning.yaml.disk.WholeFile;

/** The sizes of the open candidate. To be used on the screen's thread. */
public final class Sizes {

    /** What the work is called while it lasts. */
    public static final String SIZING = "Sizing the candidate";

    /** A report, and what it was made from. */
    record MadeReport(SizingReport report, ReadStudy from) {}

    private final Desk desk;
    private final Consumer<PartPlace> files;
    private final ReadOnlyObjectWrapper<Optional<MadeReport>> made =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<SizingReport>> report =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<FindingRow> findings = FXCollections.observableArrayList();
    private final ObservableList<FindingRow> findingsShown =
            FXCollections.unmodifiableObservableList(findings);
    private final ObservableList<Table<?>> tables = FXCollections.observableArrayList();
    private final ObservableList<Table<?>> tablesShown =
            FXCollections.unmodifiableObservableList(tables);
    private final ReadOnlyStringWrapper headline = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private boolean looking;
    private String refusal = "";

    /**
     * @param files shows a place in a candidate's file
     */
    public Sizes(Desk desk, Consumer<PartPlace> files) {
        this.desk = desk;
        this.files = files;
        desk.read().addListener((value, from, to) -> follow());
        desk.candidate().addListener((value, from, to) -> follow());
        desk.results().addListener((value, from, to) -> show());
        desk.settings().addListener((value, from, to) -> show());
        follow();
    }

    /** The sizes that were last worked out for the open candidate, if any were. */
    public ReadOnlyObjectProperty<Optional<SizingReport>> report() {
        return report.getReadOnlyProperty();
    }

    /** What is not as it should be, gravest first. */
    public ObservableList<FindingRow> findings() {
        return findingsShown;
    }

    /** The tables that hold anything, in order. */
    public ObservableList<Table<?>> tables() {
        return tablesShown;
    }

    /** How many limits are broken, in a sentence. */
    public ReadOnlyStringProperty headline() {
        return headline.getReadOnlyProperty();
    }

    /** What the user must know of what is shown, or do for anything to be shown; else empty. */
    public ReadOnlyStringProperty notice() {
        return notice.getReadOnlyProperty();
    }

    /** Whether sizes are being worked out. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Whether what is shown was made from other texts than those of now. */
    public boolean stale() {
        return made.get().isPresent() && !fresh();
    }

    /** The user looks on, or no longer: sizes are only kept up to date while he does. */
    public void look(boolean looking) {
        this.looking = looking;
        follow();
    }

    /** Works the sizes out again. */
    public void size() {
        ReadStudy read = desk.read().get();
        if (read.study().isEmpty() || desk.openCandidate().isEmpty()) {
            show();
            return;
        }
        Study study = read.study().get();
        Candidate candidate = desk.openCandidate().get();
        refusal = "";
        int phases = study.aircraft().phases().size();
        desk.work()
                .start(
                        SIZING,
                        progress -> {
                            List<String> begun = new ArrayList<>();
                            return new MadeReport(
                                    Sizing.of(
                                            study,
                                            candidate,
                                            read.sizes().installation(),
                                            SurveyDepth.SINGLE_FAILURES,
                                            phase -> {
                                                double share = (double) begun.size() / phases;
                                                begun.add(phase);
                                                progress.report(
                                                        share, "Sizing: failures in " + phase);
                                            }),
                                    read);
                        },
                        this::take,
                        this::refuse);
        working.set(true);
        show();
    }

    /** Calls the work off; what was there before stays. */
    public void cancel() {
        desk.work().cancel(SIZING);
        working.set(false);
        refusal = "Called off. Size again when you want to know.";
        show();
    }

    /** Shows the part that a finding is about in the drawing. */
    public void draw(FindingRow finding) {
        finding.part().ifPresent(part -> desk.go(AreaName.DRAW, part));
    }

    /** Shows where the part that a finding is about is asked for in its file. */
    public void read(FindingRow finding) {
        finding.place().ifPresent(files);
    }

    /** Text of each file for a spreadsheet, by its name; none before sizes are known. */
    public Map<String, String> files() {
        return report.get().map(r -> SizeFiles.of(List.of(r), units())).orElse(Map.of());
    }

    /**
     * Writes every table into a folder, one file a table.
     *
     * @return what was done, or why it was not
     */
    public String export(Path folder) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> file : files().entrySet()) {
                byte[] bytes = file.getValue().getBytes(StandardCharsets.UTF_8);
                WholeFile.replace(folder.resolve(file.getKey()), bytes);
            }
            return files().size() + " files are in " + folder + " now.";
        } catch (IOException e) {
            return folder + " cannot be written (" + e + "). Choose another folder.";
        }
    }

    /** What was worked out, with what it was made from, while it still holds. */
    Optional<MadeReport> current() {
        return made.get().filter(m -> fresh());
    }

    private boolean fresh() {
        return made.get()
                .filter(m -> m.from().fingerprint().equals(desk.read().get().fingerprint()))
                .filter(m -> m.report().candidate().id().equals(desk.candidate().get()))
                .isPresent();
    }

    private void follow() {
        boolean other =
                made.get()
                        .filter(m -> !m.report().candidate().id().equals(desk.candidate().get()))
                        .isPresent();
        if (other) {
            made.set(Optional.empty());
        }
        if (looking && !fresh()) {
            size();
        } else {
            show();
        }
    }

    private void take(MadeReport now) {
        working.set(false);
        if (now.report().candidate().id().equals(desk.candidate().get())) {
            made.set(Optional.of(now));
        }
        show();
    }

    private void refuse(Exception reason) {
        working.set(false);
        refusal = desk.candidate().get() + " cannot be sized: " + reason.getMessage();
        show();
    }

    private void show() {
        Optional<SizingReport> now = made.get().map(MadeReport::report);
        report.set(now);
        findings.setAll(
                made.get()
                        .map(m -> FindingRows.of(m.report(), m.from(), units()))
                        .orElse(List.of()));
        tables.setAll(now.map(this::allTables).orElse(List.of()));
        headline.set(now.map(Sizes::words).orElse(""));
        notice.set(words());
    }

    private List<Table<?>> allTables(SizingReport of) {
        List<Table<?>> all =
                Stream.of(
                                SizeTables.of(of, units()).stream(),
                                selectivity(of),
                                SizeTables.lists(of, units()).stream())
                        .flatMap(tables -> tables)
                        .filter(t -> !t.cells().isEmpty())
                        .toList();
        return SizeTables.spoken(all, new PrintedNames(of.candidate()));
    }

    /** Who may open before whom shows in stories, so it is there once all of them are told. */
    private Stream<Table<?>> selectivity(SizingReport of) {
        return desk.results().get().assessment().filter(a -> !desk.stale()).stream()
                .flatMap(a -> a.of(of.candidate().id()).stream())
                .map(Appraisal::selectivity)
                .map(SelectivityTable::of);
    }

    private static String words(SizingReport of) {
        long wrong = of.wrong();
        if (wrong == 0) {
            return "No limit is broken.";
        }
        return wrong + (wrong == 1 ? " limit is broken." : " limits are broken.");
    }

    private String words() {
        if (desk.study().isEmpty()) {
            return "The study holds mistakes, so nothing can be sized. Mend what Draw lists.";
        }
        if (!refusal.isEmpty()) {
            return refusal;
        }
        if (stale()) {
            return "These sizes are from before the last changes.";
        }
        long untold = report.get().map(r -> (long) r.untold().size()).orElse(0L);
        return untold == 0
                ? ""
                : untold
                        + " failures could not be computed, and their currents are missing: "
                        + String.join("; ", report.get().orElseThrow().untold());
    }

    private UnitSystem units() {
        return desk.settings().get().units();
    }
}
