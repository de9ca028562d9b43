package stillturning.dossier.redrawn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Scrutiny;
import stillturning.assess.requirement.Survey;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.story.UntoldStory;

/**
 * What breaking parts does not see: a load that is fed no longer, a battery that nothing charges.
 */
class ServiceTest {

    private static final Path STUDY = Path.of("architectures", "first-steps");

    @TempDir private Path folder = Path.of("");

    @BeforeEach
    void copyTheStudy() throws IOException {
        for (String name : List.of("study.yaml", "one-bus.yaml", "bus-and-battery.yaml")) {
            Files.copy(STUDY.resolve(name), folder.resolve(name));
        }
    }

    /** A second candidate, the same but for lines that begin so. */
    private void changed(Map<String, String> instead) throws IOException {
        String text = Files.readString(folder.resolve("one-bus.yaml"));
        for (Map.Entry<String, String> line : instead.entrySet()) {
            String other = text.replaceFirst("(?m)^ *" + line.getKey() + ".*$", line.getValue());
            assertNotEquals(text, other);
            text = other;
        }
        Files.writeString(folder.resolve("changed.yaml"), text);
    }

    private Drawn drawn(String candidate) throws ChangeRefused {
        StudyReader reader = StudyReader.open(folder);
        ReadStudy read = reader.study(Variation.NONE);
        return Drawn.of(reader, read, candidate);
    }

    private boolean serves(String candidate) throws ChangeRefused, UntoldStory {
        Service service = Service.of(List.of(drawn("one-bus")));
        Drawn looked = drawn(candidate);
        return service.isDoneBy(
                looked.candidate(), Scrutiny.of(looked.study(), looked.candidate(), Survey.NONE));
    }

    @Test
    void whatIsDrawnDoesIt() throws Exception {
        assertTrue(serves("one-bus"));
        assertTrue(serves("bus-and-battery"));
    }

    @Test
    void aBatteryThatNothingChargesRunsDown() throws Exception {
        changed(
                Map.of(
                        "candidate:",
                        "candidate: Changed",
                        "radio:",
                        "  radio: from second, fuse 5 A",
                        "parts:",
                        "parts:\n  second: {is: battery, class: agm, zone: panel, capacity:"
                                + " 18 Ah}",
                        "links:",
                        "links:\n  second-minus: from second.minus to panel-ground, wire AWG"
                                + " 8"));
        assertFalse(serves("changed"));
    }

    @Test
    void aLoadThatIsFedNoLongerCannotFailAndDoesNotServe() throws Exception {
        changed(
                Map.of(
                        "candidate:", "leaves-out: [radio]\ncandidate: Changed",
                        "radio:", ""));
        assertFalse(serves("changed"));
    }

    /**
     * For smoke there has to be a lever: without one the drill is one failure less, and no mend.
     */
    @Test
    void whatNoDrillCanSwitchOffIsRefused() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "sandpiper"));
        Drawn drawn = Drawn.of(reader, reader.study(Variation.NONE), "one-battery-engine-bus");
        Service service = Service.of(List.of(drawn));
        assertTrue(service.takesOff(scrutiny(drawn)));
        Drawn without =
                DrawnStep.all(drawn).stream()
                        .filter(step -> step.words().equals("Take the master contactor out"))
                        .flatMap(step -> step.taken().stream())
                        .findFirst()
                        .orElseThrow();
        assertFalse(service.takesOff(scrutiny(without)));
    }

    /** A bus straight on the battery never loses its feed, and never lets the battery rest. */
    @Test
    void whatCannotBeSwitchedOffWhenParkedIsTold() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "sandpiper"));
        Drawn drawn = Drawn.of(reader, reader.study(Variation.NONE), "one-battery-engine-bus");
        Service service = Service.of(List.of(drawn));
        assertTrue(service.isOffWhenParked(drawn.study(), drawn.candidate()));
        assertFalse(parked(service, drawn, "Take the switch standby feed out"));
        assertTrue(
                parked(
                        service,
                        drawn,
                        "Feed the engine bus also from the battery, by a diode, with a switch of"
                                + " its own"));
    }

    private static boolean parked(Service service, Drawn drawn, String move) throws UntoldStory {
        Drawn after =
                DrawnStep.all(drawn).stream()
                        .filter(step -> step.words().equals(move))
                        .flatMap(step -> step.taken().stream())
                        .findFirst()
                        .orElseThrow();
        return service.isOffWhenParked(after.study(), after.candidate());
    }

    private static Scrutiny scrutiny(Drawn drawn) throws UntoldStory {
        return Scrutiny.of(drawn.study(), drawn.candidate(), Survey.NONE);
    }

    /** A fuse that opens for no reason is not mended by having none. */
    @Test
    void noStepTakesOutWhatProtectsALine() throws Exception {
        for (String candidate : List.of("one-bus", "bus-and-battery")) {
            List<String> out =
                    DrawnStep.all(drawn(candidate)).stream()
                            .filter(step -> step.words().matches("Take the .*(fuse|breaker) out.*"))
                            .filter(step -> !step.taken().equals(Optional.empty()))
                            .map(DrawnStep::words)
                            .toList();
            assertEquals(List.of(), out);
        }
    }
}
