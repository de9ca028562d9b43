package stillturning.sizing.result;

/**
 * A line of the bill of materials.
 *
 * @param item what it is, in one word: fuse, wire, terminal, ...
 * @param detail what tells it from others of its kind: rating, size
 * @param unit pieces or metres
 * @param spares what to buy beyond the quantity
 * @param kilograms weight of the quantity, spares apart (kg)
 * @param price of quantity and spares, in the study's currency
 */
public record BillRow(
        String item,
        String detail,
        double quantity,
        CountingUnit unit,
        double spares,
        double kilograms,
        double price) {

    /** In what a quantity counts. */
    public enum CountingUnit {
        PIECES,
        METRES
    }
}
