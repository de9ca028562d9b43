package stillturning.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.GuessVariation;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses;
import stillturning.bench.Thorough;
import stillturning.files.ReadStudy;
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
                new Guessing(reader, reader.study(Variation.NONE)).doubts(false).all();
        GuessVariation breakers =
                doubts.stream()
                        .filter(d -> d.guess().name().equals("classes.breaker"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("ordinary", breakers.guess().value());
        assertEquals(Set.of("fast"), breakers.others().keySet());
        assertEquals(Optional.empty(), breakers.times().at(0.8, Set.of()));
        Study asIs = reader.study(Variation.NONE).study().orElseThrow();
        Study fast = breakers.others().values().iterator().next().get().orElseThrow();
        assertNotEquals(elements(asIs, "radio-breaker"), elements(fast, "radio-breaker"));
        assertEquals(elements(asIs, "battery-lead-fuse"), elements(fast, "battery-lead-fuse"));
        assertTrue(doubts.stream().anyMatch(d -> d.others().isEmpty()));
    }

    /** Every failure told again for every guess, against those that the screen leaves. */
    @Thorough
    @Test
    void theScreenedSearchFindsWhatTheWholeOneFinds() {
        ReadStudy read = reader.study(Variation.NONE);
        Assessment basis = Assess.of(read.study().orElseThrow());
        Doubts all = new Guessing(reader, read).doubts(false);
        Doubts screened = new Doubts(all.inFigures(), all.together());
        Doubts whole = new Doubts(all.inFigures(), Optional.empty());
        Guesses found = Assess.guesses(basis, screened, done -> {});
        assertTrue(!found.matter().isEmpty());
        assertEquals(Assess.guesses(basis, whole, done -> {}), found);
    }

    /** The ways are common practice of the trade, no published source. */
    @Test
    void eachGuessSaysHowItIsFoundOutByItsOwnKind() {
        StudyReader demo = StudyReader.open(Path.of("architectures", "sandpiper"));
        List<GuessVariation> doubts =
                new Guessing(demo, demo.study(Variation.NONE)).doubts(false).all();
        assertTrue(how(doubts, "parts.main-battery.resistance").startsWith("two known loads"));
        assertTrue(how(doubts, "parts.main-battery.health").startsWith("discharge it"));
        assertTrue(how(doubts, "parts.starter-wire.length").contains("tape"));
        assertTrue(how(doubts, "loads.radio.draws").contains("clamp meter"));
        assertTrue(how(doubts, "loads.lights.minimum").contains("bench supply"));
        assertTrue(how(doubts, "zones.tail.arm").contains("tape from the datum"));
        assertTrue(how(doubts, "distances[3].length").contains("tape"));
        List<String> silent =
                doubts.stream()
                        .filter(d -> d.reach().isPresent() && d.guess().finding().isEmpty())
                        .map(d -> d.guess().name())
                        .toList();
        assertEquals(List.of(), silent);
    }

    private static String how(List<GuessVariation> doubts, String name) {
        return doubts.stream()
                .map(GuessVariation::guess)
                .filter(guess -> guess.name().equals(name))
                .findFirst()
                .orElseThrow()
                .finding();
    }
}
