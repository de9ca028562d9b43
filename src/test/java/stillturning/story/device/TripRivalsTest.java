package stillturning.story.device;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.parts.element.curve.Tripping;

/** What else might have opened: all that may be as quick as the slowest of the winner's kind. */
class TripRivalsTest {

    private record Opening(String part, double fastSeconds) implements Racer {
        @Override
        public double seconds(Tripping edge) {
            return edge == Tripping.FAST ? fastSeconds : 10 * fastSeconds;
        }
    }

    @Test
    void theWinnerIsNoRivalAndEachOtherIsOneOnce() {
        List<Racer> racers =
                List.of(
                        new Opening("winner", 0.1),
                        new Opening("quick", 0.2),
                        new Opening("quick", 0.3),
                        new Opening("a little slower", 1.2),
                        new Opening("slow", 1.3));
        assertEquals(
                List.of("quick", "a little slower"),
                TripRivals.wonBy("winner", 1, racers).rivals());
    }
}
