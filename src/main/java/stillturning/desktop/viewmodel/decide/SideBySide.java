package stillturning.desktop.viewmodel.decide;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.RankingResult;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;

/** Two candidates against each other. */
public final class SideBySide {

    private final StringProperty one = new SimpleStringProperty("");
    private final StringProperty other = new SimpleStringProperty("");
    private final ObservableList<DifferenceRow> rows = FXCollections.observableArrayList();
    private final ObservableList<DifferenceRow> rowsShown =
            FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyStringWrapper verdict = new ReadOnlyStringWrapper("");
    private final Supplier<UnitSystem> units;
    private Optional<Assessment> assessment = Optional.empty();
    private Optional<CandidateDifferences> contrast = Optional.empty();

    SideBySide(Supplier<UnitSystem> units) {
        this.units = units;
        one.addListener((value, from, to) -> compare());
        other.addListener((value, from, to) -> compare());
    }

    /** Id of the candidate that is looked at. */
    public StringProperty one() {
        return one;
    }

    /** Id of the one that it is compared with. */
    public StringProperty other() {
        return other;
    }

    /** In what they differ, by group. */
    public ObservableList<DifferenceRow> rows() {
        return rowsShown;
    }

    /** Who is ahead, and by how much, in a sentence. */
    public ReadOnlyStringProperty verdict() {
        return verdict.getReadOnlyProperty();
    }

    /** Lets them change sides. */
    public void swap() {
        String first = one.get();
        one.set(other.get());
        other.set(first);
    }

    /** Takes results; the leader and the next face each other where nobody was chosen. */
    void take(Optional<Assessment> now) {
        assessment = now;
        now.flatMap(Assessment::ranking).ifPresent(this::choose);
        compare();
    }

    private void choose(RankingResult ranking) {
        List<String> ids = ranking.standings().stream().map(s -> s.name()).toList();
        if (!ids.contains(one.get())) {
            one.set(ids.get(0));
        }
        if (!ids.contains(other.get())) {
            other.set(ids.stream().filter(id -> !id.equals(one.get())).findFirst().orElse(""));
        }
    }

    private void compare() {
        boolean two = !one.get().equals(other.get()) && !other.get().isEmpty();
        Optional<Assessment> both = assessment.filter(a -> two);
        List<DifferenceRow> now =
                both.flatMap(a -> contrast(a).map(c -> Differences.of(a, c, units.get())))
                        .orElse(List.of());
        // a tree that is made again for nothing folds up under the user's hand
        if (!rows.equals(now)) {
            rows.setAll(now);
        }
        verdict.set(both.flatMap(this::words).orElse("Choose two different candidates."));
    }

    /** The last one is kept, since it does not depend on weights. */
    private Optional<CandidateDifferences> contrast(Assessment all) {
        Optional<Appraisal> here = all.of(one.get());
        Optional<Appraisal> there = all.of(other.get());
        if (here.isEmpty() || there.isEmpty()) {
            contrast = Optional.empty();
        } else if (contrast.filter(c -> between(c, here.get(), there.get())).isEmpty()) {
            contrast = Optional.of(CandidateDifferences.of(here.get(), there.get()));
        }
        return contrast;
    }

    @SuppressWarnings("ReferenceEquality") // to compare all that is in them takes too long
    private static boolean between(CandidateDifferences c, Appraisal here, Appraisal there) {
        return c.candidate() == here && c.reference() == there;
    }

    private Optional<String> words(Assessment all) {
        return all.ranking().map(r -> words(all, r.compare(one.get(), other.get())));
    }

    private static String words(Assessment all, Comparison c) {
        String here = RankRow.title(all, c.candidate());
        String there = RankRow.title(all, c.reference());
        String points = Formats.fixed(Math.abs(c.pointsAhead()), 3) + " points";
        String lead =
                c.pointsAhead() >= 0
                        ? here + " is " + points + " ahead of " + there
                        : here + " is " + points + " behind " + there;
        String gates = gates(c.gatesMissed().size(), c.gatesReferenceMissed().size());
        return lead
                + gates
                + switch (c.dominance()) {
                    case DOMINATES -> ". It is worse in nothing.";
                    case DOMINATED -> ". It is better in nothing.";
                    case NEITHER -> ".";
                };
    }

    private static String gates(int missed, int met) {
        if (missed == 0 && met == 0) {
            return "";
        }
        return "; it misses "
                + missed
                + " and meets "
                + met
                + " of the requirements in which they differ, and those count first";
    }
}
