package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Flights that stand for all between two inspections: what is likely in each, and its weight. The
 * last one, just before all inspections, has no weight.
 */
final class Flights {
    private final List<double[]> chances = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();

    /** What holds in the mean of all flights, and in the last. */
    record Both(double average, double last) {}

    void add(double weight, double[] chancesOfEvents) {
        weights.add(weight);
        chances.add(chancesOfEvents);
    }

    int size() {
        return chances.size();
    }

    Both of(ToDoubleFunction<double[]> quantity) {
        return both(chances.stream().mapToDouble(quantity).toArray());
    }

    Both of(Top top) {
        return of(top, new double[top.scratch(size())]);
    }

    Both of(Top top, double[] scratch) {
        return both(top.at(chances, scratch));
    }

    /** The same flights with other probabilities. */
    Flights with(UnaryOperator<double[]> change) {
        Flights changed = new Flights();
        changed.weights.addAll(weights);
        chances.forEach(given -> changed.chances.add(change.apply(given)));
        return changed;
    }

    private Both both(double[] values) {
        double average = 0;
        for (int flight = 0; flight < values.length; flight++) {
            average += weights.get(flight) * values[flight];
        }
        return new Both(average, values[values.length - 1]);
    }
}
