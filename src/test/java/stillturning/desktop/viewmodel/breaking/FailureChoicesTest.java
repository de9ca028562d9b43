package stillturning.desktop.viewmodel.breaking;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;

class FailureChoicesTest {

    @Test
    void everythingThatTheCatalogueOfFailuresKnowsCanBeChosen() {
        ReadStudy read = StudyReader.read(Path.of("architectures", "sandpiper"));
        Study study = read.study().orElseThrow();
        for (Candidate candidate : study.candidates()) {
            FailureChoices choices = FailureChoices.of(study, candidate, read.chances());
            Set<Failure> offered =
                    choices.all().stream().map(FailureChoice::failure).collect(Collectors.toSet());
            List<Failure> dead = FailureCatalogue.deadLampsOf(candidate);
            assertFalse(dead.isEmpty(), candidate.id());
            assertTrue(offered.containsAll(dead), candidate.id());
            assertTrue(offered.containsAll(FailureCatalogue.singlesOf(candidate)), candidate.id());
            assertTrue(
                    offered.containsAll(FailureCatalogue.operatingCasesOf(candidate)),
                    candidate.id());
            FailureCatalogue.omissionsOf(candidate)
                    .forEach(left -> assertTrue(choices.called(left.name()).isPresent()));
        }
    }
}
