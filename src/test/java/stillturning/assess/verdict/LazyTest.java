package stillturning.assess.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LazyTest {

    private final AtomicInteger worked = new AtomicInteger();

    private final Lazy<Integer> lazy = Lazy.by(worked::incrementAndGet);

    @Test
    void isWorkedOutOnceHoweverManyAsk() {
        assertEquals(0, worked.get());
        IntStream.range(0, 100).parallel().forEach(n -> assertEquals(1, lazy.get()));
        assertEquals(1, worked.get());
    }

    @Test
    void isEqualByItsValue() {
        assertEquals(Lazy.of(1), lazy);
        assertEquals(Lazy.of(1).hashCode(), lazy.hashCode());
        assertNotEquals(Lazy.of(2), lazy);
    }

    @Test
    void whatFailsIsTriedAgainAndNeverTakenAsDone() {
        Lazy<Integer> failing =
                Lazy.by(
                        () -> {
                            if (worked.incrementAndGet() < 2) {
                                throw new IllegalStateException("not yet");
                            }
                            return 7;
                        });
        assertThrows(IllegalStateException.class, failing::get);
        assertEquals(7, failing.get());
    }
}
