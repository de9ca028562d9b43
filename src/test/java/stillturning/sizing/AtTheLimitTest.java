package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stillturning.model.wiring.PublishedLimits;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ProtectorSize.InrushCheck;
import stillturning.sizing.result.WireSchedule.VoltageDrop;

/** What is exactly at its limit keeps to it, and of two that are equal the first counts. */
class AtTheLimitTest {

    @Test
    void aDropOfJustTheLimitAsChartsRoundItIsWithin() {
        double limit = 0.5;
        double rounded = limit * PublishedLimits.ROUNDING;
        assertTrue(new VoltageDrop(rounded, limit, true).within());
        assertFalse(new VoltageDrop(Math.nextUp(rounded), limit, true).within());
    }

    @Test
    void whatIsSurelyLetThroughDoesNotOpen() {
        assertFalse(new InrushCheck(20, 0.1, 20).opens());
        assertTrue(new InrushCheck(Math.nextUp(20.0), 0.1, 20).opens());
    }

    @Test
    void ofEqualCurrentsTheFirstIsTold() {
        Carried first = new Carried(5, "cruise", "first");
        Carried second = new Carried(5, "climb", "second");
        assertEquals(first, first.orMore(second));
        LowBatteries.Greedy one = new LowBatteries.Greedy("one", 5, 4, "cruise");
        LowBatteries.Greedy other = new LowBatteries.Greedy("other", 5, 4, "climb");
        assertEquals(one, LowBatteries.Greedy.orMore(one, other));
    }
}
