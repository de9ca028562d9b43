package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.reliability.chance.Chance.BetaSplit;

/**
 * Latent events and common causes. Formulas from memory, unverified (NUREG-0492 chapter XI, AC/AMC
 * 25.1309, ARP4761, NUREG/CR-4780, IEC 61508-6); values computed from them.
 */
class LatentTest {
    private static final CutUnion ONE = CutUnion.of(1, List.of(List.of(0)));
    private static final CutUnion PAIR = CutUnion.of(2, List.of(List.of(0, 1)));

    /** An hour between tests, so that the rate per hour is x. */
    private static Exposure tested(int units, double x) {
        return Exposure.of(
                Cases.HOUR,
                IntStream.range(0, units)
                        .mapToObj(unit -> (Occurrence) Cases.latent(x, 1))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        ".001, 4.998334e-4, 9.995e-4, 5e-10, 5e-8",
        ".01, 4.983375e-3, 9.95017e-3, 5e-10, 5e-9",
        ".1, .04837418, .09516258, 5e-9, 5e-9",
        "1, .36787944, .63212056, 5e-9, 5e-9"
    })
    void oneUnitIsLostInTheMeanAndAtTheEnd(
            double x, double mean, double end, double withinMean, double withinEnd) {
        TopChance top = Chance.of(ONE, tested(1, x));
        assertEquals(mean, top.average().value(), withinMean);
        assertEquals(end, top.last().value(), withinEnd);
    }

    @Test
    void unitsTestedTogetherAreLostTogetherMoreOftenThanTheirMeansSay() {
        assertEquals(3.30845e-5, Cases.average(PAIR, tested(2, .01)), 5e-11);
        assertEquals(3.094595e-3, Cases.average(PAIR, tested(2, .1)), 5e-10);
        CutUnion twoOfThree = CutUnion.of(3, List.of(List.of(0, 1), List.of(0, 2), List.of(1, 2)));
        assertEquals(9.87594e-5, Cases.average(twoOfThree, tested(3, .01)), 5e-10);
        CutUnion allThree = CutUnion.of(3, List.of(List.of(0, 1, 2)));
        assertEquals(2.47021e-7, Cases.average(allThree, tested(3, .01)), 5e-13);
    }

    @Test
    void activeOnTopOfALatentOne() {
        TopChance top =
                Chance.of(
                        PAIR,
                        Exposure.of(
                                Cases.HOUR, List.of(Cases.active(1e-4), Cases.latent(1e-5, 100))));
        assertEquals(4.998084e-8, top.averagePerHour().value(), 5e-15);
        assertEquals(1e-7, top.lastPerHour().value(), 1e-10);
    }

    @Test
    void intervalThatMeetsALimit() {
        // T = 2L / (lambda lambda): 2000 h for L = 1e-6, to first order
        double found = Cases.average(PAIR, Cases.active(1e-4), Cases.latent(1e-5, 2000));
        assertEquals(1e-6, found, 1e-8);
        assertTrue(found < 1e-6);
    }

    @Test
    void perHourIsPerFlightOverItsLength() {
        TopChance top = Chance.of(ONE, new Exposure(7200, List.of(Cases.fixed(2e-6)), List.of(0)));
        assertEquals(1e-6, top.averagePerHour().value(), 1e-20);
        assertEquals(2e-6, top.average().value(), 1e-20);
    }

    @Test
    void differentIntervalsFallInNoStep() {
        double found = Cases.average(PAIR, Cases.latent(.01, 1), Cases.latent(.002, 50));
        double one = Cases.average(ONE, Cases.latent(.01, 1));
        double other = Cases.average(ONE, Cases.latent(.002, 50));
        assertEquals(one * other, found, 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, .009, .011, .09, .11, 1, 3, 30, 1e4})
    void meanIsRightHoweverRare(double x) {
        // 1 - 2(1-exp(-x))/x + (1-exp(-2x))/(2x), by its series where digits would cancel
        double exact =
                x < .1
                        ? x
                                * x
                                * (1 / 3.
                                        - x
                                                * (1 / 4.
                                                        - x
                                                                * (7 / 60.
                                                                        - x
                                                                                * (1 / 24.
                                                                                        - x * 31
                                                                                                / 2520))))
                        : 1 + 2 * Math.expm1(-x) / x - Math.expm1(-2 * x) / (2 * x);
        double within = x < .1 ? 1e-7 : 1e-8;
        assertEquals(1, Cases.average(PAIR, tested(2, x)) / exact, within);
    }

    @Test
    void redundantPairWithACommonCause() {
        // q = .001 each, beta .1: 8.1e-7 + 1e-4 = 1.0081e-4, 99.2 % of it common
        Estimate top = commonPair(Cases.fixed(.001), .1).average();
        assertEquals(1.0081e-4, top.rareEventSum(), 1e-15);
        assertEquals(1.0081e-4 - 8.1e-11, top.value(), 1e-15);
        Importance common =
                Chance.importance(shared(), exposure(Cases.fixed(.001), .1), List.of(2));
        assertEquals(.992, common.fussellVeselySum(), 5e-4);
    }

    @Test
    void testedPairWithACommonCause() {
        // lambda 1e-6/h, T 8760 h: 4.58719e-4 and, for beta .02, 1.121663e-4 to leading order
        Occurrence unit = Cases.latent(1e-6, 8760);
        assertEquals(1, commonPair(unit, .1).average().value() / 4.58719e-4, 2e-3);
        assertEquals(1, commonPair(unit, .02).average().value() / 1.121663e-4, 5e-3);
        assertEquals(1, Cases.average(PAIR, unit, unit) / 2.55792e-5, 1e-2);
        // exactly: the mean of 1 - exp(-bu)(1 - (1 - exp(-au))^2), computed here
        double a = .9 * .00876;
        double b = .1 * .00876;
        double exact = 1 - 2 * phi(a + b) + phi(2 * a + b);
        assertEquals(exact, commonPair(unit, .1).average().value(), 1e-13);
    }

    private static double phi(double s) {
        return -Math.expm1(-s) / s;
    }

    @Test
    void withoutBetaUnitsAreAloneAndWithAllOfItTheyAreOne() {
        Occurrence unit = Cases.latent(1e-6, 8760);
        assertEquals(Cases.average(PAIR, unit, unit), commonPair(unit, 0).average().value(), 1e-18);
        assertEquals(Cases.average(ONE, unit), commonPair(unit, 1).average().value(), 1e-18);
        assertEquals(4.38e-3, Cases.average(ONE, unit), 2e-5);
    }

    private static CutUnion shared() {
        return CutUnion.of(3, List.of(List.of(0, 1), List.of(2)));
    }

    private static Exposure exposure(Occurrence unit, double beta) {
        BetaSplit split = Chance.split(unit, beta);
        return new Exposure(
                Cases.HOUR, List.of(split.own(), split.own(), split.common()), List.of(0, 0, 0));
    }

    private static TopChance commonPair(Occurrence unit, double beta) {
        return Chance.of(shared(), exposure(unit, beta));
    }
}
