package stillturning.reliability.groundtest;

import java.util.List;
import java.util.Optional;

/**
 * One step: something is opened, looked at, and put back.
 *
 * @param switchedOn load that is switched on for it, and off again after it
 * @param shows names of the single failures whose state it is
 */
public record TestStep(
        int number,
        Hand hand,
        Optional<String> switchedOn,
        Expected expected,
        List<InstrumentReading> readings,
        List<String> shows) {

    public TestStep {
        readings = List.copyOf(readings);
        shows = List.copyOf(shows);
    }
}
