package stillturning.report.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.ranges.EnduranceRange.Contributor;
import stillturning.assess.verdict.Outcome;
import stillturning.quantity.Formats;
import stillturning.report.ResultText;
import stillturning.story.Endurance;

/** How sure an endurance is, in sentences. */
public final class RangeText {

    private RangeText() {}

    /** Everything, one finding a line. */
    public static List<String> of(EnduranceRange range) {
        List<String> lines = new ArrayList<>();
        lines.add(endurance(range));
        lines.add("what comes of it: " + outcomes(range));
        if (range.contributors().isEmpty()) {
            lines.add("no single value stands out");
        }
        range.contributors().forEach(c -> lines.add(contributor(c)));
        if (!range.contributors().isEmpty()) {
            lines.add(percent(range.unexplained()) + " hangs on the others, each alone too little");
        }
        if (!range.untold().isEmpty()) {
            lines.add(
                    range.untold().size()
                            + (range.untold().size() == 1 ? " more sample" : " more samples")
                            + " could not be computed, the first because: "
                            + range.untold().get(0));
        }
        if (!range.brokenOff().isEmpty()) {
            lines.add(
                    range.brokenOff().size()
                            + " of the samples"
                            + " could only be computed up to a moment, and count as engine lost, the"
                            + " first because: "
                            + range.brokenOff().get(0));
        }
        return List.copyOf(lines);
    }

    /** The endurance from low to high, in one sentence. */
    public static String endurance(EnduranceRange range) {
        Endurance low = range.quantiles().low();
        Endurance high = range.quantiles().high();
        String shown =
                low.equals(high)
                        ? "the engine runs " + ResultText.endurance(low) + " in nine samples of ten"
                        : "the engine runs "
                                + ResultText.endurance(low)
                                + " to "
                                + ResultText.endurance(high)
                                + " in nine samples of ten, half of them no longer than "
                                + ResultText.endurance(range.quantiles().median());
        return shown
                + " (counted from the failure, not from the first sign; "
                + range.told()
                + " samples, "
                + range.inputs()
                + " values anywhere in their ranges)";
    }

    private static String outcomes(EnduranceRange range) {
        return range.outcomes().entrySet().stream()
                        .map(Map.Entry::getKey)
                        .map((Outcome o) -> o.words() + " " + percent(range.shareOf(o)))
                        .collect(Collectors.joining(", "))
                + notLimited(range);
    }

    private static String notLimited(EnduranceRange range) {
        return range.notLimited() == 0
                ? ""
                : "; not limited in " + percent(range.notLimited() / (double) range.told());
    }

    private static String contributor(Contributor contributor) {
        return percent(contributor.share())
                + " hangs on "
                + contributor.input().name()
                + ", "
                + contributor.input().text()
                + " ("
                + contributor.input().file()
                + "): more of it means "
                + (contributor.lengthens() ? "longer" : "shorter");
    }

    /** Some is never shown as none, nor most as all. */
    private static String percent(double share) {
        if (share > 0 && share < 0.01) {
            return "under 1 %";
        }
        return share < 1 && share > 0.99 ? "over 99 %" : Formats.fixed(100 * share, 0) + " %";
    }
}
