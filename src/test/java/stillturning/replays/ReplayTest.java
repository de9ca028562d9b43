package stillturning.replays;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.replays.Replay.Replayed;
import stillturning.replays.ReplayFile.Found;

/**
 * Published accident reports against the program: played with what the report names, the flight can
 * go as it went; and asked before flight, the program names the cause. The report's number stands
 * in each file of {@code replays}; layouts are told in our own words, and what a report does not
 * say is a guess with a range. Verdict and reason count, not the minute.
 */
class ReplayTest {

    private static final int EVERY = Effort.cases(3, 1);

    static List<Replay> all() {
        List<Replay> all = Replay.all();
        return IntStream.range(0, all.size())
                .filter(i -> i % EVERY == 0)
                .mapToObj(all::get)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("all")
    void theReportsCourseLiesWithinWhatTheUnknownValuesAllow(Replay replay) {
        if (replay.file().course().isEmpty()) {
            assertTrue(replay.file().notModelled().isPresent(), "say why it is not modelled");
            return;
        }
        Replayed replayed = replay.replayed();
        assertTrue(
                replayed.inside() > 0,
                () ->
                        replay.id()
                                + " never goes as reported:\n  "
                                + replayed.samples().get(0).told());
    }

    @ParameterizedTest
    @MethodSource("all")
    void theCauseIsAmongTheFirstThingsSaidBeforeFlight(Replay replay) {
        Replayed replayed = replay.replayed();
        List<Found> wanted = replay.file().beforeFlight();
        for (int n = 0; n < wanted.size(); n++) {
            Found found = wanted.get(n);
            int place = replayed.places().get(n);
            List<String> answer = replayed.answers().get(n);
            assertTrue(
                    place > 0 && place <= found.atMost(),
                    () ->
                            "%s: %s says %s at place %d, not among the first %d of:\n%s"
                                    .formatted(
                                            replay.id(),
                                            found.asked().typed(),
                                            found.says(),
                                            place,
                                            found.atMost(),
                                            first(answer)));
        }
    }

    private static String first(List<String> answer) {
        return answer.stream().limit(30).map(a -> "  " + a).collect(Collectors.joining("\n"));
    }
}
