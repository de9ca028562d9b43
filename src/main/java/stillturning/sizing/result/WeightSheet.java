package stillturning.sizing.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Weight of a candidate's electrical system, the study's loads apart, and its moment.
 *
 * @param kilograms weight of everything (kg)
 * @param cable by size, thinnest first
 */
public record WeightSheet(double kilograms, List<PartWeight> parts, List<CableWeight> cable) {

    /**
     * A part, or all wires that end in the same two zones.
     *
     * @param zone zone, or two zones
     * @param armMetres distance behind the datum (m), if it is known
     */
    public record PartWeight(
            String part, String zone, double kilograms, OptionalDouble armMetres) {}

    /** Wire of one size: length (m), and weight of conductor, insulation and terminals (kg). */
    public record CableWeight(
            String awg,
            double metres,
            double conductorKilograms,
            double insulationKilograms,
            double terminalKilograms) {
        public double kilograms() {
            return conductorKilograms + insulationKilograms + terminalKilograms;
        }
    }

    public WeightSheet {
        parts = List.copyOf(parts);
        cable = List.copyOf(cable);
    }

    /** Weight of what has no arm (kg). */
    public double withoutArmKilograms() {
        return parts.stream()
                .filter(p -> p.armMetres.isEmpty())
                .mapToDouble(PartWeight::kilograms)
                .sum();
    }

    /** Moment about the datum (kg m) of everything that has an arm. */
    public double momentKilogramMetres() {
        return parts.stream()
                .filter(p -> p.armMetres.isPresent())
                .mapToDouble(p -> p.kilograms * p.armMetres.getAsDouble())
                .sum();
    }
}
