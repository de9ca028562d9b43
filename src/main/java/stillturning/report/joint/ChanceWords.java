package stillturning.report.joint;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import stillturning.quantity.Formats;
import stillturning.reliability.chance.Basis;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.chance.Estimate;
import stillturning.report.table.Column;
import stillturning.report.table.Unit;

/** Chances as a person reads them: never without their range. */
final class ChanceWords {

    private ChanceWords() {}

    /** {@code "1 in 2,900"}; from a tenth on in per cent. */
    static String of(double chance) {
        if (chance == 0) {
            return "0";
        }
        return chance >= 0.1
                ? Formats.significant(100 * chance, 2) + " %"
                : "1 in " + whole(1 / chance);
    }

    /** How often something happens: {@code "once in 1,000,000 h"}. */
    static String every(double times, String unit) {
        return times == 0 ? "never" : "once in " + whole(1 / times) + " " + unit;
    }

    /** Two digits, and zeros, since nobody knows more. */
    private static String whole(double number) {
        double step = Math.pow(10, Math.floor(Math.log10(number)) - 1);
        return String.format(Locale.ROOT, "%,.0f", Math.round(number / step) * step);
    }

    static String range(ChanceRange range) {
        return of(range.low5()) + " to " + of(range.high95());
    }

    /** In the mean of what the rates may be, and what is known of it. */
    static String mean(Estimate estimate) {
        return estimate.basis() == Basis.EXACT
                ? of(estimate.value()) + ", exact"
                : "between " + of(estimate.low()) + " and " + of(estimate.high());
    }

    /** A share of a whole. */
    static String share(double share) {
        return percent(share * 100) + " %";
    }

    /** A column of shares of a whole. */
    static <R> Column<R> shares(String head, ToDoubleFunction<R> share) {
        return Column.number(head, Unit.PERCENT, ChanceWords::percent, share);
    }

    private static String percent(double percent) {
        return percent > 0 && percent < 0.1 ? "< 0.1" : Formats.fixed(percent, 1);
    }

    /** How many times: whole numbers, so that a column of them can be compared at a glance. */
    static String times(double times) {
        return times < 2 ? "< 2" : whole(times);
    }
}
