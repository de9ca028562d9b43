package stillturning.report.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RunPartNamesTest {

    @Test
    void whatHangsInOneRunIsReadAsOneThing() {
        assertEquals(
                "pump-1 (itself, wire, return), battery-lead (fuse, wire), main-bus, lights-wire-2",
                RunPartNames.listed(
                        List.of(
                                "pump-1",
                                "pump-1-wire",
                                "battery-lead-fuse",
                                "main-bus",
                                "battery-lead-wire",
                                "pump-1-return",
                                "lights-wire-2",
                                "pump-1-wire")));
    }

    @Test
    void nothingIsNothing() {
        assertEquals("", RunPartNames.listed(List.of()));
    }
}
