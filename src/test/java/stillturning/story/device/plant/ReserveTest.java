package stillturning.story.device.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.Tolerance.OwnBattery;

class ReserveTest {

    private static final Tolerance HARDY = new Tolerance(6, 6.5, 0.5, 0.5, 40, 1);

    @Test
    void rideThroughIsThereEachTime() {
        Reserve reserve = new Reserve(HARDY);
        for (double seconds = 0; seconds < 3; seconds++) {
            assertEquals(0.5, reserve.startsAt(seconds));
            reserve.endsAt(seconds + 0.4);
        }
    }

    @Test
    void whatWasUsedHasToBeChargedFirst() {
        Reserve reserve = new Reserve(HARDY.with(new OwnBattery(600, 6000)));
        assertEquals(600.5, reserve.startsAt(0));
        reserve.endsAt(500.5);
        // 100 s are left, and 2000 s charge 200 s more
        assertEquals(300.5, reserve.seconds(2500.5), 1e-9);
        assertEquals(300.5, reserve.startsAt(2500.5), 1e-9);
    }

    @Test
    void itIsNeverFullerThanFull() {
        Reserve reserve = new Reserve(HARDY.with(new OwnBattery(600, 6000)));
        reserve.startsAt(0);
        reserve.endsAt(100);
        assertEquals(600.5, reserve.seconds(50_000), 1e-9);
        assertEquals(600.5, reserve.startsAt(50_000), 1e-9);
    }

    @Test
    void emptyItHasOnlyItsRideThrough() {
        Reserve reserve = new Reserve(HARDY.with(new OwnBattery(600, 6000)));
        reserve.startsAt(0);
        reserve.endsAt(600.5);
        assertEquals(0.5, reserve.startsAt(600.5), 1e-9);
    }
}
