package stillturning.dossier.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Outcome;
import stillturning.bench.Thorough;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.failure.Failure;
import stillturning.story.UntoldStory;

class SuggestTest {

    private static final Path STUDY = Path.of("architectures", "first-steps");

    @TempDir private Path folder = Path.of("");

    private static Drawn drawn(Path study, String candidate) throws ChangeRefused {
        StudyReader reader = StudyReader.open(study);
        ReadStudy read = reader.study(Variation.NONE);
        return Drawn.of(reader, read, candidate);
    }

    private static Suggested busShort(int most) throws ChangeRefused, UntoldStory {
        return busShort(1, most);
    }

    private static Suggested busShort(int moves, int most) throws ChangeRefused, UntoldStory {
        Suggest suggest = Suggest.of(drawn(STUDY, "one-bus"));
        return suggest.mending(
                wanted(suggest, "main-bus: short to ground"),
                new SearchLimits(moves, most),
                SearchWatch.NOBODY);
    }

    private static Wanted wanted(Suggest suggest, String failure) {
        Wanted wanted =
                Wanted.of(
                        suggest.before().singles().stream()
                                .filter(v -> v.failure().name().equals(failure))
                                .toList());
        assertEquals(1, wanted.size());
        return wanted;
    }

    /** A ground of its own for the battery is one more that nothing stands in for. */
    @Test
    void aTroubleThatOnlyMovesToANewPartIsNotMended() throws Exception {
        Drawn drawn = drawn(Path.of("architectures", "sandpiper"), "one-battery-engine-bus");
        Suggest suggest = Suggest.of(drawn);
        Drawn moved =
                DrawnStep.all(drawn).stream()
                        .filter(step -> step.words().startsWith("Lead battery-minus to a ground"))
                        .flatMap(step -> step.taken().stream())
                        .findFirst()
                        .orElseThrow();
        assertEquals(
                List.of("nose-ground: open, now as nose-ground-b: open"),
                wanted(suggest, "nose-ground: open")
                        .mended(suggest.before(), Suggest.of(moved).before())
                        .left());
    }

    private static Map<String, Outcome> outcomes(Appraisal appraisal) {
        return appraisal.singles().stream()
                .collect(Collectors.toMap(v -> v.failure().name(), v -> v.outcome()));
    }

    /** All on one bar: whatever shorts it takes everything, until there are two. */
    @Test
    void aSinglePointIsMendedWithoutNewTrouble() throws Exception {
        Suggested found = busShort(60);
        Suggestion best = found.suggestions().found().get(0);
        assertTrue(best.moves().get(0).startsWith("Split the main bus in two"), "" + best.moves());
        assertEquals(List.of(), best.left());
        assertEquals(List.of(), best.troubles());
        assertTrue(found.suggestions().done().whole());
        savedClaimsAreKept(found);
    }

    /** What is said of a suggestion holds for the file that is saved, read as any other. */
    private void savedClaimsAreKept(Suggested found) throws Exception {
        try (var files = Files.list(STUDY)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        List<Suggestion> suggestions = found.suggestions().found();
        for (int i = 0; i < suggestions.size(); i++) {
            Files.writeString(
                    folder.resolve("saved-" + i + ".yaml"), found.drawings().get(i).text().text());
        }
        for (int i = 0; i < suggestions.size(); i++) {
            Appraisal saved = Suggest.of(drawn(folder, "saved-" + i)).before();
            Suggestion again =
                    Suggestion.of(
                            found.suggestions().study(),
                            suggestions.get(i).moves(),
                            found.suggestions()
                                    .wanted()
                                    .mended(found.suggestions().before(), saved),
                            found.suggestions().before(),
                            saved);
            assertEquals(suggestions.get(i).values(), again.values());
            assertEquals(suggestions.get(i).troubles(), again.troubles());
            assertEquals(outcomes(suggestions.get(i).differences().candidate()), outcomes(saved));
        }
    }

    /** With as many trials as there are single moves, none is spent on two. */
    @Thorough
    @Test
    void everySingleMoveIsTriedBeforeTwo() throws Exception {
        Suggested single = busShort(1, 400);
        assertTrue(single.suggestions().done().whole());
        int trials = single.suggestions().done().tally().tried();
        Suggested two = busShort(2, trials);
        assertEquals(moves(single), moves(two));
        assertFalse(two.suggestions().done().whole());
    }

    private static List<List<String>> moves(Suggested suggested) {
        return suggested.suggestions().found().stream().map(Suggestion::moves).toList();
    }

    @Test
    void theNumberOfThreadsChangesNothing() throws Exception {
        List<List<String>> moves = new ArrayList<>();
        for (int threads : new int[] {1, 3}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                Suggested found = pool.submit(() -> busShort(8)).get();
                moves.add(
                        found.suggestions().found().stream()
                                .map(s -> s.moves() + " " + s.values())
                                .toList());
            } finally {
                pool.shutdown();
            }
        }
        assertFalse(moves.get(0).isEmpty());
        assertEquals(moves.get(0), moves.get(1));
    }

    /** Neither the wire nor the fire ends the engine alone. */
    @Test
    void anEventThatTakesSeveralPartsMayBeTheOneMore() throws Exception {
        Drawn drawn = drawn(STUDY, "bus-and-battery");
        Suggest suggest = Suggest.of(drawn);
        Failure heat =
                suggest.causes().stream()
                        .filter(cause -> cause.name().equals("heat in engine"))
                        .findFirst()
                        .orElseThrow();
        Failure wire =
                NamedFailures.everything(drawn.candidate()).stream()
                        .filter(failure -> failure.name().equals("pump-b-wire: open"))
                        .findFirst()
                        .orElseThrow();
        Scrutiny look = Suggest.scrutiny(drawn);
        assertNotEquals(Outcome.ENGINE_LOST, look.verdictOn(heat).outcome());
        assertNotEquals(Outcome.ENGINE_LOST, look.verdictOn(wire).outcome());
        assertTrue(suggest.isLeft(new HiddenThenOne(wire, heat)));
    }

    @Test
    void aFailureThatIsGoneOrDoesLessIsMended() {
        Wanted wanted = new Wanted(Map.of("bus: short", Outcome.ENGINE_LOST), List.of());
        assertEquals(List.of(), wanted.left(List.of()));
        assertTrue(new Wanted(Map.of(), List.of()).isNothing());
    }
}
