package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.sizing.Sizing;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WireSchedule.LoadCircuit;
import stillturning.sizing.result.WireSize;
import stillturning.story.UntoldStory;

/**
 * Three wires of the demo study sized with a pencil. The study's values are invented; what is
 * published is named where it is used. Where the study's values change, the hand calculation beside
 * them must too.
 *
 * <p>By AC 43.13-1B, 11-68 example 2 (p. 11-27, read): current in free air, times altitude, times
 * bundle. Free air of another size than No. 14 goes with the area to the power 0.65, the law laid
 * through the points that were read. All wires stand 150 °C and fly up to 3000 m, that is 9843 ft:
 * 1 - 0.09 x 9843 / 20000 = 0.9557.
 */
class SandpiperSizesByHandTest {

    private static SizingReport report;

    @BeforeAll
    static void size() throws UntoldStory {
        ReadStudy read = StudyReader.read(Path.of("architectures/sandpiper"));
        Study study = read.study().orElseThrow();
        report =
                Sizing.of(
                        study,
                        study.candidate("split-batteries").orElseThrow(),
                        read.sizes().installation());
    }

    private static WireSize wire(String id) {
        return report.wires().wires().stream()
                .filter(w -> w.wire().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static LoadCircuit circuit(String name) {
        return report.wires().circuits().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    // Nobody wrote it. No. 20 would drop 0.74 V warm. No. 18 would do, at 0.44 V, with the 3.38 A
    // that are solved; it is chosen for what cannot be exceeded, 42 W at 11 V, and so is No. 16.
    // No. 16 (2426 cmil), hottest zone the panel's 30 °C, so 120 K; 8 wires at 60 %: 0.6.
    // 47 x (2426 / 3831)^0.65 x sqrt(120 / 150) = 47 x 0.7431 x 0.8944 = 31.24 A
    // 31.24 x 0.9557 x 0.6 = 17.91 A
    // 42 W at the 12.4 V that taxiing leaves are 3.38 A: 30 + 120 x sqrt(3.38 / 17.91) = 82.1 °C
    // 4.81 ohm / 1000 ft = 15.78 mohm/m (table 11-9, read); panel to tail 1.4 + 3.2 m, return 0.5 m
    // out:  3.38 x 4.6 x 0.01578 x (234.5 + 82.1) / 254.5 = 0.305 V
    // back: No. 18 at 10 °C 140 K, 16.5 A; 10 + 140 x sqrt(3.38 / 16.5) = 73.4 °C: 0.042 V
    @Test
    void theLightsWireIsThickEnoughForItsDropWarm() {
        WireSize lights = wire("lights-wire");
        assertEquals("16", lights.wire().cable().awg());
        assertEquals(17.91, lights.can().amps(), 0.02);
        LoadCircuit circuit = circuit("lights");
        assertEquals(3.38, circuit.amps(), 0.03);
        assertEquals(5.1, circuit.metres(), 1e-9);
        assertEquals(0.305 + 0.042, circuit.drop().volts(), 0.005);
        assertEquals(0.5, circuit.drop().limitVolts(), 1e-12);
        assertEquals("18", lights.smallest().orElseThrow().awg());
    }

    // No. 2 (66 500 cmil) alone, hottest zone the engine's 70 °C, so 80 K:
    // 47 x (66500 / 3831)^0.65 x sqrt(80 / 150) = 47 x 6.396 x 0.7303 = 219.5 A; x 0.9557 = 209.8 A
    // 160 A: 70 + 80 x sqrt(160 / 209.8) = 139.9 °C
    // 0.18 ohm / 1000 ft = 0.5906 mohm/m; 4.4 m out, 0.7 m back in the engine zone
    // 160 x 5.1 x 0.5906e-3 x (234.5 + 139.9) / 254.5 = 0.709 V, within 1 V for now and then
    @Test
    void theStarterWireCarriesItsStarterAndNothingThinnerWasAsked() {
        WireSize starter = wire("starter-wire");
        assertEquals(209.8, starter.can().amps(), 0.2);
        assertEquals(160, starter.worst().amps(), 1e-6);
        assertEquals(139.9, starter.can().conductorCelsius(), 0.1);
        assertEquals(0.709, circuit("starter").drop().volts(), 0.002);
        assertEquals(1.0, circuit("starter").drop().limitVolts(), 1e-12);
        assertTrue(starter.guard().isEmpty());
    }

    // No. 10 (9354 cmil), hottest zone the panel's 30 °C: 47 x (9354 / 3831)^0.65 x 0.8944 =
    // 47 x 1.7865 x 0.8944 = 75.1 A; x 0.9557 x 0.6 = 43.06 A.
    // A 30 A breaker: table 11-3 (read) has 30 A from No. 12 on. 308 W at some 12.8 V are 24.1 A.
    // 30 + 120 x sqrt(24.1 / 43.06) = 119.7 °C; 1.26 ohm / 1000 ft = 4.134 mohm/m, 2.3 m: 0.319 V;
    // back 0.6 m at 10 °C, 46.5 A, 110.7 °C: 0.081 V
    @Test
    void theGearPumpsWireIsGuardedByItsBreaker() {
        WireSize pump = wire("gear-pump-wire");
        assertEquals(43.06, pump.can().amps(), 0.05);
        assertEquals("gear-pump-breaker", pump.guard().orElseThrow().part());
        assertTrue(pump.guard().orElseThrow().suits());
        assertEquals(24.1, circuit("gear-pump").amps(), 0.2);
        assertEquals(0.319 + 0.081, circuit("gear-pump").drop().volts(), 0.006);
        assertEquals(1.0, circuit("gear-pump").drop().limitVolts(), 1e-12);
    }
}
