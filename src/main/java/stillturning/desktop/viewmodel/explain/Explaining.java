package stillturning.desktop.viewmodel.explain;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.beans.InvalidationListener;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import stillturning.assess.Assessment;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.FoundLayouts;
import stillturning.desktop.viewmodel.Settings;
import stillturning.dossier.Dossier;
import stillturning.dossier.PageFile;
import stillturning.dossier.record.Recorded;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.report.explored.ExploredChapter;
import stillturning.report.page.Document.Chapter;

/**
 * The page for the talk with a counsellor: what goes onto it, the page as it was last written, and
 * whether it still tells what the study says. To be used on the screen's thread.
 */
public final class Explaining {

    /** The work, as the user reads of it. */
    public static final String WORK = "Writing the page";

    private static final String ENDING = ".html";

    private final Desk desk;
    private final BiFunction<Study, Candidate, Map<String, List<Failure>>> cases;
    private final Rationale rationale;
    private final Preview preview = new Preview();

    private final BooleanProperty sizes = new SimpleBooleanProperty(true);
    private final BooleanProperty guesses = new SimpleBooleanProperty();
    private final BooleanProperty together = new SimpleBooleanProperty();
    private final BooleanProperty groundTest = new SimpleBooleanProperty();
    private final BooleanProperty explored = new SimpleBooleanProperty();
    private final BooleanProperty mends = new SimpleBooleanProperty();
    private final ReadOnlyBooleanWrapper searched = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<WrittenPage>> page =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper writable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(-1);
    private final ReadOnlyStringWrapper at = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper advice = new ReadOnlyStringWrapper("");
    private Optional<KeptAnswers> answers = Optional.empty();
    private String refusal = "";
    private boolean wanted;

    /** Whether texts changed and the study was not read since. */
    private boolean unread;

    /**
     * @param cases the failures that each of a study's cases means in a candidate
     */
    public Explaining(Desk desk, BiFunction<Study, Candidate, Map<String, List<Failure>>> cases) {
        this.desk = desk;
        this.cases = cases;
        this.rationale = new Rationale(desk);
        desk.texts()
                .addListener((of, before, now) -> unread |= before.revision() != now.revision());
        desk.read()
                .addListener(
                        (InvalidationListener)
                                changed -> {
                                    unread = false;
                                    goOn();
                                });
        desk.results().addListener((InvalidationListener) changed -> goOn());
        desk.work().running().addListener((InvalidationListener) changed -> tell());
        desk.found().addListener((InvalidationListener) changed -> tell());
        List.of(sizes, guesses, together, groundTest, explored, mends)
                .forEach(choice -> choice.addListener((InvalidationListener) changed -> tell()));
        tell();
    }

    /** The study that is explained. */
    public Desk desk() {
        return desk;
    }

    /** The builder's own words. */
    public Rationale rationale() {
        return rationale;
    }

    /** Whether wires, protectors, loads and weight go onto the page. */
    public BooleanProperty sizes() {
        return sizes;
    }

    /** Whether it says which guesses matter. */
    public BooleanProperty guesses() {
        return guesses;
    }

    /** Whether it says what failures do together, and holds the run-up cards. */
    public BooleanProperty together() {
        return together;
    }

    /** Whether it holds the plan of a test on the ground of the first candidate. */
    public BooleanProperty groundTest() {
        return groundTest;
    }

    /** Whether it says what else was looked at, where that is known. */
    public BooleanProperty explored() {
        return explored;
    }

    /** Whether it says what would mend each thing that is wrong with each candidate. */
    public BooleanProperty mends() {
        return mends;
    }

    /** Whether simpler layouts were searched for in the study as it is now. */
    public ReadOnlyBooleanProperty searched() {
        return searched.getReadOnlyProperty();
    }

    private Optional<FoundLayouts> found() {
        return desk.found().get().filter(found -> found.isOf(desk.read().get()));
    }

    /** The page as it was last written; absent before. */
    public ReadOnlyObjectProperty<Optional<WrittenPage>> page() {
        return page.getReadOnlyProperty();
    }

    /** Whether a page is being written, or will be as soon as the study is assessed. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Whether a page can be asked for. */
    public ReadOnlyBooleanProperty writable() {
        return writable.getReadOnlyProperty();
    }

    /** How much of the work is done, from 0 to 1; below 0 if nobody knows. */
    public ReadOnlyDoubleProperty share() {
        return share.getReadOnlyProperty();
    }

    /** What the work is at; empty if there is none. */
    public ReadOnlyStringProperty at() {
        return at.getReadOnlyProperty();
    }

    /** What the user should know or do now; empty if the page is as asked for. */
    public ReadOnlyStringProperty advice() {
        return advice.getReadOnlyProperty();
    }

    /** Whether the page was made from other texts, or with other contents, than those of now. */
    public boolean stale() {
        return page.get()
                .filter(p -> !isOf(p, desk.read().get()) || !p.contents().equals(contents()))
                .isPresent();
    }

    private static boolean isOf(WrittenPage page, ReadStudy read) {
        return page.fingerprint().equals(read.fingerprint());
    }

