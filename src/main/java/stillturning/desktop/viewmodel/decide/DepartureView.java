package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateDifferences;
import stillturning.desktop.viewmodel.decide.DifferenceRow.DifferenceGroup;
import stillturning.quantity.UnitSystem;
import stillturning.report.RankingOrder;

/** How each candidate departs from the baseline. */
public final class DepartureView {

    /**
     * One candidate.
     *
     * @param shifted how many failures end better and worse
     * @param changed how many that reach the engine came and went with parts
     */
    public record CandidateDeparture(
            String candidate,
            String title,
            String shifted,
            String changed,
            List<DifferenceRow> rows) {
        public CandidateDeparture {
            rows = List.copyOf(rows);
        }
    }

    private final ObservableList<CandidateDeparture> departures =
            FXCollections.observableArrayList();
    private final ObservableList<CandidateDeparture> departuresShown =
            FXCollections.unmodifiableObservableList(departures);
    private final ReadOnlyStringWrapper baseline = new ReadOnlyStringWrapper("");
    private final Supplier<UnitSystem> units;

    DepartureView(Supplier<UnitSystem> units) {
        this.units = units;
    }

    /** Every candidate but the baseline, best first. */
    public ObservableList<CandidateDeparture> all() {
        return departuresShown;
    }

    /** From what they depart, or how to say so. */
    public ReadOnlyStringProperty baseline() {
        return baseline.getReadOnlyProperty();
    }

    void take(Optional<Assessment> assessment) {
        Optional<Appraisal> from =
                assessment.flatMap(a -> a.study().goals().baseline().flatMap(a::of));
        baseline.set(
                from.map(a -> "Departures from \u201C" + a.candidate().title() + "\u201D")
                        .orElse(
                                "The study names no baseline. Write baseline: with the name of a"
                                        + " candidate's file into the study, and what the others"
                                        + " have, lack and suffer besides is listed here."));
        List<CandidateDeparture> all = new ArrayList<>();
        if (assessment.isPresent() && from.isPresent()) {
            for (Appraisal appraisal : RankingOrder.of(assessment.get())) {
                if (!appraisal.equals(from.get())) {
                    all.add(departure(assessment.get(), appraisal, from.get()));
                }
            }
        }
        departures.setAll(all);
    }

    private CandidateDeparture departure(
            Assessment assessment, Appraisal candidate, Appraisal from) {
        List<DifferenceRow> rows =
                Differences.of(assessment, CandidateDifferences.of(candidate, from), units.get());
        String shifted =
                count(rows, DifferenceGroup.BETTER)
                        + " failures end better, "
                        + count(rows, DifferenceGroup.WORSE)
                        + " worse";
        String changed =
                count(rows, DifferenceGroup.OWN)
                        + " failures new, "
                        + count(rows, DifferenceGroup.SPARED)
                        + " gone";
        return new CandidateDeparture(
                candidate.candidate().id(), candidate.candidate().title(), shifted, changed, rows);
    }

    private static long count(List<DifferenceRow> rows, DifferenceGroup group) {
        return rows.stream().filter(r -> r.group() == group).count();
    }
}
