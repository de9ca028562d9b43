package stillturning.reliability.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;

/** Which single value explains readings that are off. */
class SingleValueFitsTest {

    private static final OpenValue RADIO = new OpenValue("radio", 1.2, 1.5, 1.8);
    private static final OpenValue LEAD = new OpenValue("lead", 0.008, 0.010, 0.012);

    /** How three readings answer to each of the two values. */
    private static final List<double[]> SLOPES =
            List.of(new double[] {1, 1, 0}, new double[] {0, -20, -40});

    private static Compared reading(double predicted, double measured) {
        return new Compared(
                new Expectation(
                        Measurand.of(MeasurandKind.AMPS, "battery"),
                        predicted,
                        predicted - 0.1,
                        predicted + 0.1),
                OptionalDouble.of(measured),
                OptionalDouble.empty());
    }

    @Test
    void theValueThatMovesJustTheseReadingsIsNamed() {
        List<Explanation> found =
                SingleValueFits.of(
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
        assertEquals(List.of(), SingleValueFits.of(readings, List.of(RADIO, LEAD), SLOPES));
    }

    @Test
    void aValueFarBeyondWhatTheStudyLeavesOpenIsNotBelieved() {
        List<Compared> readings = List.of(reading(10, 13), reading(5, 8), reading(2, 2));
        assertEquals(List.of(), SingleValueFits.of(readings, List.of(RADIO, LEAD), SLOPES));
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
            for (Explanation one :
                    SingleValueFits.of(readings, List.of(RADIO), SLOPES.subList(0, 1))) {
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
    void twoValuesThatAreBothOffAreFoundTogether() {
        // 0.3 A more of the radio and 4 mohm more of the lead: the first has 0.3, the second
        // 0.3 - 0.08, the third -0.16
        List<Compared> readings = List.of(reading(10, 10.3), reading(5, 5.22), reading(2, 1.84));
        List<JointExplanation> found =
                SingleValueFits.together(readings, List.of(RADIO, LEAD), SLOPES);
        assertEquals(1, found.size(), found.toString());
        JointExplanation both = found.get(0);
        assertEquals(1.8, both.one().needed(), 1e-9);
        assertEquals(0.014, both.other().needed(), 1e-9);
        assertEquals(3, both.mended());
        assertEquals(3, both.disagreeing());
        assertEquals(0, both.spoilt());
    }

    @Test
    void whereASingleValueDoesNoPairIsNamed() {
        List<Compared> readings = List.of(reading(10, 10.25), reading(5, 5.25), reading(2, 2));
        assertEquals(List.of(), SingleValueFits.together(readings, List.of(RADIO, LEAD), SLOPES));
    }

    /** A second load on the same wire moves the same readings by the same. */
    @Test
    void valuesThatTheReadingsCannotTellApartAreSaidToBe() {
        OpenValue lights = new OpenValue("lights", 3, 4, 5);
        List<double[]> slopes = List.of(SLOPES.get(0), new double[] {0.98, 1, 0.01});
        List<Compared> readings = List.of(reading(10, 10.25), reading(5, 5.25), reading(2, 2));
        List<Explanation> found = SingleValueFits.of(readings, List.of(RADIO, lights), slopes);
        assertEquals(2, found.size(), found.toString());
        found.forEach(one -> assertEquals(1, one.alike().size(), one.toString()));
        List<Compared> worse = List.of(reading(10, 10.25), reading(5, 5.25), reading(2, 2.4));
        assertEquals(List.of(), SingleValueFits.together(worse, List.of(RADIO, lights), slopes));
    }

    /**
     * 600 simulated tests: load and lead are both off, and readings scatter by a fourth of what
     * their limits span. The share that holds is off 95 % by chance by 0.9 points (binomial).
     */
    @Test
    void jointIntervalsAndTheirEllipseHoldTheTruthAsOftenAsTheySay() {
        Random random = new Random(11);
        int radio = 0;
        int lead = 0;
        int ellipse = 0;
        int told = 0;
        for (int i = 0; i < 600; i++) {
            double more = 0.35 + 0.3 * random.nextDouble();
            double ohms = 0.006 + 0.003 * random.nextDouble();
            List<Compared> readings = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                double off = SLOPES.get(0)[k] * more + SLOPES.get(1)[k] * ohms;
                readings.add(reading(10, 10 + off + 0.05 * random.nextGaussian()));
            }
            for (JointExplanation both :
                    SingleValueFits.together(readings, List.of(RADIO, LEAD), SLOPES)) {
                told++;
                double x = 2 * (both.one().needed() - 1.5 - more) / both.one().half();
                double y = 2 * (both.other().needed() - 0.010 - ohms) / both.other().half();
                double r = both.correlation();
                radio += Math.abs(x) <= 2 ? 1 : 0;
                lead += Math.abs(y) <= 2 ? 1 : 0;
                double square = (x * x - 2 * r * x * y + y * y) / (1 - r * r);
                ellipse += square <= -2 * Math.log(0.05) ? 1 : 0;
            }
        }
        String all = radio + " " + lead + " " + ellipse + " of " + told;
        assertTrue(told >= 500, all);
        for (int held : new int[] {radio, lead, ellipse}) {
            assertTrue(held >= 0.92 * told && held <= 0.98 * told, all);
        }
    }

    @Test
    void whatKeepsToItsLimitsAsksForNoExplanation() {
        List<Compared> readings = List.of(reading(10, 10.05), reading(5, 5.05), reading(2, 2));
        assertFalse(
                SingleValueFits.of(readings, List.of(RADIO, LEAD), SLOPES).stream()
                        .anyMatch(e -> e.mended() > 0));
    }
}
