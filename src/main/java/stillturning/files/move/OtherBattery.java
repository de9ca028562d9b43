package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stillturning.files.PartCatalogue;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.WrittenKeys;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.yaml.YamlValue;
import stillturning.yaml.notation.Given;

/** A battery of another capacity, or of another chemistry with the capacity that it has. */
final class OtherBattery implements Finder {

    private static final double SMALLER = 0.75;
    private static final double LARGER = 1.5;
    private static final double COULOMBS = 3600;
    private static final Map<String, String> OTHER = Map.of("agm", "lifepo4", "lifepo4", "agm");

    /** What is as true of another chemistry: what it is called, its voltage, its age and charge. */
    private static final List<String> KEPT = List.of("label", "nominal", "health", "charge");

    @Override
    public Stream<Move> in(Drawn drawn) {
        return drawn.ofKind(Site.BATTERY).stream()
                .flatMap(
                        battery -> {
                            Sheet sheet = new Sheet(drawn, battery);
                            Stream<Move> sizes =
                                    Stream.of(SMALLER, LARGER).map(f -> resized(drawn, sheet, f));
                            Stream<Move> chemistry =
                                    Optional.ofNullable(OTHER.get(sheet.type())).stream()
                                            .map(type -> exchanged(drawn, sheet, type));
                            return Stream.concat(sizes, chemistry);
                        });
    }

    /** What is known of a battery, as written or by its class. */
    private record Sheet(Drawn drawn, String battery) {

        private WrittenKeys written() {
            return drawn.outline().all().under("parts").under(battery);
        }

        String type() {
            return written()
                    .text("class")
                    .or(() -> kind().map(k -> k.classes().get(0).name()))
                    .orElse("");
        }

        private static Optional<PartCatalogue.CatalogueKind> kind() {
            return PartCatalogue.shipped().kind(Site.BATTERY);
        }

        double coulombs() {
            return read(
                            written().text("capacity").or(() -> ofClass(type(), "capacity")),
                            Dimension.CHARGE)
                    .orElse(0);
        }

        String capacity() {
            return Quantity.of(coulombs(), Dimension.CHARGE).written();
        }

        OptionalDouble writtenValue(String key, Dimension dimension) {
            return read(written().text(key), dimension);
        }

        private static Optional<String> ofClass(String type, String key) {
            return kind().flatMap(k -> k.ofClass(type)).stream()
                    .flatMap(c -> c.values().stream())
                    .filter(v -> v.key().equals(key))
                    .map(PartCatalogue.CatalogueValue::text)
                    .findFirst();
        }

        private static OptionalDouble read(Optional<String> text, Dimension dimension) {
            return text.flatMap(t -> Given.read(t, dimension, (offset, wrong, right) -> {}))
                    .map(given -> OptionalDouble.of(given.quantity().si()))
                    .orElseGet(OptionalDouble::empty);
        }
    }

    private static Move resized(Drawn drawn, Sheet sheet, double factor) {
        String battery = sheet.battery;
        double coulombs = rounded(sheet.coulombs() * factor);
        String as = Quantity.of(coulombs, Dimension.CHARGE).written();
        return new Move(
                MoveKind.BATTERY_RESIZED,
                "Take " + as + " for the " + drawn.called(battery),
                List.of(battery),
                pen -> {
                    String part = "parts." + battery;
                    pen.put(part, "capacity", as);
                    // what is not written follows the capacity by itself
                    mass(pen, part, sheet.writtenValue("mass", Dimension.MASS), factor);
                    ohms(
                            pen,
                            part,
                            sheet.writtenValue("resistance", Dimension.RESISTANCE),
                            1 / factor);
                    if (sheet.written().text("price").isPresent()) {
                        price(pen, drawn, battery, factor);
                    }
                });
    }

    private static double rounded(double coulombs) {
        return Math.max(1, Math.round(coulombs / COULOMBS)) * COULOMBS;
    }

    private static void mass(Pen pen, String part, OptionalDouble kilograms, double factor)
            throws ChangeRefused {
        if (kilograms.isPresent()) {
            double grams = Math.round(kilograms.getAsDouble() * factor * 10) / 10.0;
            pen.put(part, "mass", Quantity.of(grams, Dimension.MASS).written() + " (guess)");
        }
    }

    private static void ohms(Pen pen, String part, OptionalDouble ohms, double factor)
            throws ChangeRefused {
        if (ohms.isPresent()) {
            double round = Math.round(ohms.getAsDouble() * factor * 1000) / 1000.0;
            pen.put(
                    part,
                    "resistance",
                    Quantity.of(Math.max(0.001, round), Dimension.RESISTANCE).written()
                            + " (guess)");
        }
    }

    private static void price(Pen pen, Drawn drawn, String battery, double factor)
            throws ChangeRefused {
        double price =
                drawn.candidate().part(battery).map(p -> p.tag().burden().price()).orElse(0.0);
        pen.put("parts." + battery, "price", price(drawn, price * factor));
    }

    private static String price(Drawn drawn, double price) {
        return String.format(
                Locale.ROOT,
                "%d %s (guess)",
                Math.round(price / 10) * 10,
                drawn.study().heading().currency());
    }

    private static Move exchanged(Drawn drawn, Sheet sheet, String type) {
        String battery = sheet.battery;
        String said = type.equals("agm") ? "lead" : "lithium";
        return new Move(
                MoveKind.BATTERY_RESIZED,
                "Take a " + said + " battery of the same capacity for the " + drawn.called(battery),
                List.of(battery),
                pen -> {
                    List<YamlValue.Field> fields = new ArrayList<>();
                    fields.add(YamlValue.field("is", Site.BATTERY));
                    fields.add(YamlValue.field("class", type));
                    fields.add(YamlValue.field("zone", drawn.zone(battery)));
                    fields.add(YamlValue.field("capacity", sheet.capacity()));
                    for (String key : KEPT) {
                        sheet.written()
                                .text(key)
                                .ifPresent(text -> fields.add(YamlValue.field(key, text)));
                    }
                    pen.put("parts", battery, new YamlValue.Fields(fields));
                });
    }
}
