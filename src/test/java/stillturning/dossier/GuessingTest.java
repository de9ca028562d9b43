package stillturning.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.assess.GuessVariation;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Element;

class GuessingTest {

    private final StudyReader reader = StudyReader.open(Path.of("architectures", "first-steps"));

    private static List<Element> elements(Study study, String part) {
        return study.candidates().stream()
                .flatMap(candidate -> candidate.part(part).stream())
                .map(Part::elements)
                .findFirst()
                .orElseThrow();
    }

    /** Nothing says which class its breakers are, so the other class is tried in its place. */
    @Test
    void aClassThatNobodySaidIsTriedAsEachOtherClass() {
        List<GuessVariation> doubts =
                new Guessing(reader, reader.study(Variation.NONE)).doubts(false);
        GuessVariation breakers =
                doubts.stream()
                        .filter(d -> d.guess().name().equals("classes.breaker"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("ordinary", breakers.guess().value());
        assertEquals(Set.of("fast"), breakers.others().keySet());
        assertEquals(Optional.empty(), breakers.times().apply(0.8));
        Study asIs = reader.study(Variation.NONE).study().orElseThrow();
        Study fast = breakers.others().values().iterator().next().get().orElseThrow();
        assertNotEquals(elements(asIs, "radio-breaker"), elements(fast, "radio-breaker"));
        assertEquals(elements(asIs, "battery-lead-fuse"), elements(fast, "battery-lead-fuse"));
        assertTrue(doubts.stream().anyMatch(d -> d.others().isEmpty()));
    }
}
