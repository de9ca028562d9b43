package stillturning.dossier.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.record.FilledForm;
import stillturning.files.record.FilledForm.Filled;
import stillturning.files.record.FilledForm.FilledValue;
import stillturning.files.record.FormReader;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.asbuilt.Compared.Agreement;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.reliability.groundtest.GroundTests;
import stillturning.report.groundtest.PlannedTest;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.Explained;
import stillturning.report.record.ExplainedValue;
import stillturning.report.record.FormLine;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;

/** An aircraft that is not quite what its study says. */
class AsBuiltTest {

    private static final String ONE_BUS = "one-bus";
    private final StudyReader reader =
            StudyReader.open(Path.of("architectures/first-steps").toAbsolutePath());
    private final ReadStudy read = reader.study(Variation.NONE);

    private AskedFor asked(ReadStudy of) throws UntoldStory {
        Study study = of.study().orElseThrow();
        Candidate candidate = study.candidate(ONE_BUS).orElseThrow();
        return new AskedFor(
                study,
                read,
                candidate,
                Optional.of(
                        new PlannedTest(
                                candidate,
                                study.aircraft().engine().logic().loads(),
                                GroundTests.of(study, candidate))));
    }

    /** What instruments show of an aircraft, before the first step of each configuration. */
    private static FilledForm shown(AskedFor aircraft, String fingerprint) {
        List<Filled> filled =
                aircraft.lines().stream()
                        .filter(line -> line.path().contains(".before."))
                        .map(
                                line ->
                                        new Filled(
                                                line.path(),
                                                List.of(
                                                        new FilledValue(
                                                                line.compared()
                                                                        .expectation()
                                                                        .predicted(),
                                                                OptionalDouble.empty())),
                                                ""))
                        .toList();
        return new FilledForm(fingerprint, "2026-05-17", "", filled, List.of());
    }

    /** Its pump draws 8 A and not 5 A. */
    @Test
    void theValueThatIsAnotherIsNamedWithWhatItWouldHaveToBe() throws UntoldStory {
        ReadStudy other = reader.study(new Variation("study.yaml", "loads.pump.draws", 8.0 / 5.0));
        AskedFor asked = asked(read);
        AsBuilt built =
                Held.of(
                        asked,
                        "2026-05-17",
                        Optional.of(shown(asked(other), read.fingerprint())),
                        Optional.empty());
        assertFalse(built.with(Agreement.DISAGREES).isEmpty());
        List<ExplainedValue> causes = new Causes(reader, asked).of(built, path -> {}).alone();
        ExplainedValue pump =
                causes.stream()
                        .filter(c -> c.explanation().value().name().endsWith("loads.pump.draws"))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(causes.toString()));
        assertEquals(8.0, pump.explanation().needed(), 0.4);
        assertEquals(pump.explanation().disagreeing(), pump.explanation().mended());
        assertEquals("5 A", pump.stated());
    }

    @Test
    void anAircraftThatIsWhatItsStudySaysNeedsNoExplanation() throws UntoldStory {
        AskedFor asked = asked(read);
        AsBuilt built =
                Held.of(asked, "", Optional.of(shown(asked, read.fingerprint())), Optional.empty());
        assertEquals(List.of(), built.with(Agreement.DISAGREES));
        assertEquals(Explained.NOTHING, new Causes(reader, asked).of(built, path -> {}));
        assertEquals(List.of(), built.offers());
    }

    @Test
    void theFormOfACandidateAsksForEverythingAndReadsAsNothing() throws UntoldStory {
        AskedFor asked = asked(read);
        String text = asked.form().text();
        FormReader.ReadForm form =
                FormReader.read(
                        YamlDocument.of(Path.of("f.yaml"), text),
                        ONE_BUS,
                        read.fingerprint(),
                        asked.blanks());
        assertEquals(List.of(), form.problems());
        assertEquals(List.of(), form.form().filled());
        Set<MeasurandKind> kinds =
                asked.lines().stream()
                        .map(FormLine::compared)
                        .map(c -> c.expectation().subject().kind())
                        .collect(java.util.stream.Collectors.toSet());
        assertTrue(
                kinds.containsAll(
                        Set.of(
                                MeasurandKind.HAPPENED,
                                MeasurandKind.VOLTS,
                                MeasurandKind.AMPS,
                                MeasurandKind.CAPACITY,
                                MeasurandKind.BATTERY_OHMS,
                                MeasurandKind.LOAD_AMPS,
                                MeasurandKind.PATH_OHMS)),
                kinds.toString());
    }
}
