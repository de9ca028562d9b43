package stillturning.replays;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.Scrutiny;
import stillturning.assess.requirement.Survey;
import stillturning.assess.verdict.Outcome;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.files.move.Drawn;

/**
 * For each layout that has failed a change is suggested, among the first three, that would have
 * prevented it: flown again with the change, the reported flight loses the engine less often. Where
 * no change of the layout would have, that is held too.
 */
class ReplayMendTest {

    static List<Replay> asked() {
        List<Replay> all = Replay.all().stream().filter(r -> r.file().mend().isPresent()).toList();
        return IntStream.range(0, all.size())
                .filter(i -> i % Effort.cases(6, 1) == 5 % Effort.cases(6, 1))
                .mapToObj(all::get)
                .toList();
    }

    @Thorough
    @ParameterizedTest
    @MethodSource("asked")
    void aChangeThatPreventsItIsAmongTheFirst(Replay replay) {
        ReplayMends mends = ReplayMends.of(replay);
        if (replay.file().noMend().isPresent()) {
            assertEquals(0, mends.mending(), mends::told);
            return;
        }
        int place = mends.place();
        assertTrue(place > 0 && place <= ReplayMends.FIRST, mends::told);
        if (!mends.mend().leaves()) {
            int before = Replay.Replayed.ended(replay.replayed().samples());
            assertTrue(
                    mends.prevents(before),
                    () ->
                            "engine lost in "
                                    + before
                                    + ", then in "
                                    + mends.stillLost()
                                    + mends.told());
        }
    }

    @ParameterizedTest
    @MethodSource("modelled")
    void nothingThatIsModelledGoesUnasked(Replay replay) {
        assertTrue(
                replay.file().mend().isPresent() || replay.file().noMend().isPresent(),
                "say what would have prevented it");
    }

    /** What is said of the one layout that no single change mends. */
    @Test
    void aWarningAndALargerBatteryTogetherMendWhatNeitherDoes() throws Exception {
        String warning = "Warn of low voltage at the main bus";
        String larger = "Take 27 Ah for the battery";
        assertEquals(Outcome.ENGINE_LOST, withoutAlternator(List.of(warning)));
        assertEquals(Outcome.ENGINE_LOST, withoutAlternator(List.of(larger)));
        assertEquals(Outcome.REDUNDANCY_LOST, withoutAlternator(List.of(warning, larger)));
    }

    private static Outcome withoutAlternator(List<String> moves) throws Exception {
        Replay replay =
                Replay.all().stream()
                        .filter(r -> r.id().equals("chi94der03"))
                        .findFirst()
                        .orElseThrow();
        Drawn drawn = ReplayMends.drawn(replay, moves);
        return Scrutiny.of(drawn.study(), drawn.candidate(), Survey.NONE)
                .verdicts(List.of("alternator: no output"))
                .get(0)
                .outcome();
    }

    static List<Replay> modelled() {
        return Replay.all().stream().filter(r -> r.file().course().isPresent()).toList();
    }
}
