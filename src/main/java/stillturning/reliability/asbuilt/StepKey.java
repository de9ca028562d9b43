package stillturning.reliability.asbuilt;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.GroundTest;
import stillturning.reliability.groundtest.Hand;
import stillturning.reliability.groundtest.Stage;
import stillturning.reliability.groundtest.TestStep;

/**
 * Names of the steps of a plan that say what is done: a step keeps its name when the study changes
 * and others come before it.
 */
public final class StepKey {

    /** What is read before the first step. */
    public static final String BEFORE = "before";

    private StepKey() {}

    /** {@code engine-stopped/before}. */
    public static String before(Configuration configuration) {
        return configuration(configuration) + "/" + BEFORE;
    }

    /** {@code engine-stopped}. */
    public static String configuration(Configuration configuration) {
        return configuration.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The configuration that a name begins with.
     *
     * @throws IllegalArgumentException if it begins with none
     */
    public static Configuration configurationOf(String name) {
        for (Configuration configuration : Configuration.values()) {
            if (name.startsWith(configuration(configuration) + "/")) {
                return configuration;
            }
        }
        throw new IllegalArgumentException(name + " is no step");
    }

    /** Steps of a plan by name, in its order. */
    public static Map<String, TestStep> steps(GroundTest plan) {
        Map<String, TestStep> steps = new LinkedHashMap<>();
        for (Stage stage : plan.stages()) {
            for (TestStep step : stage.steps()) {
                String name = configuration(stage.configuration()) + "/" + of(step);
                String free = name;
                for (int more = 2; steps.containsKey(free); more++) {
                    free = name + "-" + more;
                }
                steps.put(free, step);
            }
        }
        return steps;
    }

    private static String of(TestStep step) {
        Hand hand = step.hand();
        String levers =
                hand.levers().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(e -> e.getKey() + "-" + e.getValue())
                        .collect(Collectors.joining("-"));
        String at = hand.terminal().isEmpty() ? hand.part() : hand.part() + "-" + hand.terminal();
        String done =
                switch (hand.way()) {
                    case LEVER -> "set-" + levers;
                    case BREAKER -> "pull-" + hand.part();
                    case FUSE -> "take-out-" + at;
                    case CONNECTOR -> "part-" + at;
                    case WIRE, TERMINAL -> "take-off-" + at;
                };
        return plain(step.switchedOn().map(load -> done + "-with-" + load).orElse(done));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]+", "-");
    }
}
