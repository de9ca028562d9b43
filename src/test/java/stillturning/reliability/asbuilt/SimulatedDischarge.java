package stillturning.reliability.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import stillturning.parts.Tag;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.source.Battery;
import stillturning.reliability.asbuilt.DischargeLog.LogSample;

/** A battery on the bench: what instruments show of it while it is discharged. */
record SimulatedDischarge(Battery battery, double charge, double celsius) {

    private static final double FINE_SECONDS = 1;

    /** A battery of 12 V by its true values. */
    static Battery battery(RestVoltage chemistry, double ampHours, double ohms) {
        boolean lead = chemistry == RestVoltage.LEAD_ACID;
        return new Battery(
                new Tag("battery", "battery", "panel", Tag.Burden.NONE),
                new OpenCircuit(chemistry, 1),
                lead ? 6 : 4,
                new Capacity(3600 * ampHours, lead ? 20 : 1, lead ? 1.15 : 1),
                ohms,
                0.95,
                Optional.empty());
    }

    /**
     * A log.
     *
     * @param amps current by time (s)
     * @param every between readings (s)
     * @param noise what is added to each voltage (V)
     */
    DischargeLog log(DoubleUnaryOperator amps, double every, int readings, Noise noise) {
        Cell cell = (Cell) battery.elements().get(0);
        RestVoltage curve = cell.openCircuit().curve();
        Capacity capacity = cell.capacityAt(celsius);
        List<LogSample> samples = new ArrayList<>();
        double left = charge;
        double seconds = 0;
        for (int i = 0; i < readings; i++) {
            while (seconds < i * every) {
                left -= FINE_SECONDS * capacity.usedPerSecond(amps.applyAsDouble(seconds));
                seconds += FINE_SECONDS;
            }
            double now = amps.applyAsDouble(seconds);
            int piece = curve.pieceAt(Math.max(0, Math.min(1, left)));
            double volts =
                    cell.openCircuit().voltsOn(piece, left, celsius)
                            - now * cell.ohmsOn(piece, left, celsius);
            samples.add(new LogSample(seconds, volts + noise.next(), now));
        }
        return new DischargeLog(samples);
    }

    /** What instruments add. */
    interface Noise {
        double next();

        static Noise white(Random random, double volts) {
            return () -> volts * random.nextGaussian();
        }

        /** Each carries a share of the last on. */
        static Noise drifting(Random random, double volts, double share) {
            double[] last = {volts * random.nextGaussian()};
            return () -> {
                last[0] =
                        share * last[0]
                                + volts * Math.sqrt(1 - share * share) * random.nextGaussian();
                return last[0];
            };
        }
    }
}
