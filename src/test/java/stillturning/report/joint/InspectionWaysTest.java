package stillturning.report.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.parts.Part;

class InspectionWaysTest {

    @Test
    void everyKindOfPartCanBeInspected() {
        assertEquals(
                Set.copyOf(List.of(Part.class.getPermittedSubclasses())),
                InspectionWays.BY_KIND.keySet());
    }
}
