package stillturning.reliability.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.story.UntoldStory;

/** The engine bus with two feeds of {@link RunUpTest}: a part of all pairs against all pairs. */
class LatentPairsTest {

    private static LatentPairs found;
    private static CombinedResult all;
    private static Card card;

    @BeforeAll
    static void made(@TempDir Path folder) throws IOException, UntoldStory {
        Files.writeString(folder.resolve("study.yaml"), RunUpTest.STUDY);
        Files.writeString(folder.resolve("two-feeds.yaml"), RunUpTest.CANDIDATE);
        Study study = StudyReader.read(folder).study().orElseThrow();
        Candidate candidate = study.candidates().get(0);
        found = LatentPairs.of(study, candidate);
        List<Event> events = CombinedFailures.events(candidate, List.of());
        all = CombinedFailures.of(study, candidate, events, 2, SetSearchWatch.NOBODY);
        card = RunUp.of(study, all);
    }

    private static Map<String, Set<String>> partners(Collection<Latent> some, CombinedResult in) {
        Map<String, Set<String>> partners = new TreeMap<>();
        some.forEach(
                latent ->
                        partners.put(
                                in.events().get(latent.event()).name(),
                                latent.with().stream()
                                        .map(other -> in.events().get(other).name())
                                        .collect(Collectors.toCollection(TreeSet::new))));
        return partners;
    }

    @Test
    void askingOnlyPairsWithALatentOneFindsWhatAllPairsFind() {
        Map<String, Set<String>> some = partners(found.latents(), found.joint());
        assertTrue(some.size() > 4, some::toString);
        assertEquals(partners(card.thatMatter(), all), some);
        assertTrue(found.joint().stories() < all.stories());
    }

    @Test
    void whatNoCheckRevealsComesFirst() {
        Set<String> hidden =
                card.hidden().stream()
                        .map(event -> all.events().get(event).name())
                        .collect(Collectors.toSet());
        assertFalse(hidden.isEmpty());
        assertEquals(hidden, partners(found.unchecked(), found.joint()).keySet());
        assertEquals(found.unchecked(), found.latents().subList(0, hidden.size()));
    }

    @Test
    void aPairOfTwoLatentFailuresCountsOnce() {
        List<Latent> both = List.of(new Latent(1, List.of(2, 7)), new Latent(2, List.of(1)));
        assertEquals(2, LatentPairs.pairs(both));
    }
}
