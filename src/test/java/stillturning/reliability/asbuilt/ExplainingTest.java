package stillturning.reliability.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stillturning.reliability.asbuilt.Subject.Kind;

/** Which single value explains readings that are off. */
class ExplainingTest {

    private static final OpenValue RADIO = new OpenValue("radio", 1.2, 1.5, 1.8);
    private static final OpenValue LEAD = new OpenValue("lead", 0.008, 0.010, 0.012);

    /** How three readings answer to each of the two values. */
    private static final List<double[]> SLOPES =
            List.of(new double[] {1, 1, 0}, new double[] {0, -20, -40});

    private static Compared reading(double predicted, double measured) {
        return new Compared(
                new Expectation(
                        Subject.of(Kind.AMPS, "battery"),
                        predicted,
                        predicted - 0.1,
                        predicted + 0.1),
                OptionalDouble.of(measured),
                OptionalDouble.empty());
    }

    @Test
    void theValueThatMovesJustTheseReadingsIsNamed() {
        List<Explanation> found =
                Explaining.of(
                        List.of(reading(10, 10.25), reading(5, 5.25), reading(2, 2)),
                        List.of(RADIO, LEAD),
                        SLOPES);
        assertEquals(1, found.size(), found.toString());
        Explanation radio = found.get(0);
        assertEquals("radio", radio.value().name());
        assertEquals(1.75, radio.needed(), 1e-12);
        assertTrue(radio.likely());
        assertEquals(2, radio.mended());
        assertEquals(2, radio.disagreeing());
        assertEquals(0, radio.spoilt());
    }

    @Test
    void whatNoValueExplainsIsExplainedByNone() {
        // one up, one down: the radio moves both alike, the lead leaves the first alone
        List<Compared> readings = List.of(reading(10, 11), reading(5, 4.5), reading(2, 2));
        assertEquals(List.of(), Explaining.of(readings, List.of(RADIO, LEAD), SLOPES));
    }

    @Test
    void aValueFarBeyondWhatTheStudyLeavesOpenIsNotBelieved() {
        List<Compared> readings = List.of(reading(10, 13), reading(5, 8), reading(2, 2));
        assertEquals(List.of(), Explaining.of(readings, List.of(RADIO, LEAD), SLOPES));
    }

    /** 500 times: limits are four standard deviations apart, so 0.05 A each. */
    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        Random random = new Random(3);
        int held = 0;
        int told = 0;
        for (int i = 0; i < 500; i++) {
            List<Compared> readings = new ArrayList<>();
            for (double slope : SLOPES.get(0)) {
                double off = 0.3 * slope + 0.05 * random.nextGaussian();
                readings.add(reading(10, 10 + off));
            }
            // where both readings stay beyond their limits, nothing is explained
            for (Explanation one : Explaining.of(readings, List.of(RADIO), SLOPES.subList(0, 1))) {
                told++;
                held += Math.abs(one.needed() - 1.8) <= one.half() ? 1 : 0;
            }
        }
        int within = held;
        int of = told;
        assertTrue(of >= 480, () -> of + " of 500 explained");
        assertTrue(held >= 0.92 * of && held <= 0.98 * of, () -> within + " of " + of);
    }

    @Test
    void whatKeepsToItsLimitsAsksForNoExplanation() {
        List<Compared> readings = List.of(reading(10, 10.05), reading(5, 5.05), reading(2, 2));
        assertFalse(
                Explaining.of(readings, List.of(RADIO, LEAD), SLOPES).stream()
                        .anyMatch(e -> e.mended() > 0));
    }
}
