package stillturning.dossier;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.groundtest.GroundTests;
import stillturning.report.groundtest.GroundTestSheet;
import stillturning.report.groundtest.PlannedTest;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document.Chapter;
import stillturning.story.UntoldStory;

/** The plan of a test on the ground of one candidate, for page and document. */
public record GroundTestWork(Study study, Candidate candidate) {

    /** Of the first in a ranking; empty where there is none. */
    public static Optional<GroundTestWork> ofFirst(Dossier dossier) {
        return dossier.ranked().candidates().stream()
                .findFirst()
                .map(first -> new GroundTestWork(dossier.assessment().study(), first));
    }

    /** How many failures are tried for it. */
    public int steps() {
        return GroundTests.tries(candidate);
    }

    /**
     * Does the work; a plan that cannot be made is a chapter that says why.
     *
     * @param progress told of each failure that was tried, from any thread; what it throws ends the
     *     work
     */
    public Chapter done(Consumer<String> progress) {
        return new Chapter("ground-test", "Ground test plan", blocks(progress));
    }

    private List<Block> blocks(Consumer<String> progress) {
        try {
            return GroundTestSheet.of(
                    new PlannedTest(
                            candidate,
                            study.aircraft().engine().logic().loads(),
                            GroundTests.of(study, candidate, progress)));
        } catch (UntoldStory e) {
            return List.of(new Words("It cannot be planned: " + e.getMessage() + "."));
        }
    }
}
