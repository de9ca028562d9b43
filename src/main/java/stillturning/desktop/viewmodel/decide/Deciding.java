package stillturning.desktop.viewmodel.decide;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.desktop.viewmodel.offer.Trouble;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.UnitSystem;
import stillturning.report.LeaderFirmness;
import stillturning.report.RankingOrder;
import stillturning.report.Spoken;
import stillturning.report.page.Block;
import stillturning.report.ranking.ComplexityBlocks;
import stillturning.report.terminal.OtherFindings;
import stillturning.yaml.YamlDocument;

/** The choice among the candidates of the open study. To be used on the screen's thread. */
public final class Deciding {

    private final Desk desk;
    private final OfferedDrawings offers;
    private final Weights weights = new Weights(this::rank);
    private final Scales scales = new Scales(this::rank);
    private final SideBySide sideBySide;
    private final Facing facing;
    private final Answering answering;
    private final Exploring exploring;
    private final DepartureView departures;
    private final ReadOnlyObjectWrapper<Optional<Assessment>> now =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Appraisal>> appraisals =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ObservableList<RankRow> ranks = FXCollections.observableArrayList();
    private final ObservableList<RankRow> ranksShown =
            FXCollections.unmodifiableObservableList(ranks);
    private final ObservableList<String> firmness = FXCollections.observableArrayList();
    private final ObservableList<String> firmnessShown =
            FXCollections.unmodifiableObservableList(firmness);
    private final ObservableList<String> warnings = FXCollections.observableArrayList();
    private final ObservableList<String> warningsShown =
            FXCollections.unmodifiableObservableList(warnings);
    private final ObjectProperty<CriterionName> across =
            new SimpleObjectProperty<>(CriterionName.WEIGHT);
    private final ObjectProperty<CriterionName> upwards =
            new SimpleObjectProperty<>(CriterionName.ENDURANCE);
    private final ReadOnlyObjectWrapper<Optional<TradeOff>> tradeOff =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private final ObservableValue<List<Block>> complexity;

    /**
     * The choice in a study.
     *
     * @param offers where drawings are shown that would mend something
     */
    public Deciding(Desk desk, OfferedDrawings offers) {
        this.desk = desk;
        this.offers = offers;
        sideBySide = new SideBySide(this::units);
        facing = new Facing(desk, sideBySide);
        answering = new Answering(desk);
        exploring = new Exploring(desk, offers);
        departures = new DepartureView(this::units);
        complexity = Bindings.createObjectBinding(this::complexityNow, desk.results());
        desk.results().addListener((value, from, to) -> take());
        desk.read().addListener((value, from, to) -> tell());
        desk.settings().addListener((value, from, to) -> take());
        across.addListener((value, from, to) -> draw());
        upwards.addListener((value, from, to) -> draw());
        take();
    }

    private List<Block> complexityNow() {
        return desk.results()
                .get()
                .assessment()
                .map(
                        stated ->
                                ComplexityBlocks.of(
                                        stated,
                                        (of, words) -> new Spoken(of.candidate()).sentence(words)))
                .orElse(List.of());
    }

    /** The sliders. */
    public Weights weights() {
        return weights;
    }

    /** From where to where the values of each criterion run. */
    public Scales scales() {
        return scales;
    }

    /** The assessment ranked by the weights of the sliders; empty until there is one. */
    public ReadOnlyObjectProperty<Optional<Assessment>> now() {
        return now.getReadOnlyProperty();
    }

    /** The candidates, best first. */
    public ObservableList<RankRow> ranks() {
        return ranksShown;
    }

    /** The candidates as the study itself ranks them, with what each requirement says of them. */
    public ReadOnlyObjectProperty<List<Appraisal>> appraisals() {
        return appraisals.getReadOnlyProperty();
    }

    /** What unseats the leader, and how rank shares were counted, a sentence each. */
    public ObservableList<String> firmness() {
        return firmnessShown;
    }

    /** Warnings that candidates lack, a sentence each. */
    public ObservableList<String> warnings() {
        return warningsShown;
    }

    /** What complexity is made of, how the order hangs on it, and what the pilot has to do. */
    public ObservableValue<List<Block>> complexity() {
        return complexity;
    }

