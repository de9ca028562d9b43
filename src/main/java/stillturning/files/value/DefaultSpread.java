package stillturning.files.value;

import java.util.Optional;
import java.util.Set;
import stillturning.files.value.Variation.ValuePlace;
import stillturning.quantity.Dimension;
import stillturning.quantity.Spread;
import stillturning.yaml.notation.Given;

/**
 * How far off a value without a range may be, by its origin. Guesses of this project, published
 * nowhere; a range in the file replaces them.
 */
enum DefaultSpread {
    MEASURED(0.02, 0.005, 2),
    DATA_SHEET(0.05, 0.01, 3),
    CATALOGUE(0.10, 0.02, 5),
    GUESS(0.20, 0.05, 10);

    /** By what a thing is called or counted, and no measure of it. */
    private static final Set<String> NAMES = Set.of("nominal", "rated-over");

    private final double share;
    private final double ofVoltage;
    private final double kelvins;

    /**
     * @param share of the value, to either side
     * @param ofVoltage the same of a voltage: those of one system lie close together
     * @param kelvins of a temperature, to either side (K)
     */
    DefaultSpread(double share, double ofVoltage, double kelvins) {
        this.share = share;
        this.ofVoltage = ofVoltage;
        this.kelvins = kelvins;
    }

    /** The range of a value; none where it is a choice, a name, or follows from other values. */
    static Optional<Range> rangeOf(ValuePlace place, Given given) {
        double likely = given.quantity().si();
        Optional<Double> stated = given.spread().map(Spread::si);
        return stated.or(() -> usual(place, given))
                .filter(half -> half > 0)
                .map(half -> range(place, given, likely - half, likely + half));
    }

    private static Optional<Double> usual(ValuePlace place, Given given) {
        String key = place.path().substring(place.path().lastIndexOf('.') + 1);
        return NAMES.contains(key) ? Optional.empty() : of(given).map(width -> width.half(given));
    }

    /** A value that the catalogue calls guessed is a guess. */
    private static Optional<DefaultSpread> of(Given given) {
        return switch (given.origin()) {
            case MEASURED -> Optional.of(MEASURED);
            case DATA_SHEET -> Optional.of(DATA_SHEET);
            case GUESSED -> Optional.of(GUESS);
            case CATALOGUE ->
                    Optional.of(
                            Assumption.isGuess(given.origin(), given.note()) ? GUESS : CATALOGUE);
            case AUTOMATIC, STATED -> Optional.empty();
        };
    }

    private double half(Given given) {
        double si = Math.abs(given.quantity().si());
        return switch (given.quantity().dimension()) {
            case TEMPERATURE -> kelvins;
            case VOLTAGE -> ofVoltage * si;
            case CURRENT,
                    RESISTANCE,
                    CAPACITANCE,
                    CHARGE,
                    ENERGY,
                    POWER,
                    LENGTH,
                    AREA,
                    MASS,
                    TIME,
                    RATIO,
                    RATE,
                    ROTATION,
                    LET_THROUGH ->
                    share * si;
        };
    }

    /** A share of a whole never exceeds the whole. */
    private static Range range(ValuePlace place, Given given, double low, double high) {
        double likely = given.quantity().si();
        boolean share = given.quantity().dimension() == Dimension.RATIO && likely <= 1;
        return new Range(
                place,
                given.value(),
                given.quantity().dimension(),
                low,
                likely,
                share ? Math.min(1, high) : high,
                given.spread().isPresent());
    }
}
