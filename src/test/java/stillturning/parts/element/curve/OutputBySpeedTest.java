package stillturning.parts.element.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.parts.element.curve.OutputBySpeed.OutputPoint;

class OutputBySpeedTest {

    private static final OutputBySpeed OUTPUT =
            new OutputBySpeed(
                    List.of(
                            new OutputPoint(20, 0),
                            new OutputPoint(40, 30),
                            new OutputPoint(100, 45)));

    @ParameterizedTest
    @CsvSource({"0, 0", "19.9, 0", "20, 0", "30, 15", "40, 30", "70, 37.5", "100, 45", "900, 45"})
    void currentFollowsStraightLinesThenStaysLevel(double revsPerSecond, double amps) {
        assertEquals(amps, OUTPUT.ampsAt(revsPerSecond), 1e-12);
    }

    @Test
    void aMachineWithOnePhaseLostGivesItsShareAtEverySpeed() {
        assertEquals(7.5, OUTPUT.scaled(0.5).ampsAt(30), 1e-12);
        assertEquals(22.5, OUTPUT.scaled(0.5).largestAmps(), 1e-12);
    }

    @Test
    void speedsThatDoNotRiseAreRefused() {
        List<OutputPoint> points = List.of(new OutputPoint(20, 0), new OutputPoint(20, 10));
        assertThrows(IllegalArgumentException.class, () -> new OutputBySpeed(points));
        assertThrows(IllegalArgumentException.class, () -> new OutputBySpeed(List.of()));
    }
}
