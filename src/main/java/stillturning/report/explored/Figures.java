package stillturning.report.explored;

import java.util.Locale;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;

/** Differences between layouts in words. */
final class Figures {

    private static final double SECONDS_PER_MINUTE = 60;

    private Figures() {}

    /** What changes, as one would say it: "1.2 kg lighter"; empty where nothing does. */
    static String change(CriterionName criterion, double from, double to, String currency) {
        double more = to - from;
        return switch (criterion) {
            case ENDURANCE -> lasting(from, to);
            case WEIGHT ->
                    words(more, Formats.fixed(Math.abs(more), 1), " kg", "heavier", "lighter");
            case COST ->
                    words(
                            more,
                            Formats.fixed(Math.abs(more), 0),
                            " " + currency,
                            "dearer",
                            "cheaper");
            case COMPLEXITY -> words(more, number(more), " of complexity", "more", "less");
            case ENGINE_STOPS ->
                    words(more, number(more), failures(more, "stop") + " it", "more", "less");
            case PILOT_NEEDED ->
                    words(
                            more,
                            number(more),
                            failures(more, "need") + " the pilot",
                            "more",
                            "less");
        };
    }

    private static String failures(double more, String verb) {
        boolean one = Math.rint(Math.abs(more)) == 1;
        return one ? " failure that " + verb + "s" : " failures that " + verb;
    }

    private static String number(double more) {
        return Formats.fixed(Math.abs(more), 0);
    }

    private static String lasting(double from, double to) {
        if (Double.isInfinite(to) || Double.isInfinite(from)) {
            return from == to ? "" : Double.isInfinite(to) ? "without limit" : "with a limit";
        }
        double minutes = Math.rint((to - from) / SECONDS_PER_MINUTE);
        return words(minutes, Formats.fixed(Math.abs(minutes), 0), " min", "longer", "shorter");
    }

    private static String words(
            double more, String amount, String unit, String above, String below) {
        boolean nothing = amount.matches("[0.]+");
        return nothing
                ? ""
                : String.format(Locale.ROOT, "%s%s %s", amount, unit, more > 0 ? above : below);
    }
}
