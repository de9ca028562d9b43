package stillturning.parts;

import stillturning.quantity.Dimension;
import stillturning.quantity.field.OfDimension;

/**
 * One of several electronic switches of a part, written {@code 10 A} or {@code 10 A, default on}.
 *
 * @param rating of its trip (A)
 * @param onByDefault its state when logic or command path is lost
 */
public record RatedChannel(
        @OfDimension(value = Dimension.CURRENT, above = "0 A") double rating,
        boolean onByDefault) {}
