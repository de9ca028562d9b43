package stillturning.desktop.viewmodel.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Guesses;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.assess.suggest.StudyMends;
import stillturning.dossier.Dossier.Jointness;
import stillturning.dossier.Kept;
import stillturning.files.ReadStudy;
import stillturning.files.value.Assumption;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.reliability.cutset.SearchBlock;
import stillturning.reliability.cutset.Searched;
import stillturning.report.page.Document.Chapter;
import stillturning.report.pair.PairQuestion;
import stillturning.sizing.result.SizingReport;

/**
 * Answers that took time, and the finished parts of those that were called off; they hold as long
 * as what they are about stays the same, whatever the heading of the study says.
 */
final class KeptAnswers implements Kept {

    /** All that reaches an answer. */
    record AnswerBasis(
            Study.Aircraft aircraft,
            Study.Goals goals,
            List<Candidate> candidates,
            Chances chances,
            Installation installation,
            List<Assumption> assumptions) {

        static AnswerBasis of(Study study, ReadStudy read) {
            return new AnswerBasis(
                    study.aircraft(),
                    study.goals(),
                    study.candidates(),
                    read.chances(),
                    read.sizes().installation(),
                    read.assumptions());
        }
    }

    private record Key(String events, SearchBlock block) {}

    private final AnswerBasis about;
    private final Map<Key, Searched> blocks = new HashMap<>();
    private Optional<List<SizingReport>> sizes = Optional.empty();
    private Optional<Guesses> guesses = Optional.empty();
    private Optional<EqualBatteries> equal = Optional.empty();
    private Optional<PairQuestion> pair = Optional.empty();
    private Optional<Jointness> together = Optional.empty();
    private Optional<Chapter> groundTest = Optional.empty();
    private final Map<String, StudyMends> mends = new HashMap<>();

    KeptAnswers(AnswerBasis about) {
        this.about = about;
    }

    boolean isAbout(AnswerBasis other) {
        return about.equals(other);
    }

    synchronized Optional<List<SizingReport>> sizes() {
        return sizes;
    }

    synchronized void sizes(List<SizingReport> found) {
        sizes = Optional.of(found);
    }

    synchronized Optional<Guesses> guesses() {
        return guesses;
    }

    synchronized void guesses(Guesses found) {
        guesses = Optional.of(found);
    }

    synchronized Optional<EqualBatteries> equal() {
        return equal;
    }

    synchronized void equal(Optional<EqualBatteries> found) {
        equal = found;
    }

    synchronized Optional<PairQuestion> pair() {
        return pair;
    }

    synchronized void pair(PairQuestion found) {
        pair = Optional.of(found);
    }

    synchronized Optional<Jointness> together() {
        return together;
    }

    synchronized void together(Jointness found) {
        together = Optional.of(found);
    }

    synchronized Optional<Chapter> groundTest() {
        return groundTest;
    }

    synchronized void groundTest(Chapter found) {
        groundTest = Optional.of(found);
    }

    /** What would mend a candidate, by its id. */
    synchronized Optional<StudyMends> mends(String candidate) {
        return Optional.ofNullable(mends.get(candidate));
    }

    synchronized void mends(String candidate, StudyMends found) {
        mends.put(candidate, found);
    }

    @Override
    public synchronized Optional<Searched> known(String events, int count, SearchBlock block) {
        return Optional.ofNullable(blocks.get(new Key(events, block)));
    }

    @Override
    public synchronized void done(String events, Searched searched) {
        blocks.put(new Key(events, searched.block()), searched);
    }
}
