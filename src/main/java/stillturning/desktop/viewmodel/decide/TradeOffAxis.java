package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import stillturning.assess.Assess;
import stillturning.assess.ranking.Sense;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.plot.Ticks;

/**
 * One criterion along a side of the picture.
 *
 * @param words name and unit
 * @param ticks round values along it
 * @param scale where values stand
 */
public record TradeOffAxis(
        CriterionName criterion, Sense sense, String words, List<Tick> ticks, AxisScale scale) {

    private static final int MOST_TICKS = 6;

    /** Share of the axis that is left free at either end. */
    private static final double FREE = 0.08;

    /** Where values without limit stand, and where those with one end. */
    private static final double UNLIMITED = 0.94;

    private static final double LIMITED = 0.82;
    private static final double POUND = 0.45359237;

    /** A round value and its place, from 0 to 1. */
    public record Tick(double share, String words) {}

    /** Lowest and highest value, and the place of the highest. */
    record AxisScale(double low, double high, double end) {}

    public TradeOffAxis {
        ticks = List.copyOf(ticks);
    }

    static TradeOffAxis of(
            CriterionName criterion, List<Double> values, String currency, UnitSystem units) {
        double unit = unit(criterion, units);
        DoubleSummaryStatistics finite =
                values.stream()
                        .filter(Double::isFinite)
                        .mapToDouble(v -> v / unit)
                        .summaryStatistics();
        boolean unlimited = values.stream().anyMatch(v -> Double.isInfinite(v));
        double low = finite.getCount() == 0 ? 0 : finite.getMin();
        double high = finite.getCount() == 0 ? 1 : finite.getMax();
        double least = whole(criterion) ? 2 : Math.max(Math.abs(high), 1) * 1e-2;
        double room = Math.max(0, least - (high - low)) / 2 + (high - low) * FREE;
        AxisScale scale = new AxisScale(low - room, high + room, unlimited ? LIMITED : 1);
        List<Tick> ticks = new ArrayList<>();
        for (double value : Ticks.within(scale.low, scale.high, MOST_TICKS).values()) {
            if (value >= 0 && (!whole(criterion) || value == Math.rint(value))) {
                ticks.add(new Tick(share(scale, value), Ticks.text(value)));
            }
        }
        if (unlimited) {
            ticks.add(new Tick(UNLIMITED, "not limited"));
        }
        return new TradeOffAxis(
                criterion,
                Assess.sense(criterion),
                criterion.words() + unitWords(criterion, currency, units),
                ticks,
                new AxisScale(scale.low * unit, scale.high * unit, scale.end));
    }

    /** Place of a value, from 0 to 1. */
    double share(double value) {
        return Double.isInfinite(value) ? UNLIMITED : share(scale, value);
    }

    /** A place, the better the larger. */
    double goodness(double share) {
        return sense == Sense.MORE_IS_BETTER ? share : 1 - share;
    }

    /** The end of the axis where values are bad. */
    double worstShare() {
        return sense == Sense.MORE_IS_BETTER ? 0 : 1;
    }

    private static double share(AxisScale scale, double value) {
        return scale.end * (value - scale.low) / (scale.high - scale.low);
    }

    private static boolean whole(CriterionName criterion) {
        return switch (criterion) {
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> true;
            case ENDURANCE, WEIGHT, COST -> false;
        };
    }

    private static double unit(CriterionName criterion, UnitSystem units) {
        return switch (criterion) {
            case ENDURANCE -> 60;
            case WEIGHT -> units == UnitSystem.US ? POUND : 1;
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY, COST -> 1;
        };
    }

    private static String unitWords(CriterionName criterion, String currency, UnitSystem units) {
        return switch (criterion) {
            case ENDURANCE -> " (min)";
            case WEIGHT -> units == UnitSystem.US ? " (lb)" : " (kg)";
            case COST -> " (" + currency + ")";
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> "";
        };
    }

    /** Which way along it is better, in words. */
    public String better() {
        return sense == Sense.MORE_IS_BETTER ? "more is better" : "less is better";
    }
}
