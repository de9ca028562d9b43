package stillturning.desktop.viewmodel.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.bench.Thorough;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Study;
import stillturning.report.suggest.MendBlocks;

class MendsWorkTest {

    private static final SearchLimits FEW = new SearchLimits(1, 4);

    /** Called off while the second candidate is looked at: the first one is not asked again. */
    @Thorough
    @Test
    void whatWasFoundBeforeItWasCalledOffIsKeptAndTheWholeIsThatOfOneSearch() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "first-steps"));
        ReadStudy read = reader.study(Variation.NONE);
        Study study = read.study().orElseThrow();
        KeptAnswers known = new KeptAnswers(KeptAnswers.AnswerBasis.of(study, read));
        LightestChanges changes = new LightestChanges(reader, read);
        MendsWork work = new MendsWork(changes, study.candidates(), FEW, known);
        assertEquals(FEW.trials() * study.candidates().size(), work.steps());

        List<String> told = new ArrayList<>();
        assertThrows(
                CancellationException.class,
                () ->
                        work.done(
                                step -> {
                                    if (told.size() == FEW.trials()) {
                                        throw new CancellationException();
                                    }
                                    told.add(step);
                                }));
        assertEquals(
                IntStream.rangeClosed(1, FEW.trials()).mapToObj(String::valueOf).toList(), told);
        assertTrue(known.mends(study.candidates().get(0).id()).isPresent());
        assertEquals(FEW.trials() * (study.candidates().size() - 1), work.steps());

        assertEquals(
                new MendBlocks(
                                changes.of(study.candidates(), FEW, same -> SearchWatch.NOBODY)
                                        .mends())
                        .chapter(),
                work.done(step -> {}));
        assertEquals(0, work.steps());
    }
}
