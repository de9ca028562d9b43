package stillturning.files.entry;

import java.util.Map;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Given;

/**
 * The catalogue's file as written.
 *
 * @param classes classes by kind, the kind's usual one first
 */
@Describes("What the program knows of parts that nobody has described.")
public record CatalogueEntry(Map<String, Map<String, PartEntry>> classes, CableEntry cable) {

    /** What a wire costs beside its copper and insulation. */
    @Describes("What a wire costs beside its copper and insulation.")
    public record CableEntry(
            @Describes("Weight of the terminal at one end.")
                    @OfDimension(value = Dimension.MASS, least = "0 kg")
                    Given terminalMass,
            @Describes("Price of the terminal at one end.") Price terminalPrice,
            @Describes("Price of a metre of the thinnest wire.") Price pricePerMetre,
            @Describes("What each square millimetre adds to the price of a metre.")
                    Price pricePerMetreAndMm2) {}
}
