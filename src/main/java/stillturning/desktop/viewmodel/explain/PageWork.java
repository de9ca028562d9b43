package stillturning.desktop.viewmodel.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Assess;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.dossier.Dossier;
import stillturning.dossier.Dossier.FurtherAnswers;
import stillturning.dossier.Dossier.Jointness;
import stillturning.dossier.GroundTestWork;
import stillturning.dossier.Guessing;
import stillturning.dossier.JointSearch;
import stillturning.dossier.PairWork;
import stillturning.dossier.SharedWork;
import stillturning.dossier.SizedCandidates;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.report.page.Document.Chapter;
import stillturning.report.pair.PairQuestion;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/** The work behind one page: asks what is asked for and not yet answered. */
final class PageWork {

    // about how long one of each takes (s); guesses, which only move the bar
    private static final double TRIAL = 1.5;
    private static final double SIZING = 0.5;
    private static final double BLOCK = 0.03;
    private static final double LOOK = 0.5;
    private static final double OPENED = 0.05;
    private static final double DRAWN = 0.5;

    private final Dossier dossier;
    private final Study ranked;
    private final Chances chances;
    private final Contents contents;
    private final KeptAnswers answers;
    private final Doubts doubts;
    private final Optional<PairWork> pair;
    private final Optional<JointSearch> search;
    private final Optional<GroundTestWork> groundTest;
    private final Optional<Chapter> explored;
    private final Optional<MendsWork> mends;

    /**
     * @param reader makes the study of the dossier again with another value
     * @param explored what else was looked at, if that is to go onto the page
     */
    PageWork(
            Dossier dossier,
            StudyReader reader,
            Contents contents,
            KeptAnswers answers,
            Optional<Chapter> explored) {
        this.dossier = dossier;
        this.ranked = dossier.ranked();
        this.chances = dossier.read().chances();
        this.contents = contents;
        this.answers = answers;
        this.explored = explored;
        this.doubts =
                asksGuesses()
                        ? new Guessing(reader, dossier.read()).doubts(false)
                        : new Doubts(List.of(), Optional.empty());
        this.pair =
                answers.pair().isEmpty()
                        ? PairWork.ofFirstTwo(dossier.assessment())
                                .map(work -> work.marked(dossier.read()))
                        : Optional.empty();
        this.search =
                asksTogether()
                        ? Optional.of(new JointSearch(ranked, chances, JointSearch.PAIRS))
                        : Optional.empty();
        this.groundTest =
                contents.groundTest() && answers.groundTest().isEmpty()
                        ? GroundTestWork.ofFirst(dossier)
                        : Optional.empty();
        this.mends =
                contents.mends()
                        ? dossier.read()
                                .study()
                                .map(
                                        study ->
                                                new MendsWork(
                                                        new LightestChanges(reader, dossier.read()),
                                                        study.candidates(),
                                                        LightestChanges.USUAL,
                                                        answers))
                        : Optional.empty();
    }

    /**
     * Does the work.
     *
     * @return the page
     * @throws UntoldStory if no candidate could be asked what its failures do together, or the
     *     first two could not be held against each other
     * @throws ChangeRefused if a candidate cannot be drawn in order to mend it
     */
    String page(WorkHandle progress) throws UntoldStory, ChangeRefused {
        WorkProgress course = planned(progress);
        if (answers.equal().isEmpty()) {
            answers.equal(equal(course));
        }
        if (pair.isPresent()) {
            answers.pair(pair(pair.get(), course));
        }
        if (asksGuesses()) {
            answers.guesses(guesses(course));
        }
        if (asksSizes()) {
            answers.sizes(sizes(course));
        }
        if (search.isPresent()) {
            answers.together(together(search.get(), course));
        }
        if (groundTest.isPresent()) {
            answers.groundTest(groundTest(groundTest.get(), course));
        }
        List<Chapter> lookedAt = new ArrayList<>(explored.stream().toList());
        if (mends.isPresent()) {
            lookedAt.add(mends(mends.get(), course));
        }
        progress.report(-1, "Setting the page");
        return dossier.page(
                new FurtherAnswers(
                        contents.guesses() ? answers.guesses() : Optional.empty(),
                        contents.sizes() ? answers.sizes().orElse(List.of()) : List.of(),
                        contents.together() ? answers.together() : Optional.empty(),
                        answers.equal(),
                        answers.pair(),
                        contents.groundTest() ? answers.groundTest() : Optional.empty(),
                        lookedAt));
    }

    private WorkProgress planned(WorkHandle progress) {
        WorkProgress course = new WorkProgress(progress);
        course.plan(answers.equal().isEmpty() ? mixes() : 0, TRIAL);
        pair.ifPresent(work -> course.plan(work.steps(), TRIAL));
        course.plan(trials(), TRIAL);
        if (asksSizes()) {
            course.plan(candidates(), SIZING);
        }
        search.ifPresent(
                s -> {
                    course.plan(s.blocks(), BLOCK);
                    course.plan(candidates(), LOOK);
                });
        groundTest.ifPresent(work -> course.plan(work.steps(), OPENED));
        mends.ifPresent(work -> course.plan(work.steps(), DRAWN));
        return course;
    }

    private int mixes() {
        return EqualBatteries.mixes(dossier.assessment());
    }

    private Optional<EqualBatteries> equal(WorkProgress course) {
        return EqualBatteries.of(
                dossier.assessment(), course.begin("Trying equal batteries", mixes(), TRIAL));
    }

    private static PairQuestion pair(PairWork work, WorkProgress course) throws UntoldStory {
        return work.done(course.begin("Holding the first against the next", work.steps(), TRIAL));
    }

    private int trials() {
        return doubts.trials();
    }

    private Guesses guesses(WorkProgress course) {
        Consumer<String> progress =
                course.begin("Trying guesses along their ranges", trials(), TRIAL);
        return Assess.guesses(dossier.assessment(), doubts, progress);
    }

    private List<SizingReport> sizes(WorkProgress course) {
        Consumer<String> progress =
                course.begin("Sizing wires and protectors", candidates(), SIZING);
        return SizedCandidates.of(ranked, dossier.read(), ranked.candidates(), progress).reports();
    }

    private Jointness together(JointSearch asking, WorkProgress course) throws UntoldStory {
        Consumer<String> blocks =
                course.begin("Asking what failures do together", asking.blocks(), BLOCK);
        var work = asking.work(answers, blocks);
        Consumer<String> looked = course.begin("Looking for what parts share", candidates(), LOOK);
        return new Jointness(work, SharedWork.of(ranked, chances, looked));
    }

    private static Chapter groundTest(GroundTestWork work, WorkProgress course) {
        return work.done(course.begin("Planning the ground test", work.steps(), OPENED));
    }

    private static Chapter mends(MendsWork work, WorkProgress course) throws ChangeRefused {
        return work.done(
                course.begin("Looking for what would mend what is wrong", work.steps(), DRAWN));
    }

    private boolean asksGuesses() {
        return contents.guesses() && answers.guesses().isEmpty();
    }

    private boolean asksSizes() {
        return contents.sizes() && answers.sizes().isEmpty();
    }

    private boolean asksTogether() {
        return contents.together()
                && answers.together().isEmpty()
                && !ranked.candidates().isEmpty();
    }

    private int candidates() {
        return ranked.candidates().size();
    }
}
