package stillturning.model.goal;

import java.util.Optional;
import stillturning.model.Phase;
import stillturning.model.Requirement;
import stillturning.model.Study;

/**
 * The scale of a criterion of which a study states none: from its requirements and its flight where
 * they say something, else guessed. No candidate is looked at.
 */
public final class UsualScales {

    private static final double ENGINE_STOPS = 20;
    private static final double PILOT_NEEDED = 30;

    /** A protector, a wire out and one back, and a switch, for each input of a load. */
    private static final double COMPLEXITY_OF_A_FEED = 5;

    private static final double TIMES_ACCEPTABLE = 3;
    private static final double COST_ENOUGH = 1000;
    private static final double COST_ACCEPTABLE = 3000;
    private static final double KILOGRAMS_ENOUGH = 10;
    private static final double KILOGRAMS_ACCEPTABLE = 25;

    private UsualScales() {}

    /** The scale of a criterion, as stated or as usual. */
    public static ValueScale of(Study study, CriterionName criterion) {
        return study.goals()
                .preferences()
                .scale(criterion)
                .orElseGet(() -> usual(study, criterion));
    }

    private static ValueScale usual(Study study, CriterionName criterion) {
        return switch (criterion) {
            case ENGINE_STOPS ->
                    guess(
                            criterion,
                            ENGINE_STOPS,
                            0,
                            "as good as needed is none; 20 is about what a layout with one"
                                    + " feed for everything has");
            case PILOT_NEEDED ->
                    guess(
                            criterion,
                            PILOT_NEEDED,
                            0,
                            "as good as needed is none; 30 is as much as a pilot could practise");
            case ENDURANCE -> endurance(study);
            case WEIGHT -> weight(study);
            case COMPLEXITY -> complexity(study);
            case COST ->
                    guess(
                            criterion,
                            COST_ACCEPTABLE,
                            COST_ENOUGH,
                            "the prices of the catalogue are guesses, too");
        };
    }

    private static ValueScale complexity(Study study) {
        int inputs = study.aircraft().loads().stream().mapToInt(load -> load.inputs().size()).sum();
        double feeds = COMPLEXITY_OF_A_FEED * Math.max(1, inputs);
        return guess(
                CriterionName.COMPLEXITY,
                TIMES_ACCEPTABLE * feeds,
                feeds,
                "from three times as much to a protector, two wires and a switch for each of "
                        + inputs
                        + " inputs of loads");
    }

    private static ValueScale guess(
            CriterionName criterion, double acceptable, double enough, String because) {
        return new ValueScale(
                criterion, acceptable, Optional.empty(), enough, false, "a guess: " + because);
    }

    /** From what is required to the whole flight; more than a flight is of no use. */
    private static ValueScale endurance(Study study) {
        Optional<Double> required =
                study.goals()
                        .required(Requirement.EnduranceWithoutCharging.class)
                        .map(Requirement.EnduranceWithoutCharging::seconds);
        double least = required.orElse(study.goals().enoughSeconds());
        double flight = study.aircraft().phases().stream().mapToDouble(Phase::seconds).sum();
        boolean longer = flight > least;
        return new ValueScale(
                CriterionName.ENDURANCE,
                least,
                Optional.empty(),
                longer ? flight : 2 * least,
                false,
                (required.isPresent() ? "from what is required" : "from the time to land")
                        + (longer
                                ? " to the whole flight, beyond which more is of no use"
                                : " to twice that"));
    }

    private static ValueScale weight(Study study) {
        Optional<Double> allowed =
                study.goals()
                        .required(Requirement.WeightAtMost.class)
                        .map(Requirement.WeightAtMost::kilograms);
        return allowed.map(
                        most ->
                                new ValueScale(
                                        CriterionName.WEIGHT,
                                        most,
                                        Optional.empty(),
                                        most / 2,
                                        false,
                                        "from what is allowed to half of it, which is a guess"))
                .orElseGet(
                        () ->
                                guess(
                                        CriterionName.WEIGHT,
                                        KILOGRAMS_ACCEPTABLE,
                                        KILOGRAMS_ENOUGH,
                                        "the study allows no weight"));
    }
}
