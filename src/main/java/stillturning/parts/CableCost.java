package stillturning.parts;

/**
 * What a wire costs beside its copper and insulation.
 *
 * @param terminalKilograms weight of the terminal at one end (kg)
 * @param terminalPrice of the terminal at one end
 * @param pricePerMetre of the thinnest wire
 * @param pricePerMetreAndSquareMillimetre what each square millimetre adds to that
 */
public record CableCost(
        double terminalKilograms,
        double terminalPrice,
        double pricePerMetre,
        double pricePerMetreAndSquareMillimetre) {}
