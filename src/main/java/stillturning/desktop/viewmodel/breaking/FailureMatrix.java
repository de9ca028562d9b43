package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.Property;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.report.FailureRows;
import stillturning.report.FailureRows.FailureRow;
import stillturning.report.Spoken;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** All failures by candidate: filtered, put into groups and in order. */
public final class FailureMatrix {

    /** What rows are put together by. */
    public enum Grouping {
        KIND("kind of part"),
        PART("part"),
        OUTCOME("worst outcome"),
        NONE("nothing");

        private final String words;

        Grouping(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** What comes first within a group. */
    public enum Order {
        WORST("worst first"),
        NAME("by name"),
        CANDIDATE("worst in one candidate first");

        private final String words;

        Order(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * A line of the matrix.
     *
     * @param name of the failure, or of the group that the line stands above
     * @param below how many failures stand below it; 0 for a failure
     * @param row the failure and its verdicts; empty for a heading
     */
    public record MatrixLine(String name, int below, Optional<FailureRow> row) {

        /** What is to be read in it. */
        public String words() {
            return row.isPresent() ? name : name + " (" + below + ")";
        }
    }

    /**
     * Which failures are shown, and in which order.
     *
     * @param search words that a failure's name must fit
     * @param outcome only failures that come to this in some candidate
     * @param kind only failures of this kind of part
     * @param differingOnly only failures that do not come to the same in all candidates that have
     *     the part
     * @param grouping what rows are put together by
     * @param order what comes first within a group
     * @param orderedBy the candidate whose worst comes first; the first one if empty
     */
    public record Arrangement(
            StringProperty search,
            ObjectProperty<Optional<Outcome>> outcome,
            ObjectProperty<Optional<String>> kind,
            BooleanProperty differingOnly,
            ObjectProperty<Grouping> grouping,
            ObjectProperty<Order> order,
            ObjectProperty<Optional<String>> orderedBy) {
        private Arrangement() {
            this(
                    new SimpleStringProperty(""),
                    new SimpleObjectProperty<>(Optional.empty()),
                    new SimpleObjectProperty<>(Optional.empty()),
                    new SimpleBooleanProperty(false),
                    new SimpleObjectProperty<>(Grouping.KIND),
                    new SimpleObjectProperty<>(Order.WORST),
                    new SimpleObjectProperty<>(Optional.empty()));
        }

        private List<Property<?>> all() {
            return List.of(search, outcome, kind, differingOnly, grouping, order, orderedBy);
        }
    }

    private final Desk desk;
    private final Arrangement arrangement = new Arrangement();
    private final ObservableList<MatrixLine> lines = FXCollections.observableArrayList();
    private final ObservableList<MatrixLine> linesToRead =
            FXCollections.unmodifiableObservableList(lines);
    private List<FailureRow> rows = List.of();
    private List<String> candidates = List.of();

    public FailureMatrix(Desk desk) {
        this.desk = desk;
        arrangement.all().forEach(p -> p.addListener((of, before, now) -> arrange()));
        desk.results().addListener((of, before, now) -> take());
        take();
    }

    /** Which failures are shown, and in which order. */
    public Arrangement arrangement() {
        return arrangement;
    }

    /** The matrix as it is to be shown. */
    public ObservableList<MatrixLine> lines() {
        return linesToRead;
    }

    /** Ids of the candidates, one a column. */
    public List<String> candidates() {
        return candidates;
    }

    /** What is to be read in a line: what a person calls the failure, or the group. */
    public String words(MatrixLine line) {
        return line.row().map(row -> called(row, line.name())).orElse(line.words());
    }

    /** By the labels of the first candidate that can have it. */
    private String called(FailureRow row, String name) {
        return IntStream.range(0, candidates.size())
                .filter(i -> row.byCandidate().get(i).isPresent())
                .mapToObj(candidates::get)
                .findFirst()
                .flatMap(id -> desk.results().get().assessment().flatMap(a -> a.of(id)))
                .map(appraisal -> new Spoken(appraisal.candidate()).failure(name))
                .orElse(name);
    }

    /** What a person calls a candidate. */
    public String title(String id) {
        return desk.results().get().assessment().stream()
                .flatMap(a -> a.appraisals().stream())
                .map(Appraisal::candidate)
                .filter(c -> c.id().equals(id))
                .map(Candidate::title)
                .findFirst()
                .orElse(id);
    }

    /** Kinds of which something fails. */
    public List<String> kinds() {
        return rows.stream().map(FailureRow::kind).distinct().toList();
    }

    /** How many failures there are, and how many of them are shown. */
    public String count() {
        long shown = lines.stream().filter(line -> line.row().isPresent()).count();
        return shown == rows.size()
                ? Formats.count(rows.size()) + " failures"
                : Formats.count(shown) + " of " + Formats.count(rows.size()) + " failures";
    }

    /** Opens the story of a cell; nothing where the candidate has no such part. */
    public void open(FailureRow row, int candidate) {
        if (row.byCandidate().get(candidate).isPresent()) {
            desk.go(Destination.of(AreaName.BREAK, candidates.get(candidate), row.failure()));
        }
    }

    private void take() {
        List<Appraisal> appraisals =
                desk.results().get().assessment().map(Assessment::appraisals).orElse(List.of());
        rows = FailureRows.of(appraisals);
        candidates = appraisals.stream().map(a -> a.candidate().id()).toList();
        arrange();
    }

    private void arrange() {
        Map<String, List<FailureRow>> groups = new LinkedHashMap<>();
        Function<FailureRow, String> heading = heading();
        List<FailureRow> kept = new ArrayList<>(filtered());
        if (arrangement.grouping.get() == Grouping.OUTCOME) {
            kept.sort(Comparator.comparing(FailureRow::worst));
        }
        kept.forEach(r -> groups.computeIfAbsent(heading.apply(r), h -> new ArrayList<>()).add(r));
        List<MatrixLine> arranged = new ArrayList<>();
        groups.forEach(
                (words, group) -> {
                    if (arrangement.grouping.get() != Grouping.NONE) {
                        arranged.add(new MatrixLine(words, group.size(), Optional.empty()));
                    }
                    group.sort(comparator());
                    group.forEach(
                            row ->
                                    arranged.add(
                                            new MatrixLine(row.failure(), 0, Optional.of(row))));
                });
        lines.setAll(arranged);
    }

    private List<FailureRow> filtered() {
        List<Named<FailureRow>> named =
                rows.stream()
                        .filter(
                                r ->
                                        arrangement
                                                .kind
                                                .get()
                                                .map(k -> k.equals(r.kind()))
                                                .orElse(true))
                        .filter(r -> arrangement.outcome.get().map(o -> comesTo(r, o)).orElse(true))
                        .filter(r -> !arrangement.differingOnly.get() || differs(r))
                        .map(r -> new Named<>(r, List.of(LooseName.of(r.failure()))))
                        .toList();
        Set<FailureRow> fitting = Collections.newSetFromMap(new IdentityHashMap<>());
        fitting.addAll(LooseNames.fitting(arrangement.search.get(), named));
        return rows.stream().filter(fitting::contains).toList();
    }

    private static boolean comesTo(FailureRow row, Outcome outcome) {
        return row.byCandidate().stream()
                .flatMap(Optional::stream)
                .anyMatch(v -> v.outcome() == outcome);
    }

    private static boolean differs(FailureRow row) {
        return row.byCandidate().stream()
                        .flatMap(Optional::stream)
                        .map(Verdict::outcome)
                        .distinct()
                        .count()
                > 1;
    }

    private Function<FailureRow, String> heading() {
        return switch (arrangement.grouping.get()) {
            case KIND -> FailureRow::kind;
            case PART -> FailureMatrix::part;
            case OUTCOME -> row -> row.worst().words();
            case NONE -> row -> "";
        };
    }

    private static String part(FailureRow row) {
        int end = row.failure().indexOf(": ");
        return end < 0 ? row.kind() : row.failure().substring(0, end);
    }

    private Comparator<FailureRow> comparator() {
        Comparator<FailureRow> byName =
                Comparator.comparing(r -> r.failure().toLowerCase(Locale.ROOT));
        return switch (arrangement.order.get()) {
            case WORST -> Comparator.comparing(FailureRow::worst).thenComparing(byName);
            case NAME -> byName;
            case CANDIDATE -> Comparator.comparingInt(this::graveness).thenComparing(byName);
        };
    }

    /** Grave first, what the candidate has not last. */
    private int graveness(FailureRow row) {
        int column = arrangement.orderedBy.get().map(candidates::indexOf).orElse(0);
        return row.byCandidate()
                .get(Math.max(0, column))
                .map(v -> List.of(Outcome.values()).indexOf(v.outcome()))
                .orElse(Outcome.values().length);
    }
}
