package stillturning.files.entry;

import java.util.Map;
import stillturning.yaml.notation.Describes;

/**
 * The shipped table of rates as written.
 *
 * @param failures rates of failure modes, by kind of part and mode
 * @param events how often a zone suffers from a hazard, by hazard
 * @param sharing how often all goes together that shares something, by what it shares
 */
@Describes("How often things fail of which nobody knows better.")
public record ShippedRates(
        Map<String, Map<String, RateText>> failures,
        Map<String, RateText> events,
        Map<String, RateText> sharing) {

    private static final ShippedRates SHIPPED = Shipped.read("rates.yaml", ShippedRates.class);

    /** The table of this program. */
    public static ShippedRates shipped() {
        return SHIPPED;
    }
}
