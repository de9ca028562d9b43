package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.List;

/** Plots as a story would have them; all values are invented. */
final class ExamplePlots {
    private ExamplePlots() {}

    private static Series.Sample at(double seconds, double value) {
        return new Series.Sample(seconds, value);
    }

    /** A short that sags the bus for 85 ms, then a battery that empties in 52 minutes. */
    static Plot shortThenDischarge() {
        List<Series.Sample> main = new ArrayList<>();
        List<Series.Sample> engine = new ArrayList<>();
        main.add(at(-0.02, 14.1));
        main.add(at(0, 14.1));
        main.add(at(0, 4.2));
        main.add(at(0.085, 3.9));
        main.add(at(0.085, 12.6));
        engine.add(at(-0.02, 13.4));
        engine.add(at(0, 13.4));
        engine.add(at(0, 9.8));
        engine.add(at(0.085, 9.6));
        engine.add(at(0.085, 12.4));
        for (int i = 1; i <= 2000; i++) {
            double t = 0.085 + i * (3120 - 0.085) / 2000;
            double used = t / 3120;
            double volts = 12.6 - 0.9 * used - 2.2 * Math.pow(used, 14);
            main.add(at(t, volts));
            engine.add(at(t, volts - 0.3));
        }
        main.add(at(3120, 0));
        main.add(at(3600, 0));
        engine.add(at(3120, 0));
        engine.add(at(3600, 0));
        return new Plot(
                "short",
                "Feed 1 chafed to ground, alternator lost",
                3600,
                List.of(
                        new Graph(
                                "Voltage (V)",
                                List.of(
                                        new Series("main bus", main),
                                        new Series("engine bus", engine)),
                                List.of(
                                        new Threshold("computer resets, 6.5 V", 6.5),
                                        new Threshold("low-voltage warning, 12.2 V", 12.2),
                                        new Threshold("pump drops out, 9 V", 9)),
                                new Graph.AsFound()),
                        new Graph(
                                "Charge (%)",
                                List.of(
                                        new Series(
                                                "battery",
                                                List.of(at(0, 95), at(3120, 2), at(3600, 2)))),
                                List.of(),
                                new Graph.FixedRange(0, 100))),
                List.of(
                        new EventMark(1, 0),
                        new EventMark(2, 0.004),
                        new EventMark(3, 0.085),
                        new EventMark(4, 1.4),
                        new EventMark(5, 6),
                        new EventMark(6, 930),
                        new EventMark(7, 3120)),
                List.of(
                        new StateRow(
                                "engine function",
                                List.of(
                                        new StateRow.RowSpan(
                                                0, 0.004, "running", StateRow.Fill.LIGHT),
                                        new StateRow.RowSpan(
                                                0.004, 1.4, "interrupted", StateRow.Fill.HATCHED),
                                        new StateRow.RowSpan(
                                                1.4, 3120, "running", StateRow.Fill.LIGHT),
                                        new StateRow.RowSpan(
                                                3120, 3600, "stopped", StateRow.Fill.SOLID))),
                        new StateRow(
                                "radio",
                                List.of(
                                        new StateRow.RowSpan(0, 930, "on", StateRow.Fill.LIGHT),
                                        new StateRow.RowSpan(
                                                930, 3600, "shed", StateRow.Fill.EMPTY)))));
    }

    /** One panel: everything happens within the same half minute. */
    static Plot overVoltage() {
        List<Series.Sample> volts = new ArrayList<>();
        for (int i = 0; i <= 300; i++) {
            double t = i * 0.1;
            volts.add(at(t, t < 8 ? 14 + 4 * (1 - Math.exp(-t / 2)) : 12.7 - (t - 8) * 0.01));
        }
        return new Plot(
                "over",
                "Regulator runs away",
                30,
                List.of(
                        new Graph(
                                "Voltage (V)",
                                List.of(new Series("main bus", volts)),
                                List.of(new Threshold("withstand, 18 V", 18)),
                                new Graph.AsFound())),
                List.of(new EventMark(1, 0), new EventMark(2, 3), new EventMark(3, 8)),
                List.of());
    }
}
