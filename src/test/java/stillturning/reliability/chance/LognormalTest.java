package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LognormalTest {
    /**
     * Formulas as in NUREG/CR-6823 (read in a second source); values computed with the handbooks' z
     * = 1.645, where ours is exact, 1.6448536: a part in 10,000 of sigma.
     */
    @ParameterizedTest
    @CsvSource({
        "2, .42137, 1.09283",
        "3, .66785, 1.24983",
        "5, .97838, 1.61384",
        "10, 1.39975, 2.66352",
        "15, 1.64623, 3.87691",
        "30, 2.06760, 8.47804"
    })
    void errorFactorFixesSigmaAndMean(double errorFactor, double sigma, double meanOverMedian) {
        Lognormal spread = new Lognormal(1, errorFactor);
        assertEquals(sigma, spread.sigma() * 1.6448536 / 1.645, 6e-6);
        assertEquals(1, spread.mean() / meanOverMedian, 4e-4);
    }

    @Test
    void meanOverMedianWithTheExactPercentile() {
        assertEquals(2.66398, new Lognormal(1, 10).mean(), 5e-6); // computed
    }

    @Test
    void percentilesAreTheErrorFactorAway() {
        Lognormal spread = new Lognormal(1e-6, 10);
        assertEquals(1e-7, spread.low(), 1e-20);
        assertEquals(1e-5, spread.high(), 1e-19);
        assertEquals(1e-5, spread.at(1.6448536269514722), 1e-17);
        assertEquals(1e-6, spread.at(0), 1e-20);
    }

    @ParameterizedTest
    @CsvSource({"3, 3, 4.72880", "3, 10, 12.82305"})
    void productOfIndependents(double one, double other, double product) {
        // computed: EF = exp(hypot(ln, ln)); medians multiply
        Lognormal found = new Lognormal(2, one).times(new Lognormal(3, other));
        assertEquals(product, found.errorFactor(), 5e-6);
        assertEquals(6, found.median(), 1e-12);
    }

    @Test
    void aValueWithoutSpreadIsItsOwnMean() {
        assertEquals(3e-6, Lognormal.fixed(3e-6).mean(), 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void medianBelowZeroOrEndlessIsRefused(double median) {
        assertThrows(IllegalArgumentException.class, () -> new Lognormal(median, 3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {.99, 0, -3, Double.NaN, Double.POSITIVE_INFINITY})
    void errorFactorBelowOneOrEndlessIsRefused(double errorFactor) {
        assertThrows(IllegalArgumentException.class, () -> new Lognormal(1, errorFactor));
    }
}
