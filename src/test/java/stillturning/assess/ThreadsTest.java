package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.files.StudyReader;
import stillturning.model.Study;

/** What is worked out in parallel is the same, to the last digit, with one thread and with four. */
class ThreadsTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();

    private static <T> List<T> withOneAndFour(Callable<T> work) throws Exception {
        List<T> found = new ArrayList<>();
        for (int threads : new int[] {1, 4}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                found.add(pool.submit(work).get());
            } finally {
                pool.shutdown();
            }
        }
        return found;
    }

    @Test
    void anAssessmentDoesNotDependOnTheNumberOfThreads() throws Exception {
        List<Assessment> found = withOneAndFour(() -> Assess.of(STUDY));
        assertTrue(found.get(0).appraisals().size() > 1);
        for (int i = 0; i < found.get(0).appraisals().size(); i++) {
            Appraisal one = found.get(0).appraisals().get(i);
            Appraisal other = found.get(1).appraisals().get(i);
            assertEquals(one.singles(), other.singles(), one.candidate().id());
        }
        assertEquals(found.get(0), found.get(1));
    }

    @Thorough
    @Test
    void whatDoesWorseElsewhereDoesNotDependOnIt() throws Exception {
        Assessment basis = Assess.of(STUDY);
        List<Elsewhere> found = withOneAndFour(() -> Assess.elsewhere(basis, done -> {}));
        assertTrue(!found.get(0).worse().isEmpty());
        assertEquals(found.get(0), found.get(1));
    }
}
