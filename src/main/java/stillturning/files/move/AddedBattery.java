package stillturning.files.move;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateEdits.NewPart;

/** Puts a battery on a bus of the engine, which charges it as well. */
final class AddedBattery implements Finder {

    private static final List<String> CLASSES = List.of("agm", "lifepo4");

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.ofKind(Site.BUS).stream()
                .filter(bus -> !site.ofTheEngine(site.fedFrom(bus)).isEmpty())
                .flatMap(bus -> CLASSES.stream().map(type -> of(drawn, site, bus, type)));
    }

    private static Move of(Drawn drawn, Site site, String bus, String type) {
        String said = type.equals("agm") ? "a lead battery" : "a lithium battery";
        return new Move(
                MoveKind.BATTERY_ADDED,
                "Put "
                        + said
                        + " of its own on the "
                        + drawn.called(bus)
                        + (site.isAlwaysOn(bus) ? "" : ", with a switch of its own"),
                List.of(bus),
                pen -> {
                    String zone = drawn.zone(bus);
                    NewPart part = new NewPart(Site.BATTERY, Optional.of(type), zone, Map.of());
                    String battery = pen.add(part, bus + "-battery");
                    String ground = site.ground(pen, battery + "-ground", zone);
                    pen.link(
                            battery + "-minus",
                            "from " + battery + ".minus to " + ground + ", wire AWG 8");
                    String off = site.isAlwaysOn(bus) ? "" : site.newSwitch(pen, battery, zone);
                    pen.link(
                            battery + "-lead",
                            "from "
                                    + battery
                                    + " to "
                                    + bus
                                    + ", "
                                    + site.fuse(site.fedFrom(bus))
                                    + ", wire"
                                    + off);
                });
    }
}
