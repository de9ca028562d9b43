package stillturning.parts;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Added;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.curve.WireHeating;
import stillturning.quantity.Dimension;
import stillturning.quantity.WireGauge;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

/** A length of stranded copper between {@code a} and {@code b}. */
public record Wire(Tag tag, Cable cable, double metres, double ohms) implements Part {

    /**
     * A wire that is no longer than the barrels of its two terminals cannot be made (m); common
     * practice, no published source.
     */
    public static final double SHORTEST_METRES = 0.02;

    static final PartKind KIND =
            new PartKind(
                    "wire",
                    "wire",
                    "wires",
                    120,
                    Values.class,
                    "look at it, tug it, measure its resistance end to end");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a wire. */
    @Describes("Wire that stands for itself, outside of any run.")
    public record Values(
            @Example("AWG 18") WireGauge gauge,
            @Example("1 m (guess)")
                    @OfDimension(value = Dimension.LENGTH, least = "0.02 m")
                    @MeasuredBy("a string or tape along its way in the airframe")
                    double length)
            implements PartValues {

        @Override
        public Wire part(Tag tag, PartSurroundings site) {
            Cable size = size();
            return new Wire(tag, size, length, size.ohmsPerMetre(gauge) * length);
        }

        @Override
        public Optional<Tag.Burden> burden(CableCost cost) {
            double perMetre =
                    cost.pricePerMetre()
                            + cost.pricePerMetreAndSquareMillimetre()
                                    * gauge.squareMetres()
                                    * SQUARE_MILLIMETRES_PER_SQUARE_METRE;
            return Optional.of(
                    new Tag.Burden(
                            size().kilogramsPerMetre() * length + 2 * cost.terminalKilograms(),
                            perMetre * length + 2 * cost.terminalPrice()));
        }

        private Cable size() {
            return Cable.of(gauge)
                    .orElseThrow(
                            () ->
                                    new IllegalArgumentException(
                                            gauge.name()
                                                    + " is not in the table of airframe wires,"
                                                    + " which has AWG 24, 22, 20 ... 2, 1, 1/0 ..."
                                                    + " 4/0"));
        }
    }

    private static final double SQUARE_MILLIMETRES_PER_SQUARE_METRE = 1e6;

    public Wire {
        if (!(metres > 0) || Double.isInfinite(metres)) {
            throw new IllegalArgumentException(
                    tag.id() + ": a wire of " + metres + " m is not above 0");
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("a", "b");
    }

    @Override
    public List<Element> elements() {
        return List.of(copper("wire", "a", "b", ohms));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("wire")).by(Damage.TORN, Damage.WORN_APART),
                FailureMode.of(
                                "chafed-to-ground",
                                new Put(copper("wire", "a", "chafe", ohms / 2)),
                                new Added(copper("far end", "chafe", "b", ohms / 2)),
                                Faults.shortToStructure("chafe"))
                        .by(Damage.SCORCHED, Damage.WORN_BARE)
                        .alsoCalled("short to ground")
                        .inspectedBy("look along its run, measure to ground with both ends off"));
    }

    private Conductor copper(String name, String from, String to, double ohms) {
        return new Conductor(
                name,
                from,
                to,
                ohms,
                Optional.of(new WireHeating(cable.circularMils(), cable.bundleAmps())));
    }

    @Override
    public String entry() {
        return "a";
    }

    @Override
    public String exit() {
        return "b";
    }

    @Override
    public Role role() {
        return Role.WIRE;
    }

    /** It is a line between symbols. */
    @Override
    public List<Symbol> symbols() {
        return List.of();
    }
}
