package stillturning.dossier.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.Appraisal;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Outcome;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.dossier.NamedFailures;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.sizing.Sizing;
import stillturning.story.UntoldStory;

/** A known trouble of every candidate of the demonstration, and the change that mends it. */
class DemoMendsTest {

    private static final Path STUDY = Path.of("architectures", "sandpiper");

    @TempDir private Path folder = Path.of("");

    @BeforeEach
    void copyTheStudy() throws IOException {
        try (var files = Files.list(STUDY)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    /**
     * What is wrong, and what a builder would do about it.
     *
     * @param trouble a failure; two, the first of which nobody sees; or a missed requirement
     * @param limits how far it is looked
     * @param change what mends it, as it is told
     * @param because why a builder would take it
     */
    private record Known(
            String candidate,
            List<String> trouble,
            SearchLimits limits,
            List<String> change,
            String because) {

        @Override
        public String toString() {
            return candidate;
        }
    }

    private static Stream<Known> known() {
        return Stream.of(
                new Known(
                        "one-battery-main-bus",
                        List.of("keel-ground: open"),
                        new SearchLimits(1, 32),
                        List.of(
                                "Return fuel pump 2 at a ground of its own instead of the keel"
                                        + " ground"),
                        "both pumps hung on one bolt; a second bolt beside it costs a lug, a bolt"
                                + " and an hour"),
                new Known(
                        "solid-state",
                        List.of("cabin-ground: open"),
                        new SearchLimits(1, 32),
                        List.of(
                                "Return engine computer B at a ground of its own instead of the"
                                        + " cabin ground"),
                        "both computers hung on one bolt, and no controller helps against that"),
                new Known(
                        "one-battery-engine-bus",
                        List.of("nose-ground: open"),
                        new SearchLimits(1, 32),
                        List.of("Ground the battery a second time, at a ground of its own"),
                        "a second strap to another bolt: what is lost with the first one is one"
                                + " way of two, and nothing else has to be known in flight"),
                new Known(
                        "two-alternators",
                        List.of("the electrical system weighs at most 21.5 kg"),
                        new SearchLimits(1, 96),
                        List.of(
                                "Take a lithium battery of the same capacity for the engine"
                                        + " battery"),
                        "it is lighter by twice what is missing, no wire moves, and 50 EUR buy"
                                + " it"),
                hidden("split-batteries"),
                hidden("split-batteries-lithium"),
                hidden("solid-state-split-engine"));
    }

    /** No single failure ends these; a breaker that nobody sees open does, with one more. */
    private static Known hidden(String candidate) {
        return new Known(
                candidate,
                List.of(
                        "computer-b-b-breaker: opens for no reason",
                        "engine-a-feed-fuse: opens for no reason"),
                new SearchLimits(1, 64),
                List.of("Feed the engine bus a also from the main bus, by a diode"),
                "lane B has the same diode already: lane A then has a second way to current that"
                        + " asks nothing of the pilot, and no short gets past the diode");
    }

    private static Drawn drawn(Path study, String candidate) throws ChangeRefused {
        StudyReader reader = StudyReader.open(study);
        ReadStudy read = reader.study(Variation.NONE);
        assertEquals(List.of(), read.problems());
        return Drawn.of(reader, read, candidate);
    }

    @Test
    void aTroubleIsKnownOfEveryCandidate() {
        Set<String> all =
                StudyReader.read(STUDY).study().orElseThrow().candidates().stream()
                        .map(Candidate::id)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                all, known().map(Known::candidate).collect(Collectors.toCollection(TreeSet::new)));
    }

    static Stream<Known> someKnown() {
        return known().limit(Effort.cases(1, Integer.MAX_VALUE));
    }

    @Thorough
    @ParameterizedTest
    @MethodSource("someKnown")
    void itIsMendedByWhatABuilderWouldDo(Known known) throws Exception {
        Drawn drawn = drawn(STUDY, known.candidate);
        Suggest suggest = Suggest.of(drawn);
        Asked asked = asked(suggest, known.trouble);
        Suggested found =
                asked.aim().isPresent()
                        ? suggest.mending(asked.aim().get(), known.limits, SearchWatch.NOBODY)
                        : suggest.mending(asked.wanted(), known.limits, SearchWatch.NOBODY);
        List<Suggestion> all = found.suggestions().found();
        int place = all.stream().map(Suggestion::moves).toList().indexOf(known.change);
        assertTrue(place >= 0, () -> all.stream().map(Suggestion::moves).toList().toString());
        Suggestion taken = all.get(place);
        assertEquals(List.of(), taken.left(), known.because);
        assertEquals(List.of(), taken.troubles(), known.because);
        holdsWhenSaved(known, suggest.before(), asked, SuggestedFile.of(found, place));
    }

    /** What was to be mended, which has to be wrong before. */
    private static Asked asked(Suggest suggest, List<String> trouble) throws UntoldStory {
        Appraisal before = suggest.before();
        List<Failure> failures =
                trouble.stream()
                        .flatMap(name -> failure(before.candidate(), name).stream())
                        .toList();
        if (failures.size() == 2) {
            assertEquals(List.of(), before.with(Outcome.ENGINE_LOST));
            HiddenThenOne pair = new HiddenThenOne(failures.get(0), failures.get(1));
            assertTrue(suggest.isLeft(pair), pair.words());
            return Asked.of(pair);
        }
        Wanted wanted =
                failures.isEmpty()
                        ? Wanted.of(
                                before.met().stream()
                                        .filter(met -> trouble.contains(met.requirement()))
                                        .filter(met -> !met.met())
                                        .findFirst()
                                        .orElseThrow())
                        : Wanted.of(
                                before.with(Outcome.ENGINE_LOST).stream()
                                        .filter(v -> trouble.contains(v.failure().name()))
                                        .toList());
        assertEquals(1, wanted.size());
        return Asked.of(wanted);
    }

    private static Optional<Failure> failure(Candidate candidate, String name) {
        return NamedFailures.everything(candidate).stream()
                .filter(f -> f.name().equals(name))
                .findFirst();
    }

    /**
     * The same is claimed of the file that was saved and read again, and it breaks no more limits.
     */
    private void holdsWhenSaved(Known known, Appraisal before, Asked asked, SuggestedFile file)
            throws Exception {
        String name = file.name(id -> Files.exists(folder.resolve(id + ".yaml")));
        Files.writeString(folder.resolve(name + ".yaml"), file.text());
        Drawn saved = drawn(folder, name);
        Suggestion again = asked.suggestion(saved, known.change, before, Suggest.scrutiny(saved));
        assertEquals(file.suggestion().values(), again.values());
        assertEquals(file.suggestion().left(), again.left());
        assertEquals(file.suggestion().troubles(), again.troubles());
        assertEquals(
                outcomes(file.suggestion().differences().candidate()),
                outcomes(again.differences().candidate()));
        assertTrue(wrongSizes(saved) <= wrongSizes(drawn(STUDY, known.candidate)), known.because);
    }

    private static Map<String, Outcome> outcomes(Appraisal appraisal) {
        return appraisal.singles().stream()
                .collect(Collectors.toMap(v -> v.failure().name(), v -> v.outcome()));
    }

    private static long wrongSizes(Drawn drawn) throws UntoldStory {
        return Sizing.of(drawn.study(), drawn.candidate(), drawn.installation()).wrong();
    }
}
