package stillturning;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.SampleStudy;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Wood and composite lead no current: every return is a wire, and a chafed wire meets nothing. */
class WoodenAircraftTest {

    @TempDir Path folder;

    private Study read() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY,
                        SampleStudy.ONE.replace("on-structure: yes", "on-structure: no"));
        assertEquals("", SampleStudy.told(read));
        return read.study().orElseThrow();
    }

    @Test
    void itFliesWithoutAnyStructure() throws IOException, UntoldStory {
        Study study = read();
        NormalFlight normal = new Timeline(study, study.candidates().get(0)).normal();
        assertTrue(normal.engineRuns());
    }

    @Test
    void aChafedWireOpensNoProtector() throws IOException, UntoldStory {
        Study study = read();
        Candidate candidate = study.candidates().get(0);
        List<Failure> chafed =
                FailureCatalogue.singlesOf(candidate).stream()
                        .filter(f -> f.name().endsWith(": chafed to ground"))
                        .toList();
        assertTrue(chafed.size() > 5);
        for (Failure failure : chafed) {
            Story story = new Timeline(study, candidate).tell(failure, Pilot.PLANNED);
            assertTrue(
                    story.happenings().stream()
                            .noneMatch(e -> e.kind() == StoryEvent.Kind.PROTECTOR_OPENS),
                    failure.name());
        }
    }

    /** Nothing is tied to a structure, and still a meter has somewhere to put its minus. */
    @Test
    void voltsAreToldAgainstTheGroundAtTheBatterysMinus() throws IOException, UntoldStory {
        Study study = read();
        Candidate candidate = study.candidates().get(0);
        Circuit circuit = candidate.circuit();
        assertEquals(List.of(circuit.net("engine-ground", "stud")), circuit.returns().all());
        NormalFlight normal = new Timeline(study, candidate).normal();
        assertEquals(14, requireNonNull(normal.busVolts().get("main-bus")), 0.3);
        assertEquals(List.of(), normal.cuesShowing(), "what warns of low voltage stays dark");
    }

    /**
     * Against the other system's ground a meter would show nothing, and a lamp would always burn.
     */
    @Test
    void aSystemThatNothingJoinsToTheOthersIsToldAgainstItsOwnGround()
            throws IOException, UntoldStory {
        ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, SampleStudy.APART);
        assertEquals("", SampleStudy.told(read));
        Study study = read.study().orElseThrow();
        Candidate candidate = study.candidates().get(0);
        Circuit circuit = candidate.circuit();
        assertEquals(
                List.of(circuit.net("engine-ground", "stud"), circuit.net("radio-ground", "stud")),
                circuit.returns().all());
        NormalFlight normal = new Timeline(study, candidate).normal();
        assertEquals(14, requireNonNull(normal.busVolts().get("main-bus")), 0.3);
        assertEquals(12.6, requireNonNull(normal.busVolts().get("radio-bus")), 0.4);
        assertEquals(List.of(), normal.cuesShowing());
        assertTrue(
                requireNonNull(faults(sized(study)).get("radio-breaker")) > 100,
                "what is bolted to its own ground draws from its own battery");
    }

    /** Currents and voltages across a part do not hang on what the airframe is made of. */
    @Test
    void itsSizesAreThoseOfTheSameWiresInAMetalAircraft() throws IOException, UntoldStory {
        SizingReport wood = sized(read());
        SizingReport metal =
                sized(
                        SampleStudy.read(folder, SampleStudy.STUDY, SampleStudy.ONE)
                                .study()
                                .orElseThrow());
        assertEquals(told(metal), told(wood));
        // but for the joint between its engine ground and the metal
        Map<String, Double> inMetal = faults(metal);
        faults(wood)
                .forEach(
                        (name, amps) ->
                                assertEquals(
                                        1, amps / inMetal.getOrDefault(name, 0.0), 0.02, name));
        assertEquals(inMetal.size(), faults(wood).size());
        assertTrue(
                wood.loads().phases().get(0).average().watts().sources() > 100,
                "power has voltages in it");
    }

    private static SizingReport sized(Study study) throws UntoldStory {
        return Sizing.of(
                study, study.candidates().get(0), Installation.USUAL, SurveyDepth.SINGLE_FAILURES);
    }

    /** But for battery leads, whose chafes meet no metal in wood. */
    private static List<String> told(SizingReport report) {
        return report.findings().stream()
                .filter(f -> f.rule() != Rule.UNPROTECTED_BY_CUSTOM)
                .map(f -> f.rule() + " " + f.part())
                .toList();
    }

    /** Current that a bolted short behind each protector drives (A). */
    private static Map<String, Double> faults(SizingReport report) {
        return report.devices().protectors().stream()
                .collect(Collectors.toMap(ProtectorSize::name, p -> p.fault().amps().orElse(0)));
    }

    /** Its returns meet at the panel, whose joint is bad: its minus stands above the structure. */
    @Test
    void anInstrumentMeasuresAgainstItsOwnMinus() throws IOException, UntoldStory {
        String badJoint =
                SampleStudy.ONE.replace(
                        "panel-ground: {is: ground, zone: panel}",
                        "panel-ground: {is: ground, zone: panel, resistance: 0.3 ohm}");
        String atThePanel = badJoint.replace(", return engine-ground", "");
        assertEquals(List.of(), showing(badJoint));
        assertEquals(List.of("lamp"), showing(atThePanel));
    }

    private List<String> showing(String one) throws IOException, UntoldStory {
        Study study = SampleStudy.read(folder, SampleStudy.STUDY, one).study().orElseThrow();
        return new Timeline(study, study.candidates().get(0)).normal().cuesShowing();
    }
}
