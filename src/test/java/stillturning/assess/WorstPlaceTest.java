package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.assess.SheddingEndurances.WorstPlace;
import stillturning.story.Endurance;

/** A charge that is drawn evenly, and faster while the run lasts: all places in closed form. */
class WorstPlaceTest {

    private static final double COULOMBS = 36_000;

    /** A current that grows while the charge falls, as that of loads of constant power. */
    private record Drain(double amps, double moreAmps, double growth, double runSeconds) {

        /** When the charge is used up if the run begins at a time (s); found by small steps. */
        double ends(double from) {
            double left = COULOMBS;
            double seconds = 0;
            double step = 0.25;
            while (left > 0) {
                boolean runs = seconds >= from && seconds < from + runSeconds;
                double drawn =
                        (amps + (runs ? moreAmps : 0)) * (1 + growth * (1 - left / COULOMBS));
                left -= drawn * step;
                seconds += step;
            }
            return seconds + left / amps;
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 5, 0, 300", "10, 20, 0.3, 300", "10, 2, 0.5, 120", "30, 40, 0.2, 60"})
    void findsTheFirstRunThatTheEngineDoesNotOutlive(
            double amps, double moreAmps, double growth, double runSeconds) {
        Drain drain = new Drain(amps, moreAmps, growth, runSeconds);
        double whole = drain.ends(1e9);
        List<Double> asked = new ArrayList<>();
        WorstPlace found =
                WorstPlace.first(
                        place(drain, 0),
                        whole,
                        runSeconds,
                        from -> {
                            asked.add(from);
                            return place(drain, from);
                        });
        double earlier = found.fromSeconds() - whole / 4096;
        assertTrue(drain.ends(found.fromSeconds()) <= found.fromSeconds() + runSeconds);
        assertTrue(drain.ends(earlier) > earlier + runSeconds);
        assertTrue(asked.size() <= 9, asked.toString());
    }

    @Test
    void whatEndsInAJumpIsFoundToo() {
        WorstPlace found =
                WorstPlace.first(
                        new WorstPlace(0, new Endurance.Lasts(2000)),
                        2000,
                        100,
                        from -> new WorstPlace(from, new Endurance.Lasts(from < 777 ? 2000 : 50)));
        assertEquals(777, found.fromSeconds(), 2000.0 / 4096);
        assertTrue(found.fromSeconds() >= 777);
    }

    private static WorstPlace place(Drain drain, double from) {
        return new WorstPlace(from, new Endurance.Lasts(drain.ends(from)));
    }
}
