package stillturning.desktop.viewmodel.draw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableDoubleValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.offer.Trouble;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.files.finding.PartPlace;
import stillturning.model.Terminal;
import stillturning.report.drawing.Point;
import stillturning.report.oneline.DrawnCandidate;
import stillturning.yaml.YamlDocument;

/**
 * The open candidate on the drawing board: its diagram, what is chosen, what is to be said about
 * it, and everything that can be done to it. What is refused is said, and changes nothing.
 */
public final class Board {

    private static final String LAYING = "Drawing the candidate";

    private final Desk desk;
    private final ObservableDoubleValue paperShape;
    private final WrittenPlaces written;
    private final PropertySheet sheet;
    private final ReadOnlyObjectWrapper<Optional<BoardDrawing>> laid =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Findings findings = new Findings();
    private final ObservableList<Trouble> troubles = FXCollections.observableArrayList();

    /** Where parts were dropped that the layout has no other place for, by their names. */
    private final Map<String, Point> dropped = new HashMap<>();

    private final ObservableList<String> chosen = FXCollections.observableArrayList();
    // kept, since listeners at a view of a list are heard only as long as somebody has the view
    private final ObservableList<Trouble> shownTroubles =
            FXCollections.unmodifiableObservableList(troubles);
    private final ObservableList<String> shownChosen =
            FXCollections.unmodifiableObservableList(chosen);
    private final LoadToDelete loadToDelete;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /**
     * @param paperShape width over height of what the diagram is shown on, 0 while nobody knows;
     *     nothing is drawn before, and what is drawn keeps its shape while it is edited
     */
    public Board(Desk desk, ObservableDoubleValue paperShape) {
        this.desk = desk;
        this.paperShape = paperShape;
        this.written = new WrittenPlaces(desk);
        this.sheet = new PropertySheet(desk, this::succeeds);
        this.loadToDelete = new LoadToDelete(this::takeAway, this::candidateEdits, desk);
        desk.reading().addListener((of, before, now) -> takeReading());
        desk.candidate().addListener((of, before, now) -> turnTo());
        desk.results().addListener((of, before, now) -> takeResults());
        desk.texts().addListener((of, before, now) -> showSheet());
        desk.settings().addListener((of, before, now) -> sheet.refresh());
        paperShape.addListener((of, before, now) -> drawFirst());
        turnTo();
    }

    /** The candidate on the paper, as of the last layout. */
    public ReadOnlyObjectProperty<Optional<BoardDrawing>> laid() {
        return laid.getReadOnlyProperty();
    }

    /** What is to be said about the open candidate and the study's own file, mistakes first. */
    public Findings findings() {
        return findings;
    }

    /** What the open candidate misses, and what loses its engine, as far as that is known. */
    public ObservableList<Trouble> troubles() {
        return shownTroubles;
    }

    /** Names of the parts that are chosen. */
    public ObservableList<String> chosen() {
        return shownChosen;
    }

    /** What came of the last thing done: why it was refused, or what it did besides. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** The values of what is chosen. */
    public PropertySheet sheet() {
        return sheet;
    }

    /** What can be added and answers a search. */
    public List<PaletteEntry> palette(String search) {
        return PaletteEntry.all().stream().filter(e -> e.answers(search)).toList();
    }

    // --- what is shown

    private void turnTo() {
        chosen.clear();
        dropped.clear();
        laid.set(Optional.empty());
        loadToDelete.ask(Optional.empty());
        said.set("");
        takeReading();
        takeResults();
        showSheet();
    }

    private void takeResults() {
        troubles.setAll(
                desk.results()
                        .get()
                        .assessment()
                        .flatMap(a -> a.of(desk.candidate().get()))
                        .map(Trouble::of)
                        .orElse(List.of()));
    }

    private void takeReading() {
        Optional<CandidateReading> reading = desk.openReading();
        List<FileFinding> all = new ArrayList<>(desk.reading().get().findings());
        reading.ifPresent(r -> all.addAll(r.findings()));
        all.sort(Comparator.comparing(f -> !f.mistake()));
        findings.show(all, desk.openCandidate());
        reading.ifPresent(this::draw);
        showSheet();
    }

