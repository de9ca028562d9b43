package stillturning.assess;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.story.UntoldStory;

class CrossCheckTest {
    @ParameterizedTest
    @ValueSource(strings = {"sandpiper", "first-steps"})
    void look(String name) throws UntoldStory {
        Study study = StudyReader.read(Path.of("architectures", name)).study().orElseThrow();
        for (int i = 0; i < 2; i++) {
            for (Candidate c : study.candidates()) {
                long t = System.nanoTime();
                var all = Assess.disagreements(study, c);
                System.err.println(
                        c.id()
                                + " "
                                + c.parts().size()
                                + " parts "
                                + (System.nanoTime() - t) / 1e6
                                + " ms");
                all.forEach(System.err::println);
            }
        }
    }
}
