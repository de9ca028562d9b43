package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.UnitSystem;
import stillturning.report.RankingOrder;
import stillturning.report.ResultText;
import stillturning.report.drawing.Point;

/**
 * Candidates by two criteria, in shares of the picture's width and height, from the lower left.
 *
 * @param points in order of rank
 * @param line corners of the step line through the candidates that no other beats in both, from the
 *     end that is best upwards to the one that is best across; it leaves the picture at both
 */
public record TradeOff(
        TradeOffAxis across, TradeOffAxis upwards, List<Plotted> points, List<Point> line) {

    /**
     * One candidate.
     *
     * @param values both values in words
     * @param efficient whether no other is at least as good in both and better in one
     * @param missed hard requirements that it misses
     * @param found whether a search found it, and nobody drew it
     */
    public record Plotted(
            String id,
            String title,
            double x,
            double y,
            String values,
            boolean efficient,
            int missed,
            boolean found) {

        /** Whether it has a drawing that can be opened; what a search has found by now has none. */
        public boolean isDrawn() {
            return !id.isEmpty();
        }
    }

    /**
     * A candidate with its two values.
     *
     * @param missed hard requirements that it misses
     * @param found whether a search found it
     */
    record Valued(
            String id, String title, int missed, double across, double upwards, boolean found) {

        /** One that was drawn by hand. */
        Valued(String id, String title, int missed, double across, double upwards) {
            this(id, title, missed, across, upwards, false);
        }
    }

    public TradeOff {
        points = List.copyOf(points);
        line = List.copyOf(line);
    }

    /** The picture of an assessment by any two criteria. */
    static TradeOff of(
            Assessment assessment, CriterionName across, CriterionName upwards, UnitSystem units) {
        List<Valued> all =
                RankingOrder.of(assessment).stream().map(a -> valued(a, across, upwards)).toList();
        return of(all, across, upwards, assessment.study().heading().currency(), units);
    }

    static Valued valued(Appraisal appraisal, CriterionName across, CriterionName upwards) {
        return new Valued(
                appraisal.candidate().id(),
                appraisal.candidate().title(),
                (int) appraisal.met().stream().filter(m -> !m.met()).count(),
                value(appraisal, across),
                value(appraisal, upwards));
    }

    /** The picture of candidates in this order. */
    static TradeOff of(
            List<Valued> all,
            CriterionName across,
            CriterionName upwards,
            String currency,
            UnitSystem units) {
        TradeOffAxis xs =
                TradeOffAxis.of(across, all.stream().map(Valued::across).toList(), currency, units);
        TradeOffAxis ys =
                TradeOffAxis.of(
                        upwards, all.stream().map(Valued::upwards).toList(), currency, units);
        List<Plotted> points =
                all.stream()
                        .map(
                                v ->
                                        point(
                                                v,
                                                xs,
                                                ys,
                                                ResultText.value(across, v.across, currency, units)
                                                        + ", "
                                                        + ResultText.value(
                                                                upwards, v.upwards, currency,
                                                                units),
                                                all))
                        .toList();
        return new TradeOff(xs, ys, points, line(points, xs, ys));
    }

    private static double value(Appraisal appraisal, CriterionName criterion) {
        return appraisal.measures().values().getOrDefault(criterion, Double.NaN);
    }

    private static Plotted point(
            Valued v, TradeOffAxis xs, TradeOffAxis ys, String values, List<Valued> all) {
        return new Plotted(
                v.id,
                v.title,
                xs.share(v.across),
                ys.share(v.upwards),
                values,
                all.stream().noneMatch(other -> beats(other, v, xs, ys)),
                v.missed,
                v.found);
    }

    private static boolean beats(Valued one, Valued other, TradeOffAxis xs, TradeOffAxis ys) {
        int across = xs.sense().compare(one.across, other.across);
        int upwards = ys.sense().compare(one.upwards, other.upwards);
        return across >= 0 && upwards >= 0 && across + upwards > 0;
    }

    /** The border of what some candidate reaches: behind each corner lies somebody better. */
    private static List<Point> line(List<Plotted> points, TradeOffAxis xs, TradeOffAxis ys) {
        List<Plotted> best =
                points.stream()
                        .filter(Plotted::efficient)
                        .sorted(Comparator.comparingDouble(p -> xs.goodness(p.x)))
                        .toList();
        List<Point> line = new ArrayList<>();
        if (best.isEmpty()) {
            return line;
        }
        Plotted first = best.get(0);
        line.add(new Point(xs.worstShare(), first.y));
        for (int i = 0; i < best.size(); i++) {
            Plotted here = best.get(i);
            line.add(new Point(here.x, here.y));
            double next = i + 1 < best.size() ? best.get(i + 1).y : ys.worstShare();
            line.add(new Point(here.x, next));
        }
        return line;
    }
}