    private void drawFirst() {
        if (laid.get().isEmpty() && !desk.work().busy(LAYING)) {
            desk.openReading().ifPresent(this::draw);
        }
    }

    private void draw(CandidateReading reading) {
        double shape = paperShape.get();
        if (shape > 0) {
            Optional<BoardDrawing> before = laid.get();
            Map<String, Point> places = Map.copyOf(dropped);
            desk.work()
                    .start(
                            LAYING,
                            progress -> BoardDrawing.of(reading, before, places, shape),
                            now -> now.ifPresent(n -> laid.set(Optional.of(n))),
                            wrong -> said.set(String.valueOf(wrong.getMessage())));
        }
    }

    /** Symbols and lines of the diagram that stand for what is chosen. */
    public List<String> chosenKeys() {
        return laid.get().stream()
                .flatMap(l -> chosen.stream().flatMap(p -> l.drawn().keysOf(p).stream()))
                .toList();
    }

    /** Chooses what symbols and lines of the diagram stand for. */
    public void pick(Collection<String> keys) {
        Set<String> parts = new LinkedHashSet<>();
        laid.get().ifPresent(l -> keys.forEach(k -> l.drawn().partAt(k).ifPresent(parts::add)));
        choose(parts);
    }

    /** Chooses parts by their names. */
    public void choose(Collection<String> parts) {
        if (!chosen.equals(List.copyOf(parts))) {
            chosen.setAll(parts);
            showSheet();
        }
    }

    /** Chooses the parts that a finding is about. */
    public void follow(FileFinding finding) {
        choose(finding.parts());
    }

    /** Chooses a part by its name, or what stands at a place of the candidate's file. */
    public void show(String subject) {
        List<String> made =
                places().entrySet().stream()
                        .filter(e -> e.getValue().path().equals(subject))
                        .map(Map.Entry::getKey)
                        .toList();
        boolean part = places().containsKey(subject);
        choose(part || made.isEmpty() ? List.of(subject) : made);
    }

    /** The line of the text where a part or a finding stands, counted from 1; 0 if nowhere. */
    public int lineOf(String part) {
        return Optional.ofNullable(places().get(part)).map(PartPlace::line).orElse(0);
    }

    Map<String, PartPlace> places() {
        return desk.openReading().map(CandidateReading::places).orElse(Map.of());
    }

    private void showSheet() {
        if (chosen.size() == 1) {
            String part = chosen.get(0);
            sheet.show(part, written.of(part, places()));
        } else {
            sheet.show("the candidate", List.of(FormPlace.candidate()));
        }
    }

    // --- what can be done

    /** Makes a change, and says what came of it. */
    private boolean succeeds(ChangeWork work) {
        loadToDelete.ask(Optional.empty());
        try {
            Change change = work.change();
            desk.make(change);
            said.set(String.join(" ", change.also()));
            if (!change.parts().isEmpty()) {
                chosen.setAll(change.parts());
            }
            showSheet();
            return true;
        } catch (ChangeRefused refused) {
            said.set(refused.why());
            return false;
        }
    }

    /** Makes a change that takes what is chosen away. */
    private void takeAway(ChangeWork work) {
        if (succeeds(work)) {
            choose(List.of());
        }
    }

    private CandidateEdits candidateEdits() throws ChangeRefused {
        String file = Desk.file(desk.candidate().get());
        Optional<YamlDocument> candidate = desk.draft().document(file);
        Optional<YamlDocument> study = desk.draft().document(Desk.STUDY_FILE);
        if (candidate.isEmpty() || study.isEmpty()) {
            throw new ChangeRefused(
                    "there is no "
                            + (study.isEmpty() ? Desk.STUDY_FILE : file)
                            + "; add one first");
        }
        return new CandidateEdits(candidate.get(), study.get());
    }

    /** Adds a part, in the zone of what is chosen or else in the study's first. */
    public void add(PaletteEntry entry) {
        succeeds(() -> adding(entry));
    }

