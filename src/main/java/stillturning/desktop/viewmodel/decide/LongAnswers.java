package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.Guessing;
import stillturning.dossier.JointSearch;
import stillturning.dossier.Kept;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.reliability.runup.Card;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.terminal.GuessTexts;
import stillturning.story.UntoldStory;

/**
 * What takes minutes to find out about the first one, each begun only on wish: its checks before a
 * flight, and the guesses that could unseat it. To be used on the screen's thread.
 */
public final class LongAnswers {

    /** What counting the checks before a flight is called while it lasts. */
    public static final String COUNTING = "Counting run-up checks";

    /** What trying guesses is called while it lasts. */
    public static final String GUESSING = "Trying guesses along their ranges";

    /** So often all guesses are drawn at once; its error is said beside it. */
    private static final int DRAWS = 60;

    /** An answer, and the texts that it was found from. */
    private record Found<T>(String fingerprint, T answer) {}

    /** Something to do at one assessment. */
    private interface Question<T> {
        Optional<T> answer(Assessment assessment, WorkHandle progress) throws UntoldStory;
    }

    private final Desk desk;
    private final Runnable changed;
    private final ReadOnlyBooleanWrapper uncounted = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper untried = new ReadOnlyBooleanWrapper();
    private Optional<Found<Optional<Card>>> card = Optional.empty();
    private Optional<Found<Optional<Guesses>>> guesses = Optional.empty();
    private String refusal = "";

    /**
     * @param changed told when there is something new
     */
    LongAnswers(Desk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
    }

    /** Whether the checks are not counted, nor being so, and can be. */
    public ReadOnlyBooleanProperty uncounted() {
        return uncounted.getReadOnlyProperty();
    }

    /** Whether guesses are not tried, nor being so, and can be. */
    public ReadOnlyBooleanProperty untried() {
        return untried.getReadOnlyProperty();
    }

    /** Begins to count the checks that the first one needs before each flight. */
    public void count() {
        ReadStudy read = desk.read().get();
        begin(
                COUNTING,
                (assessment, progress) -> card(assessment, read, progress),
                found -> card = Optional.of(found));
    }

    /** Begins to try each guess of the study's files along its range, and all of them at once. */
    public void tryGuesses() {
        StudyReader reader = desk.draft().reader();
        ReadStudy read = desk.read().get();
        begin(
                GUESSING,
                (assessment, progress) -> {
                    Doubts doubts = new Guessing(reader, read).doubts(false).drawn(DRAWS);
                    return Optional.of(
                            Assess.guesses(
                                    assessment,
                                    doubts,
                                    steps(doubts.trials(), GUESSING, progress)));
                },
                found -> guesses = Optional.of(found));
    }

    private <T> void begin(String name, Question<T> question, Consumer<Found<Optional<T>>> keep) {
        Optional<Assessment> stated = desk.results().get().assessment();
        if (stated.isEmpty() || desk.stale()) {
            return;
        }
        String fingerprint = desk.results().get().fingerprint();
        refusal = "";
        desk.work()
                .start(
                        name,
                        progress ->
                                new Found<>(fingerprint, question.answer(stated.get(), progress)),
                        found -> {
                            keep.accept(found);
                            changed.run();
                        },
                        reason -> {
                            refusal = name + " failed: " + reason.getMessage() + ".";
                            changed.run();
                        });
    }

    private static Consumer<String> steps(int most, String name, WorkHandle progress) {
        AtomicInteger done = new AtomicInteger();
        progress.report(0, name);
        return step -> {
            int so = done.incrementAndGet();
            progress.report(Math.min(1, (double) so / most), name + ": " + so + " of " + most);
        };
    }

    private static Optional<Card> card(Assessment assessment, ReadStudy read, WorkHandle progress)
            throws UntoldStory {
        Study study = assessment.study();
        String first = assessment.ranking().map(r -> r.leader().name()).orElse("");
        Study alone =
                new Study(
                        study.id(),
                        study.heading(),
                        study.aircraft(),
                        study.goals(),
                        study.candidate(first).stream().toList());
        JointSearch search = new JointSearch(alone, read.chances(), JointSearch.PAIRS);
        return search
                .work(Kept.NOTHING, steps(search.blocks(), COUNTING, progress))
                .found()
                .stream()
                .findFirst()
                .map(CombinedFindings::card);
    }

    /** The checks that the first one needs, if they were counted. */
    Optional<Card> card() {
        return ofNow(card);
    }

    /** Which guesses matter, if they were tried. */
    Optional<Guesses> guesses() {
        return ofNow(guesses);
    }

    private <T> Optional<T> ofNow(Optional<Found<Optional<T>>> found) {
        return found.filter(f -> f.fingerprint.equals(desk.results().get().fingerprint()))
                .flatMap(Found::answer);
    }

    /** Calls all of it off. */
    void cancel() {
        desk.work().cancel(COUNTING);
        desk.work().cancel(GUESSING);
        refusal = "";
    }

    /** Sets what can be asked. */
    void tell() {
        boolean can = desk.results().get().assessment().isPresent() && !desk.stale();
        uncounted.set(can && card().isEmpty() && !desk.work().busy(COUNTING));
        untried.set(can && guesses().isEmpty() && !desk.work().busy(GUESSING));
    }

    /** What to find out next, once guesses were tried; and what kept something from being found. */
    List<Block> blocks(Assessment assessment) {
        List<Block> blocks = new ArrayList<>();
        guesses()
                .map(tried -> new GuessTexts(assessment, tried))
                .ifPresent(
                        texts -> {
                            blocks.add(new Heading("What to find out next"));
                            blocks.add(new Points(points(texts)));
                            blocks.add(new Note(texts.method()));
                        });
        if (!refusal.isEmpty()) {
            blocks.add(new Note(refusal));
        }
        return blocks;
    }

    private static List<String> points(GuessTexts texts) {
        List<String> points = new ArrayList<>();
        texts.rows()
                .forEach(
                        row ->
                                points.add(
                                        row.name()
                                                + ", "
                                                + row.source()
                                                + " (guessed "
                                                + row.value()
                                                + "): turns an answer in "
                                                + row.chance()
                                                + " of its range, worth "
                                                + row.worth()
                                                + (row.finding().isEmpty()
                                                        ? "."
                                                        : "; " + row.finding() + ".")));
        points.addAll(texts.rest());
        return points;
    }
}
