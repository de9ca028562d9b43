package stillturning.story.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.model.Circuit;
import stillturning.model.Study;
import stillturning.network.NodalSolver;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.story.Pilot;
import stillturning.story.Setting;

/** Where levers stand and what is switched off: who hangs on it looks again at each change. */
class SwitchedTest {

    @Test
    void everyMoveOfALeverIsCounted() {
        LeverStates levers = new LeverStates();
        assertNull(levers.at("master"));
        int before = levers.changes();
        assertNull(levers.put("master", "on"));
        int once = levers.changes();
        assertNotEquals(before, once);
        levers.putAll(Map.of("master", "off", "tie", "on"));
        assertNotEquals(once, levers.changes());
        assertNotEquals(before, levers.changes());
        assertEquals("off", levers.at("master"));
        assertEquals("off", levers.put("master", "on"));
        assertEquals("on", levers.at("tie"));
    }

    @Test
    void everySheddingIsCounted() {
        Sheddings shed = new Sheddings();
        int before = shed.changes();
        shed.add(List.of("radio"));
        int once = shed.changes();
        assertNotEquals(before, once);
        shed.only(List.of("lights"));
        assertNotEquals(once, shed.changes());
        assertNotEquals(before, shed.changes());
        assertEquals(Set.of("lights"), shed.all());
    }

    @Test
    void theKeyPutsLeversBackWhereTheyStood() {
        Situation now = situation();
        now.levers.putAll(Map.of("tie", "off", "master", "on"));
        now.starting.put("tie", "on");
        now.crank(true);
        assertEquals("on", now.levers.at("tie"));
        now.crank(true);
        now.crank(false);
        assertEquals("off", now.levers.at("tie"));
        assertEquals("on", now.levers.at("master"));
        now.levers.put("tie", "on");
        now.crank(false);
        assertEquals("on", now.levers.at("tie"), "a key that was not turned puts nothing back");
    }

    private static Situation situation() {
        Study study =
                StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();
        Circuit circuit = study.candidates().get(0).circuit();
        BranchLayout layout = new BranchLayout(circuit, Optional.empty());
        BranchLaw[] laws = new BranchLaw[layout.from.length];
        Arrays.fill(laws, Open.CIRCUIT);
        return new Situation(
                new NodalSolver(layout.topology, layout.from, layout.to, laws),
                circuit.returns(),
                study.aircraft(),
                study.goals().failurePhase(),
                Setting.with(Pilot.NEVER),
                part -> "",
                new EventLog());
    }
}
