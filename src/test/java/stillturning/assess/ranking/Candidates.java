package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Criteria and alternatives for the tests of this package. */
final class Candidates {
    private Candidates() {}

    static Criterion unit(String name, double weight) {
        return new Criterion(name, Sense.MORE_IS_BETTER, weight, Scale.straight(0, 1));
    }

    static List<Criterion> units(int count) {
        return IntStream.range(0, count).mapToObj(j -> unit("c" + j, 1)).toList();
    }

    static Alternative of(String name, double... values) {
        return new Alternative(name, DoubleStream.of(values).boxed().toList(), List.of());
    }

    static Alternative gated(String name, double value, boolean... met) {
        List<GateVerdict> gates = new ArrayList<>();
        for (int g = 0; g < met.length; g++) {
            gates.add(new GateVerdict("gate " + g, met[g], met[g] ? "" : "too little"));
        }
        return new Alternative(name, List.of(value), gates);
    }

    static List<Criterion> randomCriteria(SplittableRandom random) {
        List<Criterion> criteria = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int j = 0; j < count; j++) {
            boolean more = random.nextBoolean();
            Scale scale =
                    more
                            ? new Scale(2, 2.5 + random.nextInt(5), 7)
                            : new Scale(7, 6.5 - random.nextInt(5), 2);
            Sense sense = more ? Sense.MORE_IS_BETTER : Sense.LESS_IS_BETTER;
            criteria.add(new Criterion("c" + j, sense, 0.1 + random.nextDouble(), scale));
        }
        return criteria;
    }

    /** Few distinct values, so that ties, dominance and infinities are common. */
    static List<Alternative> random(SplittableRandom random, int criteria) {
        List<Alternative> alternatives = new ArrayList<>();
        int count = 1 + random.nextInt(7);
        for (int i = 0; i < count; i++) {
            List<Double> values = new ArrayList<>();
            for (int j = 0; j < criteria; j++) {
                int value = random.nextInt(10);
                values.add(value == 9 ? Double.POSITIVE_INFINITY : value);
            }
            List<GateVerdict> gates =
                    List.of(
                            new GateVerdict("one", random.nextInt(4) > 0, "short"),
                            new GateVerdict("two", random.nextInt(4) > 0, "heavy"));
            alternatives.add(new Alternative("candidate " + i, values, gates));
        }
        return alternatives;
    }
}