    /** What the trade-off lays across. */
    public ObjectProperty<CriterionName> across() {
        return across;
    }

    /** What the trade-off lays upwards. */
    public ObjectProperty<CriterionName> upwards() {
        return upwards;
    }

    /** The candidates by the two. */
    public ReadOnlyObjectProperty<Optional<TradeOff>> tradeOff() {
        return tradeOff.getReadOnlyProperty();
    }

    /** Two candidates against each other. */
    public SideBySide sideBySide() {
        return sideBySide;
    }

    /** The same two, like for like. */
    public Facing facing() {
        return facing;
    }

    /** Who is first, how firmly, what it still breaks, and what the next one buys. */
    public Answering answering() {
        return answering;
    }

    /** The search for simpler layouts. */
    public Exploring exploring() {
        return exploring;
    }

    /** Every candidate against the baseline. */
    public DepartureView departures() {
        return departures;
    }

    /** What the user must know of what is shown, or do for anything to be shown; else empty. */
    public ReadOnlyStringProperty notice() {
        return notice.getReadOnlyProperty();
    }

    /** Opens the story of a failure. */
    public void open(DifferenceRow.CandidateFailure told) {
        desk.go(Destination.of(AreaName.BREAK, told.candidate(), told.failure()));
    }

    /** Looks for what would meet a requirement that a candidate misses. */
    public void mend(Appraisal appraisal, RequirementMet missed) {
        offers.ask(Trouble.missed(appraisal, missed));
    }

    /**
     * Writes the weights of the sliders and the edited scales into the study.
     *
     * @return why it was not done, and what to do; empty if it was
     */
    public Optional<String> write() {
        Optional<YamlDocument> study = desk.draft().document(Desk.STUDY_FILE);
        if (study.isEmpty()) {
            return Optional.of("There is no " + Desk.STUDY_FILE + " to write weights into.");
        }
        if (!scales.refusal().get().isEmpty()) {
            return Optional.of(scales.refusal().get());
        }
        return desk.attempt(StudyWeights.change(study.get(), weights.now(), scales.edited()));
    }

    private Optional<Assessment> stated() {
        return desk.results().get().assessment();
    }

    private void take() {
        scales.take(stated().map(a -> a.study().scales()).orElse(List.of()));
        weights.take(stated().map(a -> a.study().goals().weights()).orElse(List.of()));
        appraisals.set(stated().map(RankingOrder::of).orElse(List.of()));
        warnings.setAll(OtherFindings.missingWarnings(appraisals.get()));
        departures.take(stated());
        draw();
        rank();
    }

    private void rank() {
        List<Weight> chosen = weights.now();
        boolean none = chosen.stream().allMatch(w -> w.weight() == 0);
        if (!none || stated().isEmpty()) {
            now.set(stated().map(a -> ranked(a, chosen)));
            ranks.setAll(rows());
            List<String> said = now.get().map(Deciding::sentences).orElse(List.of());
            if (!firmness.equals(said)) {
                firmness.setAll(said);
            }
            sideBySide.take(now.get());
        }
        tell();
    }

    private Assessment ranked(Assessment basis, List<Weight> chosen) {
        return scales.edited().isEmpty()
                ? Assess.reranked(basis, chosen)
                : Assess.preferring(
                        basis,
                        basis.study().goals().preferences().weighed(chosen).scaled(scales.now()));
    }

    private List<RankRow> rows() {
        return now.get()
                .flatMap(a -> stated().map(before -> RankRow.of(a, before, units())))
                .orElse(List.of());
    }

    private static List<String> sentences(Assessment assessment) {
        return assessment
                .ranking()
                .map(r -> LeaderFirmness.unseating(assessment, r))
                .orElse(List.of());
    }

    private void draw() {
        tradeOff.set(
                stated().filter(a -> !a.appraisals().isEmpty())
                        .map(a -> TradeOff.of(a, across.get(), upwards.get(), units())));
    }

    private void tell() {
        notice.set(DecideNotice.of(desk, weights.now()));
    }

    private UnitSystem units() {
        return desk.settings().get().units();
    }
}
