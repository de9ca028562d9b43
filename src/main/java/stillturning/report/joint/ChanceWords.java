package stillturning.report.joint;

import java.util.Locale;
import stillturning.quantity.Formats;
import stillturning.reliability.chance.Basis;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.chance.Estimate;

/** Chances as a person reads them: never without their range. */
final class ChanceWords {

    private ChanceWords() {}

    /** Two digits and a power of ten, {@code 2.1e-6}; plain from a thousandth on. */
    static String of(double chance) {
        if (chance == 0 || chance >= 1e-3) {
            return Formats.significant(chance, 2);
        }
        return String.format(Locale.ROOT, "%.1e", chance).replace("e-0", "e-");
    }

    static String range(ChanceRange range) {
        return of(range.low5()) + " to " + of(range.high95());
    }

    /** In the mean of what the rates may be, and what is known of it. */
    static String mean(Estimate estimate) {
        return estimate.basis() == Basis.EXACT
                ? of(estimate.value()) + ", counted exactly"
                : "between " + of(estimate.low()) + " and " + of(estimate.high());
    }

    /** A share of a whole. */
    static String share(double share) {
        return share > 0 && share < 0.001 ? "< 0.1 %" : Formats.fixed(share * 100, 1) + " %";
    }
}
