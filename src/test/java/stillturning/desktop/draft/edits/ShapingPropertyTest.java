package stillturning.desktop.draft.edits;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.desktop.draft.Studies;
import stillturning.files.Starter;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileChange;
import stillturning.files.edit.StudyOutline;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.PartEntry;
import stillturning.model.Candidate;
import stillturning.model.Terminal;
import stillturning.parts.Part;

/** Whatever is done to whichever part, the files say what was meant, and undo gives them back. */
class ShapingPropertyTest {

    /** Of what runs make, so many are passed over: they are many and alike. */
    private static final int EVERY = 7;

    /** So many candidates of the demo are looked at. */
    private static final int CANDIDATES = Effort.cases(2, 100);

    @TempDir Path folder;

    private Bench sandpiper() throws IOException {
        Studies.copy("sandpiper", folder);
        return Bench.open(folder);
    }

    private static List<String> some(List<String> candidates) {
        return candidates.subList(0, Math.min(CANDIDATES, candidates.size()));
    }

    private static Set<String> written(Bench bench, String candidate) {
        return new CandidateOutline(bench.draft().document(candidate + ".yaml").orElseThrow())
                .parts()
                .keySet();
    }

    @Test
    void everyPartOfSandpiperCanBeRenamed() throws Exception {
        Bench bench = sandpiper();
        SortedMap<String, String> texts = bench.draft().state().texts();
        for (String candidate : some(bench.candidates())) {
            List<String> before = bench.parts(candidate);
            for (String part : written(bench, candidate)) {
                bench.make(bench.shaping(candidate).rename(part, "new-name"));
                List<String> expected =
                        before.stream().map(p -> p.equals(part) ? "new-name" : p).toList();
                assertEquals(List.of(), bench.problems(), candidate + " " + part);
                assertEquals(expected, bench.parts(candidate));
                assertEquals(texts, bench.draft().undo().texts());
            }
        }
    }

    @Test
    void everyPartOfSandpiperCanBeDeletedAndNothingSpeaksOfItAnyMore() throws Exception {
        Bench bench = sandpiper();
        SortedMap<String, String> texts = bench.draft().state().texts();
        for (String candidate : some(bench.candidates())) {
            Set<String> loads =
                    new StudyOutline(bench.draft().document("study.yaml").orElseThrow()).names();
            List<String> parts = bench.parts(candidate);
            for (String part : parts) {
                boolean made = !written(bench, candidate).contains(part);
                if (loads.contains(part) || (made && parts.indexOf(part) % EVERY != 0)) {
                    continue;
                }
                bench.make(bench.shaping(candidate).delete(Set.of(part)));
                assertTrue(
                        bench.problems().stream().noneMatch(p -> p.contains("there is no")),
                        candidate + " without " + part + ": " + bench.problems());
                assertEquals(texts, bench.draft().undo().texts());
            }
        }
    }

    @Test
    void everyPartOfSandpiperCanBeDoubled() throws Exception {
        Bench bench = sandpiper();
        for (String candidate : some(bench.candidates())) {
            for (String part : written(bench, candidate)) {
                FileChange change = bench.shaping(candidate).duplicate(Set.of(part));
                bench.make(change);
                CandidateOutline layout =
                        new CandidateOutline(
                                bench.draft().document(candidate + ".yaml").orElseThrow());
                assertEquals(
                        layout.parts().get(part), layout.parts().get(change.parts().get(0)), part);
                bench.draft().undo();
            }
        }
    }

    @Test
    void everyClassOfTheCatalogueCanBeAddedWithNothingMissing() throws Exception {
        Bench bench = sandpiper();
        String candidate = bench.candidates().get(0);
        for (String kind : Catalogue.shipped().kinds()) {
            Map<String, PartEntry> classes = Catalogue.shipped().classesOf(kind);
            for (String ofClass : classes.keySet()) {
                NewPart part = new NewPart(kind, Optional.of(ofClass), "cabin", Map.of());
                bench.make(bench.shaping(candidate).add(part));
                assertEquals(List.of(), bench.problems(), kind + " " + ofClass);
                bench.draft().undo();
            }
        }
    }

    static Stream<Integer> seeds() {
        return Stream.iterate(1, s -> s + 1).limit(5);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anySequenceOfChangesIsUndoneToTheLastByte(int seed) throws Exception {
        if (seed % 2 == 0) {
            Studies.copy("sandpiper", folder);
        } else {
            List<Starter.StarterAnswers> points = List.copyOf(Starter.startingPoints().values());
            Studies.start(points.get(seed / 2 % points.size()), folder);
        }
        Bench bench = Bench.open(folder);
        SortedMap<String, String> texts = bench.draft().state().texts();
        Map<String, Candidate> read = new HashMap<>();
        for (String candidate : bench.candidates()) {
            read.put(candidate, bench.candidate(candidate));
        }
        Random random = new Random(seed);
        List<SortedMap<String, String>> states = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String candidate = any(List.copyOf(read.keySet()), random);
            try {
                Candidate shaped = requireNonNull(read.get(candidate));
                FileChange change = anyChange(bench, candidate, shaped, random);
                SortedMap<String, String> before = bench.draft().state().texts();
                if (!bench.make(change).texts().equals(before)) {
                    states.add(before);
                }
            } catch (ChangeRefused refused) {
                assertTrue(refused.why().length() > 10, refused.why());
            }
            assertTrue(
                    bench.draft().document(candidate + ".yaml").orElseThrow().problems().isEmpty());
        }
        assertTrue(states.size() > 10, states.size() + " changes");
        SortedMap<String, String> last = bench.draft().state().texts();
        for (int i = states.size() - 1; i >= 0; i--) {
            assertEquals(states.get(i), bench.draft().undo().texts());
        }
        assertEquals(texts, bench.draft().state().texts());
        assertTrue(bench.draft().state().isSaved());
        states.forEach(s -> bench.draft().redo());
        assertEquals(last, bench.draft().state().texts());
    }

    private static FileChange anyChange(
            Bench bench, String candidate, Candidate parts, Random random) throws ChangeRefused {
        CandidateEdits shaping = bench.shaping(candidate);
        String part = any(parts.parts(), random).id();
        CandidateOutline layout =
                new CandidateOutline(bench.draft().document(candidate + ".yaml").orElseThrow());
        List<String> runs = layout.runs().stream().map(CandidateOutline.OutlineRun::path).toList();
        return switch (random.nextInt(10)) {
            case 0 -> shaping.delete(Set.of(part));
            case 1 -> shaping.rename(part, "part-" + random.nextInt(1000));
            case 2 -> shaping.duplicate(Set.of(part, any(parts.parts(), random).id()));
            case 3 ->
                    shaping.join(
                            anyTerminal(parts, random),
                            anyTerminal(parts, random),
                            Optional.empty());
            case 4 -> shaping.cut(any(runs, random));
            case 5 ->
                    shaping.insert(
                            any(runs, random), NewPart.of("diode", "panel"), OptionalInt.empty());
            case 6 -> shaping.add(NewPart.of("switch", "panel"));
            case 7 -> shaping.set(part, "mass", random.nextInt(1, 9) + " kg (guess)");
            case 8 -> shaping.leaveOut(part);
            default -> shaping.title("Title # " + random.nextInt() + ": \"odd\"");
        };
    }

    private static Terminal anyTerminal(Candidate candidate, Random random) {
        Part part = any(candidate.parts(), random);
        return new Terminal(part.id(), any(part.terminals(), random));
    }

    private static <T> T any(List<T> all, Random random) {
        return all.get(random.nextInt(all.size()));
    }
}
