package stillturning.story.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
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
        assertNull(levers.put("master", "on"));
        assertEquals(1, levers.changes());
        levers.putAll(Map.of("master", "off", "tie", "on"));
        assertEquals(2, levers.changes());
        assertEquals("off", levers.at("master"));
        assertEquals("off", levers.put("master", "on"));
        assertEquals("on", levers.at("tie"));
    }

    @Test
    void everySheddingIsCounted() {
        Sheddings shed = new Sheddings();
        shed.add(List.of("radio"));
        int once = shed.changes();
        assertEquals(1, once);
        shed.only(List.of("lights"));
        assertTrue(shed.changes() > once);
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

    /** Branches are counted in the order of the parts; one that a part adds within is its own. */
    @Test
    void everyBranchBelongsToThePartWhoseItIs() {
        Circuit circuit = study().candidates().get(0).circuit();
        BranchLayout layout = new BranchLayout(circuit, Optional.empty());
        layout.seats.forEach(
                seat ->
                        assertEquals(
                                Optional.of(seat.placed().part()), layout.partAt(seat.branch())));
        assertEquals(Optional.empty(), layout.partAt(-1));
    }

    @Test
    void whatIsKnownIsNotWorkedOutAgainAndNoMoreIsKeptThanHasRoom() {
        Answers answers = new Answers();
        AtomicInteger worked = new AtomicInteger();
        Supplier<List<Double>> work = () -> List.of((double) worked.incrementAndGet());
        for (int again = 0; again < 2; again++) {
            for (int state = 0; state < 2100; state++) {
                answers.about(state, work);
            }
        }
        assertEquals(2100 + 100, worked.get());
        assertEquals(List.of(1.0), answers.about(0, work));
    }

    private static Study study() {
        return StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();
    }

    private static Situation situation() {
        Study study = study();
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
