package stillturning.report.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;

class FindingWordsTest {

    private static SizeFinding finding(Rule rule, double found, double allowed) {
        return new SizeFinding(
                rule,
                "pump-wire",
                "pump-breaker",
                found,
                allowed,
                new Carried(1, "cruise", ""),
                Optional.empty());
    }

    @Test
    void aLoadWithItsVoltageTheWrongWayRoundPointsAtTheSource() {
        SizeFinding backwards = finding(Rule.MINIMUM, -11.9, 9);
        assertEquals("has 11.90 V in cruise, the wrong way round", FindingWords.wrong(backwards));
        assertEquals(
                "look for a source whose plus and minus are exchanged",
                FindingWords.mend(backwards));
    }

    @Test
    void oneOtherWireIsOne() {
        String two = FindingWords.wrong(finding(Rule.HEAT_IF_SLOW, 250, 2));
        assertTrue(two.endsWith("; so with 1 other wire"), two);
    }

    /** A return that chafes on metal at its own voltage shares a current and drives none. */
    @Test
    void aReturnIsNotToldToKeepOffMetal() {
        String mend = FindingWords.mend(finding(Rule.UNPROTECTED_BY_CUSTOM, 600, 210));
        assertTrue(mend.startsWith("prevent that short, which is in pump-breaker"), mend);
    }

    /** An alternator at its set point gives what is drawn, and a larger one would too. */
    @ParameterizedTest
    @EnumSource(
            value = Rule.class,
            names = {"ALTERNATOR_HELD", "CHARGE_HELD"})
    void noLargerAlternatorIsAskedForWhereItsVoltageIsHeld(Rule rule) {
        String mend = FindingWords.mend(finding(rule, 0.7, 0.9));
        assertFalse(mend.startsWith("a larger alternator"), mend);
    }

    /** Whatever a rule finds, also what cannot be told in figures. */
    @ParameterizedTest
    @EnumSource(Rule.class)
    void everyRuleHasWordsAndARemedy(Rule rule) {
        for (double found : new double[] {12.34, 0, -0.0, 1e-9}) {
            for (String words :
                    new String[] {
                        FindingWords.wrong(finding(rule, found, 5)),
                        FindingWords.mend(finding(rule, found, 5))
                    }) {
                assertFalse(words.isBlank(), rule.name());
                assertFalse(words.contains("Infinity") || words.contains("NaN"), words);
                assertFalse(words.contains("-0"), words);
            }
        }
    }
}
