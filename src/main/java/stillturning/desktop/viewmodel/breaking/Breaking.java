package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableDoubleValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.desktop.viewmodel.Desk;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.report.EventLines;
import stillturning.report.Spoken;
import stillturning.report.drawing.Picture;
import stillturning.report.oneline.DrawingStates;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.WatchedStory;

/**
 * Breaking parts of the open candidate: what is picked is played in the background whenever it, the
 * moment or the study changes, and the latest wins. To be used on the screen's thread.
 */
public final class Breaking {

    private static final String PLAYING = "Playing the failure";

    private final Desk desk;
    private final ObservableDoubleValue paperShape;
    private final StringProperty search = new SimpleStringProperty("");
    private final ObservableList<FailureChoice> offered = FXCollections.observableArrayList();
    private final ObservableList<FailureChoice> picked = FXCollections.observableArrayList();
    // kept, since a list that only passes on what happens to another is forgotten if nobody does
    private final ObservableList<FailureChoice> offeredToRead =
            FXCollections.unmodifiableObservableList(offered);
    private final ObservableList<FailureChoice> pickedToRead =
            FXCollections.unmodifiableObservableList(picked);
    private final ObjectProperty<Pilot> pilot = new SimpleObjectProperty<>(Pilot.PLANNED);
    private final ObjectProperty<Optional<Moment>> moment =
            new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<PlayedFailure>> played =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper coming = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
    private final Scrubber scrubber = new Scrubber();
    private Optional<Painted> painted = Optional.empty();
    private FailureChoices choices = FailureChoices.NONE;
    private Optional<Request> asked = Optional.empty();
    private Optional<Request> answered = Optional.empty();
    private boolean laidForPaper;

    /** What was painted last. */
    private record Painted(PlayedFailure of, DrawingStates.ShownStates shown, Picture picture) {}

    /**
     * @param paperShape width over height of what the diagram is shown on, 0 while nobody knows;
     *     what is drawn for it keeps its shape
     */
    public Breaking(Desk desk, ObservableDoubleValue paperShape) {
        this.desk = desk;
        this.paperShape = paperShape;
        search.addListener((of, before, now) -> offer());
        moment.addListener((of, before, now) -> play());
        pilot.addListener((of, before, now) -> lay());
        desk.read().addListener((of, before, now) -> takeStudy());
        desk.candidate().addListener((of, before, now) -> takeStudy());
        paperShape.addListener((of, before, now) -> layOut());
        takeStudy();
    }

    /** Words by which the offered choices are found. */
    public StringProperty search() {
        return search;
    }

    /** What can be picked, as far as the search has it. */
    public ObservableList<FailureChoice> offered() {
        return offeredToRead;
    }

    /** What fails, all at once. */
    public ObservableList<FailureChoice> picked() {
        return pickedToRead;
    }

    /** How the pilot keeps to the procedures. */
    public ObjectProperty<Pilot> pilot() {
        return pilot;
    }

    /**
     * MomentChoice in the flight it happens; empty for the phase in which the study's failures do.
     */
    public ObjectProperty<Optional<Moment>> moment() {
        return moment;
    }

    /** What came of it, with nothing picked too; empty until it is played. */
    public ReadOnlyObjectProperty<Optional<PlayedFailure>> played() {
        return played.getReadOnlyProperty();
    }

    /** Whether what is picked now is still being played, so that what is shown is older. */
    public ReadOnlyBooleanProperty coming() {
        return coming.getReadOnlyProperty();
    }

    /** Why there is nothing newer; empty if nothing went wrong. */
    public ReadOnlyStringProperty refusal() {
        return refusal.getReadOnlyProperty();
    }

    /** What the user should know of what is shown; empty if there is nothing. */
    public String notice() {
        if (desk.study().isEmpty()) {
            return "The study's files hold a mistake, so what is shown was played before it was"
                    + " made. Mend it in Draw.";
        }
        return refusal.get().isEmpty()
                ? ""
                : "This cannot be played, and what is shown is older: " + refusal.get();
    }

    /** The present time. */
    public Scrubber scrubber() {
        return scrubber;
    }

    /** Whether what is shown was played from something else than what is picked now. */
    public boolean stale() {
        return !answered.equals(asked);
    }

    /** Moments that can be chosen: the usual one, then those in the order of the flight. */
    public List<MomentChoice> moments() {
        return desk.study().map(MomentChoice::of).orElse(List.of());
    }

    /** Failures of one part of the open candidate. */
    public List<FailureChoice> of(String part) {
        return choices.of(part);
    }

    /** Lets this happen and nothing else. */
    public void pick(FailureChoice choice) {
        picked.setAll(List.of(choice));
        play();
    }

    /** Lets this happen as well, or no more if it was picked. */
    public void alsoPick(FailureChoice choice) {
        if (!picked.remove(choice)) {
            picked.add(choice);
        }
        play();
    }

    /** Picks a failure of the open candidate by its name; whether there is one. */
    public boolean pick(String name) {
        Optional<FailureChoice> found = choices.called(name);
        found.ifPresent(this::pick);
        return found.isPresent();
    }

