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
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.report.FailureRows;
import stillturning.report.FailureRows.Row;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.Name;
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
    public record MatrixLine(String name, int below, Optional<Row> row) {

        /** What is to be read in it. */
        public String words() {
            return row.isPresent() ? name : name + " (" + below + ")";
        }
    }

    private final Desk desk;
    private final StringProperty search = new SimpleStringProperty("");
    private final ObjectProperty<Optional<Outcome>> outcome =
            new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<String>> kind =
            new SimpleObjectProperty<>(Optional.empty());
    private final BooleanProperty differingOnly = new SimpleBooleanProperty(false);
    private final ObjectProperty<Grouping> grouping = new SimpleObjectProperty<>(Grouping.KIND);
    private final ObjectProperty<Order> order = new SimpleObjectProperty<>(Order.WORST);
    private final ObjectProperty<Optional<String>> orderedBy =
            new SimpleObjectProperty<>(Optional.empty());
    private final ObservableList<MatrixLine> lines = FXCollections.observableArrayList();
    private final ObservableList<MatrixLine> linesToRead =
            FXCollections.unmodifiableObservableList(lines);
    private List<Row> rows = List.of();
    private List<String> candidates = List.of();

    public FailureMatrix(Desk desk) {
        this.desk = desk;
        List.of(search, outcome, kind, differingOnly, grouping, order, orderedBy)
                .forEach(p -> p.addListener((of, before, now) -> arrange()));
        desk.results().addListener((of, before, now) -> take());
        take();
    }

    /** Words that a failure's name must fit. */
    public StringProperty search() {
        return search;
    }

    /** Only failures that come to this in some candidate. */
    public ObjectProperty<Optional<Outcome>> outcome() {
        return outcome;
    }

    /** Only failures of this kind of part. */
    public ObjectProperty<Optional<String>> kind() {
        return kind;
    }

    /** Only failures that do not come to the same in all candidates that have the part. */
    public BooleanProperty differingOnly() {
        return differingOnly;
    }

    /** What rows are put together by. */
    public ObjectProperty<Grouping> grouping() {
        return grouping;
    }

    /** What comes first within a group. */
    public ObjectProperty<Order> order() {
        return order;
    }

    /** The candidate whose worst comes first; the first one if empty. */
    public ObjectProperty<Optional<String>> orderedBy() {
        return orderedBy;
    }

    /** The matrix as it is to be shown. */
    public ObservableList<MatrixLine> lines() {
        return linesToRead;
    }

    /** Ids of the candidates, one a column. */
    public List<String> candidates() {
        return candidates;
    }

    /** Kinds of which something fails. */
    public List<String> kinds() {
        return rows.stream().map(Row::kind).distinct().toList();
    }

    /** How many failures there are, and how many of them are shown. */
    public String count() {
        long shown = lines.stream().filter(line -> line.row().isPresent()).count();
        return shown == rows.size()
                ? rows.size() + " failures"
                : shown + " of " + rows.size() + " failures";
    }

    /** Opens the story of a cell; nothing where the candidate has no such part. */
    public void open(Row row, int candidate) {
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
        Map<String, List<Row>> groups = new LinkedHashMap<>();
        Function<Row, String> heading = heading();
        List<Row> kept = new ArrayList<>(filtered());
        if (grouping.get() == Grouping.OUTCOME) {
            kept.sort(Comparator.comparing(Row::worst));
        }
        kept.forEach(r -> groups.computeIfAbsent(heading.apply(r), h -> new ArrayList<>()).add(r));
        List<MatrixLine> arranged = new ArrayList<>();
        groups.forEach(
                (words, group) -> {
                    if (grouping.get() != Grouping.NONE) {
                        arranged.add(new MatrixLine(words, group.size(), Optional.empty()));
                    }
                    group.sort(comparator());
                    group.forEach(
 row -> arranged.add(new MatrixLine(row.failure(), 0, Optional.of(row))));
                });
        lines.setAll(arranged);
    }

    private List<Row> filtered() {
        List<Named<Row>> named =
                rows.stream()
                        .filter(r -> kind.get().map(k -> k.equals(r.kind())).orElse(true))
                        .filter(r -> outcome.get().map(o -> comesTo(r, o)).orElse(true))
                        .filter(r -> !differingOnly.get() || differs(r))
                        .map(r -> new Named<>(r, List.of(Name.of(r.failure()))))
                        .toList();
        Set<Row> fitting = Collections.newSetFromMap(new IdentityHashMap<>());
        fitting.addAll(LooseNames.fitting(search.get(), named));
        return rows.stream().filter(fitting::contains).toList();
    }

    private static boolean comesTo(Row row, Outcome outcome) {
        return row.byCandidate().stream()
                .flatMap(Optional::stream)
                .anyMatch(v -> v.outcome() == outcome);
    }

    private static boolean differs(Row row) {
        return row.byCandidate().stream()
                        .flatMap(Optional::stream)
                        .map(Verdict::outcome)
                        .distinct()
                        .count()
                > 1;
    }

    private Function<Row, String> heading() {
        return switch (grouping.get()) {
            case KIND -> Row::kind;
            case PART -> FailureMatrix::part;
            case OUTCOME -> row -> row.worst().words();
            case NONE -> row -> "";
        };
    }

    private static String part(Row row) {
        int end = row.failure().indexOf(": ");
        return end < 0 ? row.kind() : row.failure().substring(0, end);
    }

    private Comparator<Row> comparator() {
        Comparator<Row> byName = Comparator.comparing(r -> r.failure().toLowerCase(Locale.ROOT));
        return switch (order.get()) {
            case WORST -> Comparator.comparing(Row::worst).thenComparing(byName);
            case NAME -> byName;
            case CANDIDATE -> Comparator.comparingInt(this::graveness).thenComparing(byName);
        };
    }

    /** Grave first, what the candidate has not last. */
    private int graveness(Row row) {
        int column = orderedBy.get().map(candidates::indexOf).orElse(0);
        return row.byCandidate()
                .get(Math.max(0, column))
                .map(v -> List.of(Outcome.values()).indexOf(v.outcome()))
                .orElse(Outcome.values().length);
    }
}
