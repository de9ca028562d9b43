package stillturning.reliability.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stillturning.reliability.asbuilt.DropFit.Fitted;
import stillturning.reliability.asbuilt.DropFit.MeasuredDrop;

/** Resistances of wires from what they drop. */
class DropFitTest {

    @Test
    void oneReadingIsOhmsLaw() {
        assertEquals(
                new Fitted(0.012, OptionalDouble.empty()),
                DropFit.of(List.of(new MeasuredDrop(0.12, 10))));
    }

    /** 600 wires with four readings each; 95 % is off by chance by 0.9 points. */
    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        Random random = new Random(11);
        int held = 0;
        for (int i = 0; i < 600; i++) {
            double ohms = 0.002 + 0.02 * random.nextDouble();
            List<MeasuredDrop> drops = new ArrayList<>();
            for (double amps : new double[] {5, 10, 15, 20}) {
                drops.add(new MeasuredDrop(amps * ohms + 0.001 * random.nextGaussian(), amps));
            }
            Fitted fitted = DropFit.of(drops);
            held += Math.abs(fitted.ohms() - ohms) <= fitted.half().orElseThrow() ? 1 : 0;
        }
        int within = held;
        assertTrue(held >= 0.92 * 600 && held <= 0.98 * 600, () -> within + " of 600");
    }

    @Test
    void aDropWithoutACurrentIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new MeasuredDrop(0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new MeasuredDrop(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> DropFit.of(List.of()));
    }
}
