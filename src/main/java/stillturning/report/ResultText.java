package stillturning.report;

import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.story.Endurance;

/** Results as a person reads them. */
public final class ResultText {
    private ResultText() {}

    /** A candidate's value by a criterion, in metres and kilograms. */
    public static String value(CriterionName criterion, double value, String currency) {
        return value(criterion, value, currency, UnitSystem.METRIC);
    }

    /** A candidate's value by a criterion. */
    public static String value(
            CriterionName criterion, double value, String currency, UnitSystem system) {
        return switch (criterion) {
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> Formats.fixed(value, 0);
            case ENDURANCE -> seconds(value);
            case WEIGHT -> Formats.mass(value, system);
            case COST -> Formats.fixed(value, 0) + " " + currency;
        };
    }

    /** How long the engine runs. */
    public static String endurance(Endurance endurance) {
        return endurance.fold(
                lasts -> seconds(lasts.seconds()),
                notLimited -> seconds(notLimited.seconds()),
                landed -> "to the landing",
                atLeast -> "over " + Formats.lasting(atLeast.seconds()),
                untold -> "cannot be told beyond " + Formats.lasting(untold.seconds()));
    }

    public static String seconds(double seconds) {
        return Double.isInfinite(seconds) ? "not limited" : Formats.lasting(seconds);
    }
}
