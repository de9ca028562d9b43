package stillturning.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;

/**
 * The open study: what its texts say now, what was found out about it, which candidate is open, and
 * where the user wants to go. To be used on the screen's thread.
 */
public final class Desk {

    private static final String READING = "Reading the study";
    private static final String ASSESSING = "Breaking every part of every candidate";

    private final Supplier<ReadStudy> texts;
    private final Errands errands;
    private final ObjectProperty<Settings> settings;
    private final ReadOnlyObjectWrapper<ReadStudy> read;
    private final ReadOnlyObjectWrapper<Results> results =
            new ReadOnlyObjectWrapper<>(Results.NONE);
    private final ReadOnlyStringWrapper candidate = new ReadOnlyStringWrapper("");
    private final List<Consumer<Destination>> guides = new ArrayList<>();

    /**
     * @param texts reads the study as its texts are at that moment, from any thread
     * @param settings shared with everybody who shows or changes them
     */
    public Desk(Supplier<ReadStudy> texts, Errands errands, ObjectProperty<Settings> settings) {
        this.texts = texts;
        this.errands = errands;
        this.settings = settings;
        this.read = new ReadOnlyObjectWrapper<>(texts.get());
        take(read.get());
    }

    /** What the texts say, mistakes and all. */
    public ReadOnlyObjectProperty<ReadStudy> read() {
        return read.getReadOnlyProperty();
    }

    /** The study, while its texts hold no mistake. */
    public Optional<Study> study() {
        return read.get().study();
    }

    /** What was last found out; see {@link #stale()}. */
    public ReadOnlyObjectProperty<Results> results() {
        return results.getReadOnlyProperty();
    }

    /** Whether the results were made from other texts than those of now. */
    public boolean stale() {
        return !results.get().fingerprint().equals(read.get().fingerprint());
    }

    /** Id of the candidate that is open; empty if there is none. */
    public ReadOnlyStringProperty candidate() {
        return candidate.getReadOnlyProperty();
    }

    /** The candidate that is open, while the texts hold no mistake. */
    public Optional<Candidate> openCandidate() {
        return study().flatMap(s -> s.candidate(candidate.get()));
    }

    /** Work in the background. */
    public Errands errands() {
        return errands;
    }

    /** What the user has chosen. */
    public ObjectProperty<Settings> settings() {
        return settings;
    }

    /** Opens another candidate. */
    public void open(String id) {
        candidate.set(id);
    }

    /** To be told of every wish to see something elsewhere. */
    public void guide(Consumer<Destination> guide) {
        guides.add(guide);
    }

    /** Shows something, in whichever area that is. */
    public void go(Destination destination) {
        destination.candidate().ifPresent(this::open);
        List.copyOf(guides).forEach(g -> g.accept(destination));
    }

    /** To be called when the texts have changed: reads them, and finds out what follows. */
    public void changed() {
        errands.start(READING, reins -> texts.get(), this::take, this::refuse);
    }

    private void take(ReadStudy now) {
        read.set(now);
        if (now.study().isEmpty()) {
            errands.callOff(ASSESSING);
        } else if (stale()) {
            assess(now.study().get(), now.fingerprint());
        }
    }

    private void assess(Study study, String fingerprint) {
        Optional<Assessment> before = results.get().assessment();
        AtomicInteger done = new AtomicInteger();
        int all = study.candidates().size();
        errands.start(
                ASSESSING,
                reins -> {
                    Consumer<String> progress =
                            id ->
                                    reins.far(
                                            (double) done.incrementAndGet() / all,
                                            "Breaking every part: " + id + " is done");
                    return before.isPresent()
                            ? Assess.again(study, before.get(), progress)
                            : Assess.of(study, progress);
                },
                found -> results.set(new Results(Optional.of(found), fingerprint, "")),
                this::refuse);
    }

    private void refuse(Exception reason) {
        Results last = results.get();
        results.set(
                new Results(
                        last.assessment(),
                        last.fingerprint(),
                        String.valueOf(reason.getMessage())));
    }
}