    /** The story with the chosen pilot. */
    public Optional<WatchedStory> story() {
        return played.get().map(p -> p.with(pilot.get()));
    }

    /** The drawing as it looks at the present time; the same object while nothing changes. */
    public Optional<Picture> picture() {
        return played.get().map(this::picture);
    }

    @SuppressWarnings("ReferenceEquality") // comparing whole stories would cost more than painting
    private Picture picture(PlayedFailure of) {
        DrawingStates.ShownStates now = of.looksAt(pilot.get(), scrubber.seconds().get());
        if (painted.filter(p -> p.of == of && p.shown.equals(now)).isEmpty()) {
            painted = Optional.of(new Painted(of, now, of.laid().picture(now)));
        }
        return painted.orElseThrow().picture;
    }

    /** What each load has at any time of the story; empty until it is played. */
    public Optional<LoadsNow> loadsNow() {
        return played.get().map(p -> new LoadsNow(p, p.with(pilot.get())));
    }

    /** The story in words. */
    public List<EventLines.EventLine> lines() {
        return story().map(w -> EventLines.of(w.story())).orElse(List.of()).stream()
                .map(this::spoken)
                .toList();
    }

    private EventLines.EventLine spoken(EventLines.EventLine line) {
        return new EventLines.EventLine(
                line.number(),
                line.seconds(),
                line.time(),
                line.kind(),
                spoken(line.event()),
                line.because());
    }

    /** A sentence in which parts have the names that a person calls them by. */
    public String spoken(String sentence) {
        return desk.openCandidate().map(c -> new Spoken(c).sentence(sentence)).orElse(sentence);
    }

    /** What a person calls a part, a load or a procedure. */
    public String called(String name) {
        return desk.openCandidate().map(c -> new Spoken(c).of(name)).orElse(name);
    }

    /** A failure as a person calls it. */
    public String calledFailure(String name) {
        return desk.openCandidate().map(c -> new Spoken(c).failure(name)).orElse(name);
    }

    /** What the pilot has to do. */
    public List<PilotStep> steps() {
        return played.get().map(p -> p.steps(pilot.get())).orElse(List.of());
    }

    private void takeStudy() {
        Optional<Study> study = desk.study();
        Optional<Candidate> candidate = desk.openCandidate();
        if (study.isEmpty() || candidate.isEmpty()) {
            desk.work().cancel(PLAYING);
            asked = Optional.empty();
            coming.set(false);
            return;
        }
        choices = FailureChoices.of(study.get(), candidate.get(), desk.read().get().chances());
        List<FailureChoice> still = new ArrayList<>();
        picked.forEach(choice -> choices.called(choice.name()).ifPresent(still::add));
        picked.setAll(still);
        if (moment.get()
                .filter(m -> study.get().aircraft().phase(m.phase()).isEmpty())
                .isPresent()) {
            moment.set(Optional.empty());
        }
        offer();
        play();
    }

    private void offer() {
        offered.setAll(choices.fitting(search.get()));
    }

    private void play() {
        Optional<Request> request = request();
        if (request.isPresent() && request.equals(asked)) {
            return;
        }
        asked = request;
        coming.set(request.isPresent());
        if (request.isEmpty()) {
            desk.work().cancel(PLAYING);
            return;
        }
        Request now = request.get();
        double shape = paperShape.get();
        laidForPaper = shape > 0;
        Optional<LaidOutCandidate> drawn = played.get().map(PlayedFailure::laid);
        desk.work()
                .start(
                        PLAYING,
                        progress -> PlayedFailure.of(now, drawn, shape),
                        result -> take(request, Optional.of(result)),
                        this::refuse);
    }

    /** Once there is a paper, what was laid out without one is so again. */
    private void layOut() {
        if (!laidForPaper && paperShape.get() > 0 && asked.isPresent()) {
            asked = Optional.empty();
            play();
        }
    }

    private void refuse(Exception reason) {
        coming.set(false);
        refusal.set(String.valueOf(reason.getMessage()));
    }

    private Optional<Request> request() {
        return desk.study()
                .flatMap(
                        study ->
                                desk.openCandidate()
                                        .map(c -> new Request(study, c, picked, momentIn(study))));
    }

    private Moment momentIn(Study study) {
        return moment.get().orElse(Moment.heldIn(study.goals().failurePhase().name()));
    }

    private void take(Optional<Request> request, Optional<PlayedFailure> result) {
        Optional<Failure> before = played.get().map(PlayedFailure::failure);
        answered = request;
        coming.set(false);
        refusal.set("");
        Optional<TimeAxis> axis = result.map(p -> TimeAxis.of(p.with(pilot.get()).story()));
        // listeners of the story must find its axis
        scrubber.take(axis, !before.equals(result.map(PlayedFailure::failure)));
        played.set(result);
    }

    private void lay() {
        scrubber.take(story().map(w -> TimeAxis.of(w.story())), false);
    }
}