    /** Writes the page, as soon as the study is assessed. */
    public void write() {
        rationale.commit();
        if (!rationale.error().get().isEmpty()) {
            return;
        }
        refusal = "";
        wanted = true;
        goOn();
    }

    /** Calls the work off; what was found out so far is kept for the next time. */
    public void cancel() {
        wanted = false;
        desk.work().cancel(WORK);
        tell();
    }

    private void goOn() {
        Optional<Assessment> assessment = desk.results().get().assessment();
        if (desk.study().isEmpty() || !desk.results().get().refusal().isEmpty()) {
            wanted = false;
        } else if (wanted && !unread && !desk.stale() && assessment.isPresent()) {
            wanted = false;
            begin(assessment.get(), desk.read().get());
        }
        tell();
    }

    private void begin(Assessment assessment, ReadStudy read) {
        Study study = assessment.study();
        KeptAnswers.AnswerBasis about = KeptAnswers.AnswerBasis.of(study, read);
        KeptAnswers known =
                answers.filter(a -> a.isAbout(about)).orElseGet(() -> new KeptAnswers(about));
        answers = Optional.of(known);
        Contents asked = contents();
        StudyReader anew = desk.draft().reader();
        Optional<Chapter> searched =
                found().filter(f -> asked.explored()).map(f -> ExploredChapter.of(f.front()));
        Dossier dossier =
                new Dossier(
                        assessment,
                        read,
                        c -> cases.apply(study, c),
                        Recorded.chapters(anew, study, read.fingerprint()));
        desk.work()
                .start(
                        WORK,
                        progress -> {
                            PageWork work = new PageWork(dossier, anew, asked, known, searched);
                            String html = work.page(progress);
                            return new WrittenPage(
                                    html,
                                    read.fingerprint(),
                                    asked,
                                    preview.put(study.id() + ENDING, html));
                        },
                        this::take,
                        this::refuse);
    }

    private void take(WrittenPage written) {
        page.set(Optional.of(written));
        tell();
    }

    private void refuse(Exception reason) {
        refusal = "The page could not be written: " + reason.getMessage() + ".";
        tell();
    }

    /**
     * Keeps the page that was last written in a file.
     *
     * @param file gets the usual ending if it has none
     * @param replace whether a file may go that this program did not write
     */
    public Saved save(Path file, boolean replace) {
        Path named = named(file);
        PageFile into = new PageFile(named);
        if (page.get().isEmpty()) {
            return new Saved.Refused("There is no page yet; write it first.");
        }
        if (!replace && into.isAnothers()) {
            return new Saved.Asks(named);
        }
        try {
            into.write(page.get().get().html());
            return new Saved.Done(named);
        } catch (IOException e) {
            return new Saved.Refused(
                    named + " cannot be written (" + e + "); choose another folder or name.");
        }
    }

    private static Path named(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".") ? file : file.resolveSibling(name + ENDING);
    }

    /** What a file of the page would usually be called. */
    public String fileName() {
        return desk.results().get().assessment().map(a -> a.study().id()).orElse("study") + ENDING;
    }

    /** Size of letters and symbols (%). */
    public ObservableValue<Integer> scalePercent() {
        return desk.settings().map(Settings::scalePercent);
    }

    private Contents contents() {
        return new Contents(
                sizes.get(),
                guesses.get(),
                together.get(),
                groundTest.get(),
                explored.get() && found().isPresent(),
                mends.get());
    }

    private void tell() {
        Optional<Running> work =
                desk.work().running().stream().filter(u -> u.name().equals(WORK)).findFirst();
        share.set(work.map(Running::share).orElse(-1.0));
        at.set(work.map(Running::words).orElse(wanted ? "Waiting for the assessment" : ""));
        working.set(wanted || work.isPresent());
        searched.set(found().isPresent());
        writable.set(desk.study().isPresent() && desk.results().get().refusal().isEmpty());
        advice.set(adviceNow());
    }

    private String adviceNow() {
        if (desk.study().isEmpty()) {
            return unreadable();
        }
        if (!desk.results().get().refusal().isEmpty()) {
            return "The study cannot be computed, so there is nothing to explain yet: "
                    + desk.results().get().refusal();
        }
        if (!refusal.isEmpty()) {
            return refusal;
        }
        if (page.get().isEmpty()) {
            return "Choose what goes onto the page, add in your own words why you decide as you do,"
                    + " then write the page.";
        }
        if (!isOf(page.get().get(), desk.read().get())) {
            return "The study has changed since this page was written. Write it again.";
        }
        return stale() ? "Other contents are chosen than this page has. Write it again." : "";
    }

    private String unreadable() {
        return desk.read().get().problems().stream()
                .findFirst()
                .map(
                        p ->
                                "The study has a mistake, so no page can be written: "
                                        + p.file().getFileName()
                                        + ", line "
                                        + p.line()
                                        + ": "
                                        + p.wrong()
                                        + "; "
                                        + p.right()
                                        + ".")
                .orElse("No study is open. Begin or open one under Start.");
    }
}
