package stillturning.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stillturning.model.Burdens;
import stillturning.parts.Cable;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.sizing.result.WeightSheet;
import stillturning.sizing.result.WeightSheet.CableWeight;
import stillturning.sizing.result.WeightSheet.PartWeight;
import stillturning.sizing.result.WireSize;

/** Weighs a candidate. */
final class WeightSums {

    private final Subject subject;
    private final List<WireSize> wires;

    WeightSums(Subject subject, List<WireSize> wires) {
        this.subject = subject;
        this.wires = wires;
    }

    WeightSheet sheet() {
        List<PartWeight> parts = new ArrayList<>();
        for (Part part : subject.candidate().parts()) {
            if (part.role() != Part.Role.WIRE && part.role() != Part.Role.LOAD) {
                parts.add(
                        new PartWeight(
                                part.id(),
                                part.tag().zone(),
                                part.tag().burden().kilograms(),
                                arm(part)));
            }
        }
        parts.addAll(runs());
        return new WeightSheet(Burdens.of(subject.candidate()).kilograms(), parts, cable());
    }

    private OptionalDouble arm(Part part) {
        Double own = subject.fit().armMetres().get(part.id());
        return own != null ? OptionalDouble.of(own) : zoneArm(part.tag().zone());
    }

    private OptionalDouble zoneArm(String zone) {
        Double arm = subject.installation().armMetres().get(zone);
        return arm != null ? OptionalDouble.of(arm) : OptionalDouble.empty();
    }

    /** Wires by the zones of their ends; each hangs in the middle between them. */
    private List<PartWeight> runs() {
        Map<List<String>, Double> kilograms = new LinkedHashMap<>();
        wires.forEach(
                w ->
                        kilograms.merge(
                                w.ends().zones().stream().sorted().toList(),
                                w.wire().tag().burden().kilograms(),
                                Double::sum));
        List<PartWeight> runs = new ArrayList<>();
        kilograms.forEach(
                (zones, weight) ->
                        runs.add(
                                new PartWeight(
                                        "wire",
                                        String.join(" to ", zones),
                                        weight,
                                        middle(zones))));
        return runs;
    }

    private OptionalDouble middle(List<String> zones) {
        boolean known = zones.stream().allMatch(z -> zoneArm(z).isPresent());
        return known
                ? zones.stream().mapToDouble(z -> zoneArm(z).getAsDouble()).average()
                : OptionalDouble.empty();
    }

    private List<CableWeight> cable() {
        List<CableWeight> rows = new ArrayList<>();
        for (Cable size : Cable.SIZES) {
            List<Wire> of =
                    wires.stream().map(WireSize::wire).filter(w -> w.cable().equals(size)).toList();
            if (!of.isEmpty()) {
                double metres = of.stream().mapToDouble(Wire::metres).sum();
                double conductor = size.conductorKilogramsPerMetre() * metres;
                double all = size.kilogramsPerMetre() * metres;
                double burden = of.stream().mapToDouble(w -> w.tag().burden().kilograms()).sum();
                rows.add(
                        new CableWeight(
                                size.awg(), metres, conductor, all - conductor, burden - all));
            }
        }
        return rows;
    }
}
