package stillturning.parts.switching;

import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.PartValues;
import stillturning.quantity.field.Describes;

/** What is known of anything with contacts. */
interface ContactValues extends PartValues {

    /** Of a closed contact (ohm). */
    @Describes("Resistance of a closed contact.")
    double resistance();

    /** What its contacts carry (A). */
    @Describes("Current that its contacts carry continuously.")
    Optional<Double> rating();

    @Override
    default OptionalDouble contactAmps() {
        return rating().map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
