package stillturning.report.groundtest;

import java.util.LinkedHashMap;
import java.util.Map;
import stillturning.reliability.asbuilt.StepKey;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.TestStep;

/** What is done in the steps of a plan and what must happen, by the names of the steps. */
public final class PlanWords {

    private PlanWords() {}

    /** What is done. */
    public static Map<String, String> acts(PlannedTest test) {
        StepWords said = new StepWords(test);
        Map<String, String> acts = new LinkedHashMap<>();
        StepKey.steps(test.plan()).forEach((key, step) -> acts.put(key, said.act(step)));
        return acts;
    }

    /** What must happen. */
    public static Map<String, String> mustHappen(PlannedTest test) {
        StepWords said = new StepWords(test);
        Map<String, String> must = new LinkedHashMap<>();
        StepKey.steps(test.plan())
                .forEach(
                        (key, step) ->
                                must.put(
                                        key,
                                        said.expected(
                                                StepKey.configurationOf(key), step.expected())));
        return must;
    }

    /** How the aircraft stands before the first step of a configuration. */
    public static String ready(Configuration configuration) {
        return StepWords.configuration(configuration);
    }

    /** Number of a step in the plan, to find it on paper. */
    public static Map<String, Integer> numbers(PlannedTest test) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (Map.Entry<String, TestStep> step : StepKey.steps(test.plan()).entrySet()) {
            numbers.put(step.getKey(), step.getValue().number());
        }
        return numbers;
    }
}
