package stillturning.parts.element.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a full battery turns to gas, against what was published of it. */
class OverchargeTest {

    private static final double WARM = 25;

    private static double share(Overcharge law, double celsius, double volts) {
        double[] at = law.voltsAt(celsius);
        double[] shares = Overcharge.shares();
        int i = 1;
        while (i < at.length - 1 && at[i] < volts) {
            i++;
        }
        return shares[i - 1]
                + (volts - at[i - 1]) / (at[i] - at[i - 1]) * (shares[i] - shares[i - 1]);
    }

    private static double volts(Overcharge law, double celsius, double share) {
        double[] shares = Overcharge.shares();
        double[] at = law.voltsAt(celsius);
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] == share) {
                return at[i];
            }
        }
        throw new AssertionError("no point at " + share);
    }

    /**
     * Sealed aircraft class, on the aircraft's regulator: 0.5 % of the one-hour current (manual
     * 5-0324 rev G, p. 12, read; 14.1 V from the same range). Deep-cycle class, 5 %: 15.6 V (manual
     * 6-0101 rev D, p. 21, read).
     */
    @ParameterizedTest
    @CsvSource({"14.1, 0.005", "15.6, 0.05"})
    void theTypicalLawPassesThroughTheMeasuredPoints(double volts, double share) {
        assertEquals(share, share(Overcharge.TYPICAL, WARM, volts), 1e-9);
    }

    /**
     * 15.3 to 18.0 V at a twentieth, 15.6 to 18.5 V at a tenth of the one-hour current: from two
     * manuals' lowest reading to a charger manual's highest (read).
     */
    @ParameterizedTest
    @EnumSource(Overcharge.class)
    void everyLawStaysWithinWhatManualsReport(Overcharge law) {
        double twentieth = volts(law, WARM, 0.05);
        double tenth = volts(law, WARM, 0.1);
        assertTrue(twentieth >= 15.3 && twentieth <= 18.0, law + ": " + twentieth);
        assertTrue(tenth >= 15.6 && tenth <= 18.5, law + ": " + tenth);
    }

    /**
     * The points lie on one straight line against the logarithm of the current, to their rounding.
     */
    @ParameterizedTest
    @CsvSource({"EARLY, 0.200", "TYPICAL, 0.250", "LATE, 0.209"})
    void eachLawIsExponential(Overcharge law, double voltsADecadeAndCell) {
        for (double share : new double[] {0.005, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2}) {
            double expected = 6 * voltsADecadeAndCell * Math.log10(share / 0.005);
            double above = volts(law, WARM, share) - volts(law, WARM, 0.005);
            assertEquals(expected, above, 0.035, law + " at " + share);
        }
    }

    /**
     * 40 °C against 25 °C lower a 12 V battery by 0.5 to 0.85 V (computed from two sources, read).
     */
    @ParameterizedTest
    @EnumSource(Overcharge.class)
    void aWarmBatteryGassesEarlier(Overcharge law) {
        double fall = volts(law, WARM, 0.1) - volts(law, 40, 0.1);
        assertTrue(fall > 0.5 && fall < 0.85, law + ": " + fall);
    }

    @Test
    void theLawsStandInTheOrderOfTheirNames() {
        for (double share : new double[] {0.02, 0.05, 0.1, 0.2, 0.5, 1}) {
            double typical = volts(Overcharge.TYPICAL, WARM, share);
            assertTrue(volts(Overcharge.EARLY, WARM, share) < typical);
            assertTrue(volts(Overcharge.LATE, WARM, share) > typical);
        }
    }
}
