package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.parts.Cable;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.curve.Tripping;
import stillturning.parts.element.curve.WireHeating;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Wires that chafe through, with and without a protector before them. */
class WireStoryTest {

    private static final double REST_VOLTS = 12.65;
    private static final double SHORT_OHMS = 0.005;
    private static final double GROUND_OHMS = 1e-4;

    /** A lamp at the end of a wire, fed by a battery. */
    private static Bench bench(double batteryOhms) {
        return new Bench()
                .part(Shelf.lead("battery", 100, batteryOhms, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 0.01, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true)
                .load("lamp", DemandKind.CONSTANT_CURRENT, 1e-4, Bench.HARDY);
    }

    private static Bench unprotected(String awg, double batteryOhms, double wireOhms) {
        return bench(batteryOhms)
                .part(new Wire(Bench.tag("wire"), Cable.awg(awg).orElseThrow(), 1, wireOhms))
                .join("bus", "bar", "wire", "a")
                .join("wire", "b", "lamp", "plus");
    }

    private static WireHeating heating(String awg) {
        Cable cable = Cable.awg(awg).orElseThrow();
        return new WireHeating(cable.circularMils(), cable.bundleAmps());
    }

    private static double amps(double otherOhms) {
        return REST_VOLTS / (otherOhms + SHORT_OHMS + GROUND_OHMS);
    }

    private static Story chafed(Bench bench) throws UntoldStory {
        return Telling.unaided(bench, "wire: chafed to ground");
    }

    /** AWG 22 behind nothing: Onderdonk's time, published form read; the current computed here. */
    @Test
    void withoutAProtectorTheWireMeltsAtOnderdonksTime() throws UntoldStory {
        Story story = chafed(unprotected("22", 0.005, 0.01));
        double amps = amps(0.005 + 0.005);
        double melts = Telling.when(story, StoryEvent.Kind.WIRE_MELTS, "wire");
        double joined = heating("22").secondsToMelt(amps, 25);
        assertEquals(joined, melts, 1e-3 * joined);
        double onderdonk = heating("22").meltingEnergy(25) / (amps * amps);
        assertEquals(onderdonk, melts, 0.02 * onderdonk);
        double overheats = Telling.when(story, StoryEvent.Kind.WIRE_OVERHEATS, "wire");
        double limit = heating("22").insulationEnergy(25) / (amps * amps);
        assertEquals(limit, overheats, 0.01 * limit);
        String words = story.of(StoryEvent.Kind.WIRE_OVERHEATS).get(0).words();
        assertTrue(words.contains("150 °C") && words.contains("times its 5.0 A"), words);
        assertTrue(words.contains("would melt after 0.0") && words.contains("Onderdonk"), words);
    }

    @Test
    void onceItHasMeltedTheRestRunsOn() throws UntoldStory {
        Story story = chafed(unprotected("22", 0.005, 0.01));
        assertEquals(REST_VOLTS, Telling.last(Telling.trace(story, "bus")), 0.5);
        assertTrue(story.engine().runningAtEnd());
    }

    /**
     * Table 11-3 of AC 43.13-1B gives AWG 22 a 5 A breaker, read: a fast one saves the wire. An
     * ordinary one at its slow edge, which is a guess, lets through 180 x 25 = 4,500 A²s, and the
     * insulation stands 755² x 0.0297 log10(384 / 259) = 2,896 A²s (ICEA form, read in a second
     * source).
     */
    @ParameterizedTest
    @CsvSource({
        "FAST_BREAKER, FAST, 0", "FAST_BREAKER, TYPICAL, 0", "FAST_BREAKER, SLOW, 0",
        "ORDINARY_BREAKER, FAST, 0", "ORDINARY_BREAKER, TYPICAL, 0", "ORDINARY_BREAKER, SLOW, 1"
    })
    void aFiveAmpBreakerWinsAgainstItsWireAsItsClassSays(
            ProtectorCurves.Curve of, Tripping edge, int overheats) throws UntoldStory {
        Bench bench =
                bench(0.02)
                        .part(new Breaker(Bench.tag("breaker"), 5, 0.02, of.published()))
                        .part(new Wire(Bench.tag("wire"), Cable.awg("22").orElseThrow(), 1, 0.053))
                        .join("bus", "bar", "breaker", "in")
                        .join("breaker", "out", "wire", "a")
                        .join("wire", "b", "lamp", "plus");
        Story story =
                bench.timeline()
                        .tell(
                                bench.failure("wire: chafed to ground"),
                                Setting.with(Pilot.NEVER)
                                        .with(new Setting.Race(edge, Optional.empty())));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertEquals(overheats, Telling.count(story, StoryEvent.Kind.WIRE_OVERHEATS));
    }

    /** Preece, read: AWG 16 in air does not melt at 100 A, but its insulation does not stand it. */
    @Test
    void belowPreecesCurrentItGlowsAndNeverMelts() throws UntoldStory {
        Story story = chafed(unprotected("16", 0.05, 0.15));
        assertTrue(amps(0.125) < heating("16").meltingAmps());
        assertEquals(1, Telling.count(story, StoryEvent.Kind.WIRE_OVERHEATS));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.WIRE_MELTS));
        String words = story.of(StoryEvent.Kind.WIRE_OVERHEATS).get(0).words();
        assertTrue(words.contains("Preece"), words);
    }

    /** First-order thermal model, computed here. */
    @Test
    void aWireThatIsWarmFromItsLoadPassesItsLimitSooner() throws UntoldStory {
        double before = 8;
        Bench bench =
                unprotected("16", 0.02, 0.02)
                        .load("heater", DemandKind.CONSTANT_CURRENT, before, Bench.HARDY)
                        .join("wire", "b", "heater", "plus");
        double warm = Telling.when(chafed(bench), StoryEvent.Kind.WIRE_OVERHEATS, "wire");
        double cold =
                Telling.when(
                        chafed(unprotected("16", 0.02, 0.02)),
                        StoryEvent.Kind.WIRE_OVERHEATS,
                        "wire");
        double preload = Math.pow(before / heating("16").insulationAmps(25), 2);
        assertEquals(1 - preload, warm / cold, 0.02);
    }

    /** Either half of a chafed wire may be the one that is fed. */
    @Test
    void theFarHalfMeltsWhereTheCurrentComesFromTheFarEnd() throws UntoldStory {
        Bench bench =
                bench(0.005)
                        .part(new Wire(Bench.tag("wire"), Cable.awg("22").orElseThrow(), 1, 0.01))
                        .join("bus", "bar", "wire", "b")
                        .join("wire", "a", "lamp", "plus");
        Story story = chafed(bench);
        double expected = heating("22").secondsToMelt(amps(0.005 + 0.005), 25);
        assertEquals(
                expected, Telling.when(story, StoryEvent.Kind.WIRE_MELTS, "wire"), 1e-3 * expected);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.013})
    void theStepDoesNotMatter(double longestStepSeconds) throws UntoldStory {
        Bench bench = unprotected("16", 0.05, 0.01);
        Story free = chafed(bench);
        Story held =
                new Timeline(
                                bench.study(),
                                bench.candidate(),
                                Moment.heldIn("cruise"),
                                longestStepSeconds)
                        .tell(
                                bench.failure("wire: chafed to ground"),
                                Setting.with(Pilot.NEVER),
                                60);
        for (StoryEvent.Kind kind :
                new StoryEvent.Kind[] {
                    StoryEvent.Kind.WIRE_OVERHEATS, StoryEvent.Kind.WIRE_MELTS
                }) {
            assertEquals(Telling.when(free, kind, "wire"), Telling.when(held, kind, "wire"), 1e-7);
        }
    }
}
