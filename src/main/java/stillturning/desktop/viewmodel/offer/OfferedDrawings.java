package stillturning.desktop.viewmodel.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import stillturning.assess.front.SearchLimits;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;

/**
 * What is offered now, and the one of it that is looked at. To be used on the screen's thread; Draw
 * shows it.
 */
public final class OfferedDrawings {

    /** What the work is called while it lasts. */
    public static final String LOOKING = "Looking for what would mend it";

    private static final String SKETCHING = "Drawing what is offered";

    private static final SearchLimits USUAL = new SearchLimits(2, 240);

    private final Desk desk;
    private final SearchLimits most;
    private final ReadOnlyObjectWrapper<Optional<Offered>> offered =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<OfferedDrawing>> chosen =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<OfferSketch>> sketch =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private AtomicBoolean stop = new AtomicBoolean();
    private boolean going;
    private String madeFrom = "";

    public OfferedDrawings(Desk desk) {
        this(desk, USUAL);
    }

    /**
     * @param most how far it is looked
     */
    OfferedDrawings(Desk desk, SearchLimits most) {
        this.desk = desk;
        this.most = most;
        desk.candidate().addListener((value, from, to) -> turn());
        desk.read().addListener((value, from, to) -> tell());
        desk.work().running().addListener((InvalidationListener) changed -> tell());
    }

    /** What is offered; empty while nothing was found yet. */
    public ReadOnlyObjectProperty<Optional<Offered>> offered() {
        return offered.getReadOnlyProperty();
    }

    /** The one that is looked at. */
    public ReadOnlyObjectProperty<Optional<OfferedDrawing>> chosen() {
        return chosen.getReadOnlyProperty();
    }

    /** It as it is drawn, once that is laid out. */
    public ReadOnlyObjectProperty<Optional<OfferSketch>> sketch() {
        return sketch.getReadOnlyProperty();
    }

    /** Whether something was asked for, or is looked at. */
    public ReadOnlyBooleanProperty open() {
        return open.getReadOnlyProperty();
    }

    /** Whether it is being looked for. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** What is looked for or was found, how far that is, or why it was not. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Looks for what would mend a trouble, and goes where that is shown. */
    public void ask(Trouble trouble) {
        go(trouble.candidate());
        take(Optional.empty());
        madeFrom = desk.read().get().fingerprint();
        words.set(trouble.words());
        stop = new AtomicBoolean();
        desk.work()
                .start(
                        LOOKING,
                        new MendWork(desk.draft(), trouble, most, stop),
                        found -> take(Optional.of(found)),
                        this::refuse);
        tell();
    }

    /** Shows what was found elsewhere, one of it chosen, and goes where that is shown. */
    public void show(Offered found, OfferedDrawing first, String fingerprint) {
        go(first.before().id());
        madeFrom = fingerprint;
        take(Optional.of(found));
        choose(first);
    }

    private void go(String candidate) {
        desk.work().cancel(LOOKING);
        going = true;
        desk.go(new Destination(AreaName.DRAW, Optional.of(candidate), Optional.empty()));
        going = false;
        open.set(true);
    }

    /** Ends the search with what it found by now. */
    public void stop() {
        stop.set(true);
    }

    /** Goes back to the drawing itself; a search is called off. */
    public void dismiss() {
        desk.work().cancel(LOOKING);
        desk.work().cancel(SKETCHING);
        offered.set(Optional.empty());
        choose(Optional.empty());
        open.set(false);
        tell();
    }

    /** Looks at one. */
    public void choose(OfferedDrawing offer) {
        choose(Optional.of(offer));
    }

    private void choose(Optional<OfferedDrawing> offer) {
        if (!chosen.get().equals(offer)) {
            chosen.set(offer);
            sketch.set(Optional.empty());
            offer.ifPresent(this::lay);
        }
    }

    private void lay(OfferedDrawing offer) {
        desk.work()
                .start(
                        SKETCHING,
                        progress -> OfferSketch.of(offer),
                        laid -> sketch.set(Optional.of(laid)),
                        this::refuse);
    }

    /**
     * Writes the one that is looked at as a new candidate, and opens that.
     *
     * @return why it was not done, and what to do; empty if it was
     */
    public Optional<String> save() {
        Optional<OfferedDrawing> offer = chosen.get();
        if (offer.isEmpty()) {
            return Optional.of("Choose one first.");
        }
        String name = free(offer.get().name());
        Optional<String> refused =
                desk.attempt(
                        new Change(
                                "New candidate " + name + " from what was offered",
                                List.of(
                                        new DraftStep.Create(
                                                Desk.file(name), offer.get().text()))));
        if (refused.isEmpty()) {
            dismiss();
            desk.open(name);
        }
        return refused;
    }

    private String free(String name) {
        List<String> taken = desk.candidates();
        String free = name;
        for (int count = 2; taken.contains(free); count++) {
            free = name + "-" + count;
        }
        return free;
    }

    private void take(Optional<Offered> found) {
        offered.set(found);
        choose(found.stream().flatMap(f -> f.offers().stream()).findFirst());
        tell();
    }

    private void refuse(Exception reason) {
        tell();
        words.set("It could not be found out: " + reason.getMessage() + ".");
    }

    /** What is offered belongs to the candidate from which it was asked for. */
    private void turn() {
        if (!going && open.get()) {
            dismiss();
        }
    }

    private void tell() {
        working.set(desk.work().busy(LOOKING));
        Optional<String> at =
                desk.work().running().stream()
                        .filter(r -> r.name().equals(LOOKING))
                        .findFirst()
                        .map(Running::words);
        at.or(() -> offered.get().map(this::told)).ifPresent(words::set);
    }

    private String told(Offered found) {
        List<String> said = new ArrayList<>();
        said.add(found.heading());
        if (!madeFrom.equals(desk.read().get().fingerprint())) {
            said.add("The study has changed since; ask again for what holds now.");
        }
        return String.join(" ", said);
    }
}