    /** The same, and lays it there, or near by, until it is joined to something. */
    public void add(PaletteEntry entry, Point at) {
        succeeds(
                () -> {
                    Change change = adding(entry);
                    change.parts().forEach(part -> dropped.put(part, at));
                    return change;
                });
    }

    private Change adding(PaletteEntry entry) throws ChangeRefused {
        Optional<String> ofClass = Optional.of(entry.ofClass());
        return Change.of(
                candidateEdits().add(new NewPart(entry.kind(), ofClass, zone(), Map.of())));
    }

    /** Adds a load to the study, to be fed in the open candidate; the others leave it out. */
    public void addLoad(String name) {
        succeeds(() -> new StudyChanges(desk).newLoad(name.strip(), zone()));
    }

    private String zone() throws ChangeRefused {
        Stream<String> beside =
                laid.get().stream()
                        .flatMap(l -> l.candidate().parts().stream())
                        .filter(p -> chosen.contains(p.id()))
                        .map(p -> p.tag().zone())
                        .filter(z -> !z.isEmpty());
        String advice = "the study has no zone for it; add one to zones in " + Desk.STUDY_FILE;
        return Stream.concat(beside, written.zones())
                .findFirst()
                .orElseThrow(() -> new ChangeRefused(advice));
    }

    /** Joins what lies at two ports of the diagram. */
    public void join(String symbol, String port, String otherSymbol, String otherPort) {
        Optional<DrawnCandidate> drawn = laid.get().map(BoardDrawing::drawn);
        Optional<Terminal> one = drawn.flatMap(d -> d.terminalAt(symbol, port));
        Optional<Terminal> other = drawn.flatMap(d -> d.terminalAt(otherSymbol, otherPort));
        if (one.isEmpty() || other.isEmpty()) {
            said.set("A joint is no part; join one of the parts that meet there.");
            return;
        }
        succeeds(() -> Change.of(candidateEdits().join(one.get(), other.get(), Optional.empty())));
    }

    /** A load of the study that was to be deleted, and what can be done with it instead. */
    public LoadToDelete loadToDelete() {
        return loadToDelete;
    }

    /** Deletes what is chosen: parts with what speaks of them, wires with their runs. */
    public void delete() {
        Set<String> parts = Set.copyOf(chosen);
        if (!parts.isEmpty() && succeeds(() -> Change.of(candidateEdits().delete(parts)))) {
            chosen.clear();
            showSheet();
            return;
        }
        loadToDelete.ask(
                parts.stream().filter(written::isLoad).findFirst().filter(p -> parts.size() == 1));
    }

    /** Doubles what is chosen. */
    public void duplicate() {
        Set<String> parts = new LinkedHashSet<>(chosen);
        succeeds(() -> Change.of(candidateEdits().duplicate(parts)));
    }

    /** What is chosen as a text for {@link #paste}; absent if it cannot be copied. */
    public Optional<String> copy() {
        try {
            return chosen.isEmpty()
                    ? Optional.empty()
                    : Optional.of(candidateEdits().copy(new LinkedHashSet<>(chosen)));
        } catch (ChangeRefused refused) {
            said.set(refused.why());
            return Optional.empty();
        }
    }

    /** Adds what was copied, here or in another candidate. */
    public void paste(String clipboard) {
        succeeds(() -> Change.of(candidateEdits().paste(clipboard)));
    }

    /** Gives the one part that is chosen another name; a load gets it in every candidate. */
    public void rename(String to) {
        if (chosen.size() == 1) {
            String part = chosen.get(0);
            succeeds(
                    () ->
                            written.isLoad(part)
                                    ? new StudyChanges(desk).edits().renameLoad(part, to.strip())
                                    : Change.of(candidateEdits().rename(part, to.strip())));
        }
    }

    /** A new candidate like the open one, which is opened. */
    public void copyCandidate(String id, String title) {
        if (succeeds(
                () -> new StudyChanges(desk).edits().copy(desk.candidate().get(), id, title))) {
            desk.open(id);
        }
    }

    /** Goes where failures of the one part that is chosen are told. */
    public void breakIt() {
        if (chosen.size() == 1) {
            desk.go(Destination.of(AreaName.BREAK, desk.candidate().get(), chosen.get(0)));
        }
    }
}
