package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Flights that stand for all between two inspections: what is likely in each, its weight among all
 * of them, and its weight among those just before all inspections.
 */
final class Flights {
    /** Room for the answers of a large diagram in several flights at once. */
    private static final int MOST_SCRATCH = 1 << 20;

    private final List<double[]> chances = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();
    private final List<Double> lastWeights = new ArrayList<>();

    /** What holds in the mean of all flights, and in the last. */
    record Both(double average, double last) {}

    void add(double weight, double[] chancesOfEvents) {
        add(weight, 0, chancesOfEvents);
    }

    void addLast(double[] chancesOfEvents) {
        add(0, 1, chancesOfEvents);
    }

    /** Takes in others, which weigh so much as a whole. */
    void addAll(Flights others, double weight, double lastWeight) {
        for (int flight = 0; flight < others.size(); flight++) {
            add(
                    weight * others.weights.get(flight),
                    lastWeight * others.lastWeights.get(flight),
                    others.chances.get(flight));
        }
    }

    private void add(double weight, double lastWeight, double[] chancesOfEvents) {
        weights.add(weight);
        lastWeights.add(lastWeight);
        chances.add(chancesOfEvents);
    }

    int size() {
        return chances.size();
    }

    Both of(ToDoubleFunction<double[]> quantity) {
        return both(chances.stream().mapToDouble(quantity).toArray());
    }

    Both of(Top top) {
        int each = Math.max(1, top.scratch(1));
        int most = Math.max(1, Math.min(size(), MOST_SCRATCH / each));
        double[] scratch = new double[top.scratch(most)];
        double[] values = new double[size()];
        for (int from = 0; from < size(); from += most) {
            double[] some = top.at(chances.subList(from, Math.min(size(), from + most)), scratch);
            System.arraycopy(some, 0, values, from, some.length);
        }
        return both(values);
    }

    Both of(Top top, double[] scratch) {
        return both(top.at(chances, scratch));
    }

    /** The same flights with other probabilities. */
    Flights with(UnaryOperator<double[]> change) {
        Flights changed = new Flights();
        changed.weights.addAll(weights);
        changed.lastWeights.addAll(lastWeights);
        chances.forEach(given -> changed.chances.add(change.apply(given)));
        return changed;
    }

    private Both both(double[] values) {
        double average = 0;
        double last = 0;
        for (int flight = 0; flight < values.length; flight++) {
            average += weights.get(flight) * values[flight];
            last += lastWeights.get(flight) * values[flight];
        }
        return new Both(average, last);
    }
}
