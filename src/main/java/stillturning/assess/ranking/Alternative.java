package stillturning.assess.ranking;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One candidate in numbers.
 *
 * @param values one for each criterion, in the criteria's order; positive infinity means "not
 *     limited"
 * @param gates one verdict for each hard requirement
 */
public record Alternative(String name, List<Double> values, List<GateVerdict> gates) {
    public Alternative {
        values = List.copyOf(values);
        gates = List.copyOf(gates);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a candidate has no name");
        }
        for (double value : values) {
            if (Double.isNaN(value) || value == Double.NEGATIVE_INFINITY) {
                throw new IllegalArgumentException(
                        name + ": " + value + " is no value to rank by; leave the criterion out");
            }
        }
        Set<String> seen = new HashSet<>();
        for (GateVerdict verdict : gates) {
            if (!seen.add(verdict.gate())) {
                throw new IllegalArgumentException(
                        name + ": two verdicts on gate " + verdict.gate());
            }
        }
    }

    /** The verdicts on the hard requirements that this candidate does not meet. */
    public List<GateVerdict> missedGates() {
        return gates.stream().filter(verdict -> !verdict.met()).toList();
    }
}
