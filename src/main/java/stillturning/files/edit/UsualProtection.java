package stillturning.files.edit;

import java.util.List;
import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;

/** Usual ratings of protectors, for a first guess that sizing will look at. */
public final class UsualProtection {

    private static final List<Double> AMPS =
            List.of(
                    5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 70.0, 80.0,
                    100.0);
    private static final double MARGIN = 1.25;

    private UsualProtection() {}

    /** The smallest usual rating with a quarter to spare, as written; absent if none is enough. */
    public static Optional<String> rating(double amps) {
        return AMPS.stream()
                .filter(a -> a >= MARGIN * amps)
                .findFirst()
                .map(UsualProtection::written);
    }

    /** The next higher usual rating, as written; absent above the highest. */
    public static Optional<String> above(double amps) {
        return AMPS.stream().filter(a -> a > amps).findFirst().map(UsualProtection::written);
    }

    /** The next lower usual rating, as written; absent below the lowest. */
    public static Optional<String> below(double amps) {
        return AMPS.stream()
                .filter(a -> a < amps)
                .reduce((one, next) -> next)
                .map(UsualProtection::written);
    }

    private static String written(double amps) {
        return Quantity.of(amps, Dimension.CURRENT).written();
    }
}
