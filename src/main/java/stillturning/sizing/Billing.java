package stillturning.sizing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.protection.Breaker;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Connector;
import stillturning.parts.switching.Contactor;
import stillturning.parts.source.DcConverter;
import stillturning.parts.joining.Diode;
import stillturning.parts.protection.Fuse;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.Load;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.switching.Switch;
import stillturning.parts.Wire;
import stillturning.sizing.BillRow.Unit;

/** What has to be bought: like parts counted together. */
final class Billing {

    /** One spare fuse of each rating, or half of them. 14 CFR 23.1357, read in a second source. */
    private static final double SPARE_SHARE = 0.5;

    /** What is cut off and lost on the way. Common practice, no published source. */
    private static final double CUT_OFF = 0.1;

    private static final int COULOMBS_PER_AMPERE_HOUR = 3600;

    private record Kind(String item, String detail, double kilograms, double price) {}

    private final List<Part> parts;
    private final List<WireSize> wires;

    Billing(Subject subject, List<WireSize> wires) {
        this.parts = subject.candidate().parts();
        this.wires = wires;
    }

    List<BillRow> rows() {
        Map<Kind, Integer> counts = new LinkedHashMap<>();
        for (Part part : parts) {
            if (!(part instanceof Wire) && !(part instanceof Load)) {
                Kind kind =
                        new Kind(
                                item(part),
                                detail(part),
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
        double spares = kind.item.equals("fuse") ? Math.ceil(SPARE_SHARE * count) : 0;
        return new BillRow(
                kind.item,
                kind.detail,
                count,
                Unit.PIECES,
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
                        Unit.METRES,
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
                                        Unit.PIECES,
                                        Math.ceil(CUT_OFF * count),
                                        0,
                                        0)));
    }

    private static String item(Part part) {
        if (part instanceof OvervoltageGuard) {
            return "overvoltage guard";
        }
        if (part instanceof SolidStateController) {
            return "controller";
        }
        if (part instanceof GroundPoint) {
            return "ground point";
        }
        return part instanceof DcConverter
                ? "converter"
                : part.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private static String detail(Part part) {
        if (part instanceof Fuse fuse) {
            return amps(fuse.ratedAmps()) + ", " + fuse.curve().source();
        }
        if (part instanceof Breaker breaker) {
            return amps(breaker.ratedAmps());
        }
        if (part instanceof Battery battery) {
            double hours = battery.capacity().coulombs() / COULOMBS_PER_AMPERE_HOUR;
            return number(hours) + " Ah usable";
        }
        if (part instanceof Alternator alternator) {
            return amps(alternator.output().largestAmps());
        }
        return more(part);
    }

    private static String more(Part part) {
        if (part instanceof Switch lever) {
            return lever.poles()
                    + (lever.throwing() == Switch.Throw.SINGLE
                            ? " pole, single throw"
                            : " pole, double throw");
        }
        if (part instanceof Connector connector) {
            return connector.pins() + " pins";
        }
        if (part instanceof SolidStateController controller) {
            return controller.outputs().size() + " channels";
        }
        if (part instanceof Bus bus) {
            return bus.studs().size() == 1 ? "1 feed" : bus.studs().size() + " feeds";
        }
        if (part instanceof Contactor contactor) {
            return number(contactor.winding().ohms()) + " ohm coil";
        }
        return part instanceof Diode diode ? number(1000 * diode.ohms()) + " mohm" : "";
    }

    private static String amps(double amps) {
        return number(amps) + " A";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
