package stillturning.desktop.draft.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Studies;
import stillturning.files.Starter;
import stillturning.files.Starter.StarterAnswers;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.ChangeRefused;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Part;

class StudyEditsTest {

    @TempDir Path folder;

    private Bench firstSteps() throws IOException {
        Studies.copy("first-steps", folder);
        return Bench.open(folder);
    }

    static Stream<StarterAnswers> startingPoints() {
        return Starter.startingPoints().values().stream()
                .flatMap(
                        a ->
                                Stream.of(Starter.Nominal.values())
                                        .map(
                                                n ->
                                                        new StarterAnswers(
                                                                a.name(),
                                                                a.counts(),
                                                                a.protection(),
                                                                n,
                                                                a.structure())));
    }

    @ParameterizedTest
    @MethodSource("startingPoints")
    void aNewCandidateOfAStartingPointReadsAtOnce(StarterAnswers answers) throws Exception {
        Studies.start(answers, folder);
        assertNewCandidateReads(Bench.open(folder));
    }

    /** Wood and composite lead no current: a chafed wire finds no ground, a return is a wire. */
    @ParameterizedTest
    @EnumSource(Starter.AirframeStructure.class)
    void aNewCandidateKeepsToWhatTheAircraftIsMadeOf(Starter.AirframeStructure structure)
            throws Exception {
        StarterAnswers any = startingPoints().findFirst().orElseThrow();
        Studies.start(
                new StarterAnswers(
                        any.name(), any.counts(), any.protection(), any.nominal(), structure),
                folder);
        Bench bench = Bench.open(folder);
        bench.make(bench.study().empty("fresh", "Fresh"));
        bench.make(bench.shaping("fresh").add(NewPart.of("ground", "panel")));
        assertEquals(List.of(), bench.problems());
        boolean metal = structure == Starter.AirframeStructure.METAL;
        assertEquals(metal, bench.text("fresh").contains("on-structure: yes"));
        assertEquals(!metal, bench.text("fresh").contains("on-structure: no"));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aNewCandidateOfAShippedStudyReadsAtOnce(String study) throws Exception {
        Studies.copy(study, folder);
        assertNewCandidateReads(Bench.open(folder));
    }

    static List<String> shipped() {
        return List.of("first-steps", "sandpiper");
    }

    private static void assertNewCandidateReads(Bench bench) throws Exception {
        bench.make(bench.study().empty("fresh", "From nothing: \"mine\""));
        assertEquals(List.of(), bench.problems());
        assertEquals("From nothing: \"mine\"", bench.candidate("fresh").title());
    }

    @Test
    void aCandidateIsCopiedWithItsComments() throws Exception {
        Bench bench = firstSteps();
        bench.make(bench.study().copy("one-bus", "other", "Other"));
        assertTrue(bench.text("other").startsWith("candidate: Other           # everything on"));
        assertEquals(bench.parts("one-bus"), bench.parts("other"));
        String taken =
                assertThrows(
                                ChangeRefused.class,
                                () -> bench.study().copy("one-bus", "other", "Again"))
                        .why();
        assertEquals("\"other\" is there already; take another name", taken);
    }

    @Test
    void aRenamedBaselineStaysTheBaselineAndADeletedOneIsTold() throws Exception {
        Bench bench = firstSteps();
        bench.make(bench.study().rename("one-bus", "single"));
        assertTrue(bench.text("study").contains("baseline: single"));
        assertEquals(List.of(), bench.problems());
        Change delete = bench.study().delete("single");
        assertEquals(List.of("leaves the study without a baseline"), delete.also());
        bench.make(delete);
        assertEquals(List.of(), bench.problems());
        assertThrows(ChangeRefused.class, () -> bench.study().delete("bus-and-battery"));
        bench.draft().undo();
        bench.draft().undo();
        assertTrue(bench.draft().state().isSaved());
        assertTrue(Files.exists(folder.resolve("one-bus.yaml")));
    }

    @Test
    void aNewLoadIsLeftOutUntilItIsFed() throws Exception {
        Bench bench = firstSteps();
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("zone", "panel");
        settings.put("draws", "2 A (guess)");
        bench.make(bench.study().addLoad("transponder", settings));
        assertEquals(List.of(), bench.problems());
        assertTrue(
                bench.text("study")
                        .contains("\n  transponder: {zone: panel, draws: 2 A (guess)}\n"));
        assertThrows(ChangeRefused.class, () -> bench.study().addLoad("main-bus", settings));
        assertThrows(ChangeRefused.class, () -> bench.study().addLoad("radio", settings));
    }

    @Test
    void valuesOfTheStudyAreSetAndCleared() throws Exception {
        Bench bench = firstSteps();
        bench.make(bench.study().set("loads.radio", "draws", "2 A"));
        bench.make(bench.study().set("weights", "weight", "3"));
        bench.make(bench.study().clear("loads.lights.shed"));
        String text = bench.text("study");
        assertTrue(text.contains("draws: 2 A, minimum"), text);
        assertTrue(text.contains("weights:\n  weight: 3"), text);
        assertTrue(bench.problems().get(0).contains("may be shed"), bench.problems().toString());
    }

    /** Whatever a study says of a load, a new name is in all of it: same aircraft, same answers. */
    @ParameterizedTest
    @MethodSource("shipped")
    void aRenamedLoadIsRenamedEverywhere(String study) throws Exception {
        Studies.copy(study, folder);
        Bench bench = Bench.open(folder);
        Study before = bench.read().study().orElseThrow();
        List<String> problems = bench.problems();
        for (LoadNeed load : before.aircraft().loads()) {
            bench.make(bench.study().renameLoad(load.id(), "my-" + load.id()));
        }
        assertEquals(problems, bench.problems());
        Study after = bench.read().study().orElseThrow();
        assertEquals(
                before.aircraft().loads().stream().map(load -> "my-" + load.id()).toList(),
                after.aircraft().loads().stream().map(LoadNeed::id).toList());
        for (int i = 0; i < before.candidates().size(); i++) {
            Candidate was = before.candidates().get(i);
            Candidate is = after.candidates().get(i);
            assertEquals(was.joins().size(), is.joins().size());
            assertEquals(
                    FailureCatalogue.singlesOf(was).size(), FailureCatalogue.singlesOf(is).size());
            assertEquals(was.loads().count(), is.loads().count());
            assertEquals(was.cockpit().procedures().size(), is.cockpit().procedures().size());
        }
        for (int i = 0; i < before.aircraft().loads().size(); i++) {
            bench.draft().undo();
        }
        assertTrue(bench.draft().state().isSaved());
    }

    @Test
    void aLoadIsRenamedInWhatTheEngineNeedsAndInWhatItsFeedsMake() throws Exception {
        Studies.copy("sandpiper", folder);
        Bench bench = Bench.open(folder);
        assertEquals(List.of(), bench.study().renameLoad("radio", "com").also());
        Change rename = bench.study().renameLoad("pump-1", "pump");
        assertEquals(List.of("cases that name it keep the old name"), rename.also());
        bench.make(rename);
        String text = bench.text("study");
        assertTrue(text.contains("and (pump or pump-2)"), text);
        assertTrue(text.contains("parts: [pump, pump-2]"), text);
        assertTrue(text.contains("    pump: {stops-working"), text);
        assertEquals(
                "the load \"pump-2\" is there already; take another name",
                assertThrows(ChangeRefused.class, () -> bench.study().renameLoad("pump", "pump-2"))
                        .why());
        assertThrows(ChangeRefused.class, () -> bench.study().renameLoad("pump-1", "other"));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aDeletedLoadLeavesNothingBehind(String study) throws Exception {
        Studies.copy(study, folder);
        Bench bench = Bench.open(folder);
        Study before = bench.read().study().orElseThrow();
        List<String> needed = before.aircraft().engine().logic().loads();
        for (LoadNeed load : before.aircraft().loads()) {
            if (needed.contains(load.id())) {
                String why =
                        assertThrows(ChangeRefused.class, () -> bench.study().deleteLoad(load.id()))
                                .why();
                assertTrue(why.contains("the engine needs"), why);
            } else {
                bench.make(bench.study().deleteLoad(load.id()));
            }
        }
        assertEquals(
                List.of(),
                bench.read().problems().stream().filter(p -> p.wrong().contains("no ")).toList());
        for (Candidate candidate : bench.read().study().orElseThrow().candidates()) {
            assertEquals(
                    needed.stream().sorted().toList(),
                    candidate.loads().map(Part::id).sorted().toList());
        }
    }
}
