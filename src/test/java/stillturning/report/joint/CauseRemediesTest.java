package stillturning.report.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.model.failure.Cause.CauseKind;

/** That alike units fail alike wherever they lie is common practice, no published source. */
class CauseRemediesTest {

    @Test
    void noRouteHelpsAgainstWhatIsAlike() {
        for (CauseKind kind : List.of(CauseKind.FIRMWARE, CauseKind.ALIKE)) {
            String remedy = CauseRemedies.of(kind);
            assertTrue(remedy.startsWith("another "), remedy);
            assertFalse(remedy.contains("lead ") || remedy.contains("apart"), remedy);
        }
    }

    @Test
    void everyKindHasARemedyOfItsOwn() {
        assertEquals(
                CauseKind.values().length,
                Arrays.stream(CauseKind.values())
                        .map(CauseRemedies::of)
                        .collect(Collectors.toSet())
                        .size());
    }
}
