package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.source.Battery;

/** The demo compares architectures with equal batteries, and chemistry with equal architectures. */
class SandpiperLikeForLikeTest {

    private static final String OTHER_CHEMISTRY = "split-batteries-lithium";

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    @Test
    void allLayoutsHaveBatteriesOfOneChemistry() {
        assertEquals(
                1,
                STUDY.candidates().stream()
                        .filter(c -> !c.id().equals(OTHER_CHEMISTRY))
                        .flatMap(SandpiperLikeForLikeTest::batteries)
                        .map(b -> b.openCircuit().curve())
                        .distinct()
                        .count());
    }

    @Test
    void oneIsAnotherWithBatteriesOfAnotherChemistryAndNothingElseChanged() {
        Candidate lead = STUDY.candidate("split-batteries").orElseThrow();
        Candidate lithium = STUDY.candidate(OTHER_CHEMISTRY).orElseThrow();
        assertEquals(lead.joins(), lithium.joins());
        assertEquals(lead.cockpit(), lithium.cockpit());
        assertEquals(
                lead.parts().stream().map(Part::id).toList(),
                lithium.parts().stream().map(Part::id).toList());
        List<Part> changed =
                lithium.parts().stream().filter(p -> !lead.parts().contains(p)).toList();
        assertEquals(
                new TreeSet<>(List.of("main-battery", "engine-battery")),
                new TreeSet<>(changed.stream().map(Part::id).toList()));
    }

    private static Stream<Battery> batteries(Candidate candidate) {
        return candidate.parts().stream()
                .filter(Battery.class::isInstance)
                .map(Battery.class::cast);
    }
}
