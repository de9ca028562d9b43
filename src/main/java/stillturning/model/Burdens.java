package stillturning.model;

import stillturning.parts.Part;
import stillturning.parts.Wire;

/**
 * Weight and cost of a candidate, loads not counted since they are the same in all.
 *
 * @param partKilograms weight of the parts (kg)
 * @param cableKilograms weight of wires with their terminals (kg)
 * @param cableMetres length of all wires (m)
 * @param price in the study's currency
 */
public record Burdens(
        double partKilograms, double cableKilograms, double cableMetres, double price) {

    /** What the parts of a candidate come to; the one place where they are added up. */
    public static Burdens of(Candidate candidate) {
        double wires = candidate.wires().mapToDouble(Burdens::kilograms).sum();
        double all = candidate.parts().stream().mapToDouble(Burdens::kilograms).sum();
        return new Burdens(
                all - wires,
                wires,
                candidate.wires().mapToDouble(Wire::metres).sum(),
                candidate.parts().stream().mapToDouble(p -> p.tag().burden().price()).sum());
    }

    /** Weight of everything (kg). */
    public double kilograms() {
        return partKilograms + cableKilograms;
    }

    private static double kilograms(Part part) {
        return part.tag().burden().kilograms();
    }
}
