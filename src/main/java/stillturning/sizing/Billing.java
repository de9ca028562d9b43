package stillturning.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.parts.Part;
import stillturning.sizing.result.BillRow;
import stillturning.sizing.result.BillRow.CountingUnit;
import stillturning.sizing.result.WireSize;

/** What has to be bought: like parts counted together. */
final class Billing {

    /** What is cut off and lost on the way. Common practice, no published source. */
    private static final double CUT_OFF = 0.1;

    private record Kind(
            String item, String detail, double spareShare, double kilograms, double price) {}

    private final List<Part> parts;
    private final List<WireSize> wires;

    Billing(Subject subject, List<WireSize> wires) {
        this.parts = subject.candidate().parts();
        this.wires = wires;
    }

    List<BillRow> rows() {
        Map<Kind, Integer> counts = new LinkedHashMap<>();
        for (Part part : parts) {
            if (part.role() != Part.Role.WIRE && part.role() != Part.Role.LOAD) {
                Kind kind =
                        new Kind(
                                part.kind().name(),
                                part.detail(),
                                part.kind().spareShare(),
                                part.tag().burden().kilograms(),
                                part.tag().burden().price());
                counts.merge(kind, 1, Integer::sum);
            }
        }
        List<BillRow> rows = new ArrayList<>();
        counts.forEach((kind, count) -> rows.add(row(kind, count)));
        Map<String, List<WireSize>> bySize = new LinkedHashMap<>();
        wires.forEach(
                w -> bySize.computeIfAbsent(w.wire().cable().awg(), a -> new ArrayList<>()).add(w));
        bySize.forEach((awg, of) -> cable(awg, of, rows));
        return rows;
    }

    private static BillRow row(Kind kind, int count) {
        double spares = Math.ceil(kind.spareShare * count);
        return new BillRow(
                kind.item,
                kind.detail,
                count,
                CountingUnit.PIECES,
                spares,
                count * kind.kilograms,
                (count + spares) * kind.price);
    }

    /** The price of a wire already holds that of its two terminals. */
    private static void cable(String awg, List<WireSize> of, List<BillRow> rows) {
        double metres = of.stream().mapToDouble(w -> w.wire().metres()).sum();
        double price = of.stream().mapToDouble(w -> w.wire().tag().burden().price()).sum();
        double kilograms = of.stream().mapToDouble(w -> w.wire().tag().burden().kilograms()).sum();
        rows.add(
                new BillRow(
                        "wire",
                        "AWG " + awg,
                        metres,
                        CountingUnit.METRES,
                        CUT_OFF * metres,
                        kilograms,
                        price * (1 + CUT_OFF)));
        Map<String, Integer> ends = new LinkedHashMap<>();
        of.forEach(w -> ends.merge(w.ends().said().terminals().orElse(""), 2, Integer::sum));
        ends.forEach(
                (said, count) ->
                        rows.add(
                                new BillRow(
                                        "terminal",
                                        ("AWG " + awg + " " + said).strip(),
                                        count,
                                        CountingUnit.PIECES,
                                        Math.ceil(CUT_OFF * count),
                                        0,
                                        0)));
    }
}
