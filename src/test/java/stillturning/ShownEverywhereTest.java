package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.verdict.Outcome;
import stillturning.bench.Shelf;
import stillturning.model.Requirement;
import stillturning.model.failure.FailureWords;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.report.OutcomeMark;
import stillturning.report.table.TerminalColour.Ink;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every outcome, requirement, part kind and failure mode shows wherever its kind is shown. */
class ShownEverywhereTest {

    private static final Path RESOURCES = Path.of("src", "main", "resources", "stillturning");

    private static String resource(String... path) throws IOException {
        Path file = RESOURCES;
        for (String part : path) {
            file = file.resolve(part);
        }
        return Files.readString(file);
    }

    private static String kept(String name) throws IOException {
        return Files.readString(Path.of("reports", name));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @ParameterizedTest
    @EnumSource(Outcome.class)
    void anOutcomeHasWordsAMarkAJsonValueAndAPlaceInEveryLegend(Outcome outcome)
            throws IOException {
        OutcomeMark mark = OutcomeMark.of(outcome);
        assertFalse(outcome.words().isBlank());
        assertEquals(1, mark.sign().length(), outcome.name());
        String terminal = kept("sandpiper-break.txt");
        assertTrue(
                terminal.lines()
                        .anyMatch(l -> l.startsWith(mark.code()) && l.contains(outcome.words())),
                outcome.name());
        assertTrue(kept("sandpiper.html").contains(outcome.words()), outcome.name());
        for (String schema : List.of("decide", "cases", "causes", "pairs", "elsewhere")) {
            assertTrue(
                    resource("report", schema + ".schema.json").contains('"' + word(outcome) + '"'),
                    schema + " does not know " + outcome);
        }
        assertTrue(
                mark.ink() == Ink.PLAIN
                        || resource("desktop", "view", "desktop.css")
                                .contains(".outcome-" + word(mark)),
                "no colour on the screen for " + outcome);
    }

    @Test
    void noTwoOutcomesLookAlike() {
        List<OutcomeMark> marks = Arrays.stream(Outcome.values()).map(OutcomeMark::of).toList();
        assertEquals(Outcome.values().length, Set.copyOf(marks).size());
        for (var told :
                List.of(
                        marks.stream().map(OutcomeMark::sign).toList(),
                        marks.stream().map(OutcomeMark::word).toList(),
                        marks.stream().map(OutcomeMark::code).toList())) {
            assertEquals(marks.size(), Set.copyOf(told).size(), told.toString());
        }
    }

    @Test
    void aRequirementHasWordsOfItsOwnAndAKeyInTheStudysFile() throws Exception {
        Set<String> words = new HashSet<>();
        for (Class<?> type : Requirement.class.getPermittedSubclasses()) {
            Constructor<?> only = type.getDeclaredConstructors()[0];
            Object[] values =
                    Arrays.stream(only.getParameterTypes())
                            .map(ShownEverywhereTest::limit)
                            .toArray();
            Requirement requirement = (Requirement) only.newInstance(values);
            assertTrue(words.add(requirement.inWords()), type.getSimpleName());
            assertFalse(requirement.inWords().isBlank(), type.getSimpleName());
        }
        JsonNode schema =
                JsonMapper.builder().build().readTree(resource("files", "study.schema.json"));
        assertEquals(
                words.size(),
                schema.path("$defs").path("requirements-entry").path("properties").size());
    }

    private static Object limit(Class<?> type) {
        if (type == String.class) {
            return "radio";
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return type == int.class ? (Object) 60 : (Object) 60.0;
    }

    @Test
    void aKindOfPartHasWordsAndCanBeWritten() throws IOException {
        String schema = resource("files", "candidate.schema.json");
        Set<String> plurals = new HashSet<>();
        for (PartKind kind : PartKinds.all()) {
            assertFalse(kind.name().isBlank());
            assertTrue(plurals.add(kind.plural()), kind.plural());
            assertTrue(
                    kind.values().isEmpty() || schema.contains('"' + kind.word() + '"'),
                    kind.word());
        }
        Set<PartKind> shelved =
                Shelf.everyKind().stream().map(Part::kind).collect(Collectors.toSet());
        assertEquals(Set.copyOf(PartKinds.all()), shelved);
    }

    static List<Part> everyKind() {
        return Shelf.everyKind();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void aFailureModeHasANameThatIsFoundAndARate(Part part) throws IOException {
        String rates = resource("files", "rates.yaml");
        Set<String> names = new HashSet<>();
        for (FailureMode mode : part.failureModes()) {
            assertTrue(names.add(mode.name()), part.id() + ": " + mode.name());
            assertFalse(FailureWords.of(mode).isEmpty(), mode.name());
            assertTrue(rates.contains(mode.key() + ":"), part.id() + ": " + mode.key());
        }
        boolean lineOrSign = part.role() == Part.Role.WIRE || part.role() == Part.Role.GROUND;
        assertTrue(lineOrSign || !part.symbols().isEmpty(), part.id());
    }
}
