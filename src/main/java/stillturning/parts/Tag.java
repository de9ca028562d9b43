package stillturning.parts;

/**
 * What is written on a part.
 *
 * @param id unique in the candidate
 * @param label what a person calls it
 * @param zone where it sits
 */
public record Tag(String id, String label, String zone, Burden burden) {

    /**
     * What a part costs the aircraft and the purse.
     *
     * @param kilograms weight (kg)
     * @param price in the study's currency
     */
    public record Burden(double kilograms, double price) {
        public static final Burden NONE = new Burden(0, 0);

        public Burden {
            if (!(kilograms >= 0 && price >= 0)) {
                throw new IllegalArgumentException(
                        "weight " + kilograms + " kg and price " + price + " must not be negative");
            }
        }
    }
}
