package stillturning.files.entry;

import java.util.Map;
import stillturning.quantity.Dimension;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/**
 * The catalogue's file as written.
 *
 * @param classes classes by kind, the kind's usual one first
 */
@Words("What the program knows of parts that nobody has described.")
public record CatalogueEntry(Map<String, Map<String, PartEntry>> classes, CableEntry cable) {

    /** What a wire costs beside its copper and insulation. */
    @Words("What a wire costs beside its copper and insulation.")
    public record CableEntry(
            @Words("Weight of the terminal at one end.")
                    @Unit(value = Dimension.MASS, least = "0 kg")
                    Given terminalMass,
            @Words("Price of the terminal at one end.") Price terminalPrice,
            @Words("Price of a metre of the thinnest wire.") Price pricePerMetre,
            @Words("What each square millimetre adds to the price of a metre.")
                    Price pricePerMetreAndMm2) {}
}
