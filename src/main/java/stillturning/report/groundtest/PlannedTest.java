package stillturning.report.groundtest;

import java.util.List;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.reliability.groundtest.GroundTest;
import stillturning.reliability.groundtest.InstrumentReading;
import stillturning.reliability.groundtest.Stage;
import stillturning.reliability.groundtest.TestStep;

/**
 * The plan of a candidate, and what the engine needs.
 *
 * @param engineLoads loads that the engine may need, in the study's order
 */
public record PlannedTest(Candidate candidate, List<String> engineLoads, GroundTest plan) {

    /**
     * A reading of a step; before the first step of a stage one has no step.
     *
     * @param step its number; 0 for none
     */
    public record AskedReading(Stage stage, int step, InstrumentReading reading) {}

    public PlannedTest {
        engineLoads = List.copyOf(engineLoads);
    }

    /** Every reading, in the order in which they are taken. */
    public List<AskedReading> readings() {
        return plan.stages().stream()
                .flatMap(
                        stage ->
                                Stream.concat(
                                        stage.readings().stream()
                                                .map(r -> new AskedReading(stage, 0, r)),
                                        stage.steps().stream().flatMap(s -> of(stage, s))))
                .toList();
    }

    private static Stream<AskedReading> of(Stage stage, TestStep step) {
        return step.readings().stream().map(r -> new AskedReading(stage, step.number(), r));
    }
}
