package stillturning.reliability.groundtest;

import java.util.List;

/**
 * Steps that follow each other without a pause.
 *
 * @param charged whether batteries are charged as stated before it begins
 * @param off loads that are off at their own switches but for steps that switch one on
 * @param showing signs that show before the first step and after each
 * @param readings of every bus and source before the first step
 */
public record Stage(
        Configuration configuration,
        boolean charged,
        List<String> off,
        List<String> showing,
        List<InstrumentReading> readings,
        List<TestStep> steps) {

    public Stage {
        off = List.copyOf(off);
        showing = List.copyOf(showing);
        readings = List.copyOf(readings);
        steps = List.copyOf(steps);
    }
}
