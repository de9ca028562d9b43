package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Tolerance.OwnBattery;

/** Loads that make their own current, and loads with a battery of their own. */
class OwnSupplyTest {

    private static final String RADIO = "radio: {zone: panel, draws: 1.5 A (guess), shed: 1}";

    private static final String STUDY =
            SampleStudy.STUDY
                    .replace(RADIO, RADIO + "\n  magneto: {zone: engine, as: self-powered}")
                    .replace("needs: computer and pump", "needs: computer and pump and magneto");

    private static final String ONE =
            SampleStudy.ONE
                    .replace(
                            "  main-bus: {is: bus, zone: panel}",
                            """
                              main-bus: {is: bus, zone: panel}
                              magneto: {is: self-powered-ignition}
                              kill: {is: switch, zone: panel}\
                            """)
                    .replace(
                            "  strap:",
                            """
                              magneto-case: from magneto.case to engine-ground, direct
                              magneto-kill: from magneto to kill, wire AWG 20
                              kill-ground: from kill to panel-ground, wire AWG 20
                              strap:\
                            """)
                    .replace("flight: {master: on,", "flight: {kill: off, master: on,");

    @TempDir Path folder;

    private String told(String study, String one) throws IOException {
        return SampleStudy.told(SampleStudy.read(folder, study, one));
    }

    private static LoadNeed load(ReadStudy read, String id) {
        return read.study().map(Study::aircraft).flatMap(a -> a.load(id)).orElseThrow();
    }

    @Test
    void aSelfPoweredLoadIsAPartOfTheCandidateInTheLoadsZone() throws IOException {
        ReadStudy read = SampleStudy.read(folder, STUDY, ONE);
        assertEquals("", SampleStudy.told(read));
        Part magneto = SampleStudy.one(read).part("magneto").orElseThrow();
        assertEquals("engine", magneto.tag().zone());
        assertEquals(List.of(), load(read, "magneto").inputs());
        assertEquals(0, load(read, "magneto").averageAmps("cruise"));
    }

    @Test
    void aCandidateWithoutThePartIsRefused() throws IOException {
        String told = told(STUDY, SampleStudy.ONE);
        assertTrue(
                told.contains("no part is \"magneto\", which the study calls self-powered"), told);
    }

    @Test
    void anotherKindOfPartCannotStandForIt() throws IOException {
        String one = SampleStudy.ONE.replace("  j1: {is: connector,", "  magneto: {is: connector,");
        String told = told(STUDY, one.replace("j1 pin 2", "magneto pin 2"));
        assertTrue(told.contains("self-powered, and this part is not"), told);
    }

    @Test
    void nothingFeedsIt() throws IOException {
        String told = told(STUDY, ONE.replace("feeds:", "feeds:\n  magneto: from main-bus"));
        assertTrue(told.contains("self-powered, so nothing feeds it"), told);
    }

    @Test
    void itDrawsNothingAndHasNoFeedToLose() throws IOException {
        String study =
                STUDY.replace(
                        "as: self-powered}", "as: self-powered, draws: 1 A, own-battery: 1 h}");
        String told = told(study, ONE);
        assertTrue(told.contains("a self-powered load draws nothing"), told);
        assertTrue(told.contains("a self-powered load has no feed that it could lose"), told);
    }

    @Test
    void anyOtherLoadSaysWhatItDraws() throws IOException {
        String study = SampleStudy.STUDY.replace("draws: 5 A, minimum", "minimum");
        String told = told(study, SampleStudy.ONE);
        assertTrue(told.contains("\"draws\" is missing"), told);
    }

    @Test
    void itsKillLeadMustLeadSomewhere() throws IOException {
        String one = ONE.replace("  magneto-kill: from magneto to kill, wire AWG 20\n", "");
        String told = told(STUDY, one);
        assertTrue(told.contains("nothing is joined to magneto.kill"), told);
    }

    @Test
    void itsRatesBelongToTheCandidate() throws IOException {
        String told = told(STUDY + "chances: {fails: {magneto: {stops-working: 1e-4 /h}}}\n", ONE);
        assertTrue(told.contains("write its rates under fails in the candidates"), told);
    }

    @Test
    void aLoadMayHaveABatteryOfItsOwn() throws IOException {
        String study =
                SampleStudy.STUDY.replace(
                        RADIO, RADIO.replace("shed: 1", "shed: 1, own-battery: 30 min"));
        ReadStudy read = SampleStudy.read(folder, study, SampleStudy.ONE);
        assertEquals(
                Optional.of(new OwnBattery(1800, 3 * 3600)),
                load(read, "radio").tolerance().ownBattery());
        assertEquals(Optional.empty(), load(read, "pump").tolerance().ownBattery());
    }
}
