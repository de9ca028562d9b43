package stillturning.desktop.viewmodel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.requirement.Survey;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.DraftState;
import stillturning.dossier.RequirementSurvey;
import stillturning.files.LenientReading;
import stillturning.files.ReadStudy;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.finding.CandidateReading;
import stillturning.model.Candidate;
import stillturning.model.Study;

/**
 * The open study: what its texts say now, what was found out about it, which candidate is open, and
 * where the user wants to go. To be used on the screen's thread.
 */
public final class Desk {

    /** Name of the file that all candidates share. */
    public static final String STUDY_FILE = "study.yaml";

    private static final String ENDING = ".yaml";
    private static final String READING = "Reading the study";
    private static final String ASSESSING = "Breaking every part of every candidate";

    private final Draft draft;
    private final BackgroundWork work;
    private final ObjectProperty<Settings> settings;
    private final ReadOnlyObjectWrapper<LenientReading> reading;
    private final ReadOnlyObjectWrapper<ReadStudy> read;
    private final ReadOnlyObjectWrapper<DraftState> texts;
    private final ReadOnlyObjectWrapper<Results> results =
            new ReadOnlyObjectWrapper<>(Results.NONE);
    private final ObjectProperty<Optional<FoundLayouts>> found =
            new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper candidate = new ReadOnlyStringWrapper("");
    private final List<Consumer<Destination>> guides = new ArrayList<>();

    /**
     * @param first what the draft's texts say, read beforehand since it takes a while
     * @param settings shared with everybody who shows or changes them
     */
    public Desk(
            Draft draft,
            LenientReading first,
            BackgroundWork work,
            ObjectProperty<Settings> settings) {
        this.draft = draft;
        this.work = work;
        this.settings = settings;
        this.reading = new ReadOnlyObjectWrapper<>(first);
        this.read = new ReadOnlyObjectWrapper<>(first.read());
        this.texts = new ReadOnlyObjectWrapper<>(draft.state());
        openSome();
        take(first);
    }

    /** Reads what the texts of a draft say now; from any thread. */
    public static LenientReading reading(Draft draft) {
        return draft.reader().reading();
    }

    /** The study's files as they are edited. */
    public Draft draft() {
        return draft;
    }

    /** The texts as they are now, what is unsaved, what can be taken back. */
    public ReadOnlyObjectProperty<DraftState> texts() {
        return texts.getReadOnlyProperty();
    }

    /** What the last search for simpler layouts found, set by who searched; empty before. */
    public ObjectProperty<Optional<FoundLayouts>> found() {
        return found;
    }

    /**
     * Makes a change, as a whole or not at all.
     *
     * @throws ChangeRefused if it cannot be made; says why and what to do
     */
    public void make(Change change) throws ChangeRefused {
        draft.make(change);
        changed();
    }

    /**
     * Makes a change, as a whole or not at all.
     *
     * @return why it cannot be made, and what to do; empty if it was made
     */
    public Optional<String> attempt(Change change) {
        try {
            make(change);
            return Optional.empty();
        } catch (ChangeRefused refused) {
            return Optional.of(refused.why());
        }
    }

    /** Takes the last change back. */
    public void undo() {
        draft.undo();
        changed();
    }

    /** Makes the change again that was taken back last. */
    public void redo() {
        draft.redo();
        changed();
    }

    /** What the texts say, mistakes and all. */
    public ReadOnlyObjectProperty<ReadStudy> read() {
        return read.getReadOnlyProperty();
    }

    /** The same, with every candidate as far as it can be read. */
    public ReadOnlyObjectProperty<LenientReading> reading() {
        return reading.getReadOnlyProperty();
    }

    /** The study with those of its candidates that have no mistake, if there is one. */
    public Optional<Study> study() {
        return reading.get().sound();
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

    /** The candidate that is open, while its texts hold no mistake. */
    public Optional<Candidate> openCandidate() {
        return study().flatMap(s -> s.candidate(candidate.get()));
    }

    /** The candidate that is open, as far as it can be read. */
    public Optional<CandidateReading> openReading() {
        return Optional.ofNullable(reading.get().candidates().get(candidate.get()));
    }

    /** Work in the background. */
    public BackgroundWork work() {
        return work;
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

    /** Shows one thing of the open candidate. */
    public void go(AreaName area, String subject) {
        go(Destination.of(area, candidate.get(), subject));
    }

    /** To be called when the draft has changed: reads its texts, and finds out what follows. */
    public void changed() {
        DraftState now = draft.state();
        boolean same = now.revision() == texts.get().revision();
        texts.set(now);
        if (!same) {
            openSome();
            work.start(READING, progress -> reading(draft), this::take, this::refuse);
        }
    }

    /** One candidate is always open, if there is one. */
    private void openSome() {
        List<String> ids = candidates();
        if (!ids.contains(candidate.get())) {
            candidate.set(ids.isEmpty() ? "" : ids.get(0));
        }
    }

    /** Ids of the candidates that have a file, whether it can be read or not, by name. */
    public List<String> candidates() {
        return texts.get().texts().keySet().stream()
                .filter(file -> file.endsWith(ENDING) && !file.equals(STUDY_FILE))
                .map(file -> file.substring(0, file.length() - ENDING.length()))
                .sorted()
                .toList();
    }

    /** Name of a candidate's file. */
    public static String file(String candidate) {
        return candidate + ENDING;
    }

    private void take(LenientReading now) {
        reading.set(now);
        read.set(now.read());
        if (now.sound().isEmpty()) {
            work.cancel(ASSESSING);
        } else if (stale()) {
            assess(now.sound().get(), now.read().fingerprint());
        }
    }

    private void assess(Study study, String fingerprint) {
        Optional<Assessment> before = results.get().assessment();
        AtomicInteger done = new AtomicInteger();
        int all = study.candidates().size();
        Survey survey = new RequirementSurvey(study, read.get().sizes().installation());
        work.start(
                ASSESSING,
                task -> {
                    Consumer<String> progress =
                            id ->
                                    task.report(
                                            (double) done.incrementAndGet() / all,
                                            "Breaking every part: " + id + " is done");
                    return before.isPresent()
                            ? Assess.again(study, before.get(), survey, progress)
                            : Assess.of(study, survey, progress);
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
