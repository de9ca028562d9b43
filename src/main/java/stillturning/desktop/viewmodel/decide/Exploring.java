package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import stillturning.assess.Assessment;
import stillturning.assess.front.SearchLimits;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.FoundLayouts;
import stillturning.desktop.viewmodel.offer.Offered;
import stillturning.desktop.viewmodel.offer.OfferedDrawing;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.model.goal.CriterionName;
import stillturning.report.explored.FrontBlocks;
import stillturning.report.page.Block;

/**
 * The search for layouts that nothing outdoes, and what it found. Asked on wish, since it takes
 * minutes. To be used on the screen's thread.
 */
public final class Exploring {

    /** What the work is called while it lasts. */
    public static final String EXPLORING = "Looking for simpler layouts";

    /** Times to give it (min). */
    public static final List<Integer> MINUTES = List.of(1, 3, 10, 30);

    private static final SearchLimits USUAL = new SearchLimits(8, Integer.MAX_VALUE);
    private static final String INVITATION =
            "From every candidate, change by change, the program looks for layouts that meet every"
                    + " hard requirement and that nothing it looks at outdoes in complexity, weight and"
                    + " endurance. It ends when its time is up, or when you stop it. What it has looked at"
                    + " is kept: looking again goes on from there, as long as the study stays the same.";

    private final Desk desk;
    private final OfferedDrawings offers;
    private final SearchLimits most;
    private final ObjectProperty<Integer> minutes = new SimpleObjectProperty<>(3);
    private final ObjectProperty<CriterionName> across =
            new SimpleObjectProperty<>(CriterionName.WEIGHT);
    private final ObjectProperty<CriterionName> upwards =
            new SimpleObjectProperty<>(CriterionName.COMPLEXITY);
    private final ReadOnlyObjectWrapper<Optional<TradeOff>> picture =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Block>> blocks =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper(INVITATION);
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final TrialMemory memory = new TrialMemory();
    private AtomicBoolean stop = new AtomicBoolean();
    private Optional<ExploreWork.HeldFront> held = Optional.empty();
    private Optional<GrowingFront> growing = Optional.empty();
    private String refusal = "";

    Exploring(Desk desk, OfferedDrawings offers) {
        this(desk, offers, USUAL);
    }

    /**
     * @param most how far it is looked
     */
    Exploring(Desk desk, OfferedDrawings offers, SearchLimits most) {
        this.desk = desk;
        this.offers = offers;
        this.most = most;
        across.addListener((value, from, to) -> draw());
        upwards.addListener((value, from, to) -> draw());
        desk.settings().addListener((value, from, to) -> draw());
        desk.read().addListener((value, from, to) -> tell());
        desk.work().running().addListener((InvalidationListener) changed -> tell());
    }

    /** How long it may take (min). */
    public ObjectProperty<Integer> minutes() {
        return minutes;
    }

    /** What the picture lays across. */
    public ObjectProperty<CriterionName> across() {
        return across;
    }

    /** What the picture lays upwards. */
    public ObjectProperty<CriterionName> upwards() {
        return upwards;
    }

    /** What was found, and the candidates; empty before it was looked for. */
    public ReadOnlyObjectProperty<Optional<TradeOff>> picture() {
        return picture.getReadOnlyProperty();
    }

    /** What was found in words, and what was not looked at. */
    public ReadOnlyObjectProperty<List<Block>> blocks() {
        return blocks.getReadOnlyProperty();
    }

    /** What to do, how far it is, or why nothing was found. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Whether it is under way. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Begins. */
    public void start() {
        refusal = "";
        stop = new AtomicBoolean();
        desk.work()
                .start(
                        EXPLORING,
                        new ExploreWork(
                                desk.draft(), most, minutes.get(), stop, memory, this::grow),
                        this::take,
                        this::refuse);
    }

    /** Ends it with what it found by now. */
    public void stop() {
        stop.set(true);
    }

    /** Calls it off. */
    public void cancel() {
        desk.work().cancel(EXPLORING);
    }

    /** How many layouts were looked at in the study as it was asked about last. */
    int lookedAt() {
        return memory.size();
    }

    /**
     * Shows the drawing of what a point of the picture stands for; what is found by now has none
     * before the search ends.
     */
    public void open(String id) {
        if (!id.isEmpty()) {
            openDrawing(id);
        }
    }

    private void openDrawing(String id) {
        Optional<OfferedDrawing> found =
                held.flatMap(h -> h.offers().stream().filter(o -> o.name().equals(id)).findFirst());
        found.ifPresentOrElse(
                offer -> show(offer, held.orElseThrow()),
                () -> desk.go(new Destination(AreaName.DRAW, Optional.of(id), Optional.empty())));
    }

    private void show(OfferedDrawing offer, ExploreWork.HeldFront of) {
        String heading =
                "Layouts that meet every hard requirement and that nothing looked at outdoes.";
        offers.show(
                new Offered(heading, of.offers(), FrontBlocks.limits(of.front())),
                offer,
                of.fingerprint());
    }

    private void grow(GrowingFront now) {
        growing = Optional.of(now);
        draw();
    }

    private void take(ExploreWork.HeldFront found) {
        held = Optional.of(found);
        desk.found().set(Optional.of(new FoundLayouts(found.front(), found.fingerprint())));
        blocks.set(new FrontBlocks(found.front()).all());
        draw();
        tell();
    }

    private void refuse(Exception reason) {
        refusal = "It could not be found out: " + reason.getMessage() + ".";
        tell();
    }

    private void draw() {
        Optional<Assessment> candidates = desk.results().get().assessment();
        picture.set(
                growing.isPresent() && candidates.isPresent()
                        ? Optional.of(
                                picture(
                                        candidates.get(),
                                        growing.get()
                                                .among(
                                                        candidates.get(),
                                                        across.get(),
                                                        upwards.get())))
                        : held.map(ExploreWork.HeldFront::front)
                                .map(
                                        front ->
                                                picture(
                                                        front.assessment(),
                                                        ExploreWork.valued(
                                                                front,
                                                                across.get(),
                                                                upwards.get()))));
    }

    private TradeOff picture(Assessment of, List<TradeOff.Valued> points) {
        return TradeOff.of(
                points,
                across.get(),
                upwards.get(),
                of.study().heading().currency(),
                desk.settings().get().units());
    }

    private void tell() {
        working.set(desk.work().busy(EXPLORING));
        if (!working.get() && growing.isPresent()) {
            growing = Optional.empty();
            draw();
        }
        List<String> said = new ArrayList<>();
        held.filter(h -> !h.fingerprint().equals(desk.read().get().fingerprint()))
                .ifPresent(h -> said.add("What stands here is from before the last changes."));
        desk.work().running().stream()
                .filter(r -> r.name().equals(EXPLORING))
                .findFirst()
                .map(Running::words)
                .or(() -> Optional.of(refusal).filter(r -> !r.isEmpty()))
                .or(() -> held.isEmpty() ? Optional.of(INVITATION) : Optional.empty())
                .ifPresent(said::add);
        words.set(String.join(" ", said));
    }
}
