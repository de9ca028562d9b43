package stillturning.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class EngineLogicTest {

    private static final EngineLogic PUMPS =
            EngineLogic.anyOf(List.of(new EngineLogic.One("p1"), new EngineLogic.One("p2")));
    private static final EngineLogic ALL =
            EngineLogic.allOf(List.of(new EngineLogic.One("ecu"), PUMPS));

    private static boolean runs(EngineLogic logic, String... working) {
        return logic.runsOn(Set.of(working)::contains);
    }

    @Test
    void anyAndAllNest() {
        assertTrue(runs(ALL, "ecu", "p2"));
        assertFalse(runs(ALL, "p1", "p2"));
        assertFalse(runs(ALL, "ecu"));
    }

    @Test
    void twoOfThreeCoilsAreEnough() {
        EngineLogic coils =
                new EngineLogic.AtLeast(
                        2,
                        List.of(
                                new EngineLogic.One("c1"),
                                new EngineLogic.One("c2"),
                                new EngineLogic.One("c3")));
        assertTrue(runs(coils, "c1", "c3"));
        assertFalse(runs(coils, "c3"));
        assertEquals("2 of (c1, c2, c3)", coils.inWords());
    }

    @Test
    void wordsAndLoadsKeepTheOrderOfTheStudy() {
        assertEquals("ecu and (p1 or p2)", ALL.inWords());
        assertEquals(List.of("ecu", "p1", "p2"), ALL.loads());
    }

    @Test
    void moreThanThereAreCannotBeAsked() {
        List<EngineLogic> one = List.of(new EngineLogic.One("c1"));
        assertThrows(IllegalArgumentException.class, () -> new EngineLogic.AtLeast(2, one));
        assertThrows(IllegalArgumentException.class, () -> new EngineLogic.AtLeast(0, one));
    }
}
