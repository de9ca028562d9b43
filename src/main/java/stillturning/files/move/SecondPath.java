package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.Naming;
import stillturning.model.Terminal;

/** Feeds a bus of the engine, or an input of one of its loads, a second time from elsewhere. */
final class SecondPath implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return Stream.concat(
                drawn.ofKind(Site.BUS).stream()
                        .filter(bus -> !site.ofTheEngine(site.fedFrom(bus)).isEmpty())
                        .flatMap(bus -> toBus(drawn, site, bus)),
                drawn.feeds().stream().flatMap(feed -> toLoad(drawn, site, feed)));
    }

    private static Stream<Move> toBus(Drawn drawn, Site site, String bus) {
        return site.sources().stream()
                .filter(source -> !source.equals(bus))
                .flatMap(
                        source ->
                                Stream.of(
                                        byDiode(drawn, site, source, bus),
                                        bySwitch(drawn, site, source, bus),
                                        byContactor(drawn, site, source, bus)));
    }

    private static String words(Drawn drawn, String source, String bus, String by) {
        return "Feed the "
                + drawn.called(bus)
                + " also from the "
                + drawn.called(source)
                + ", by a "
                + by;
    }

    private static String line(Site site, String source, String bus, String way) {
        return "from " + source + " to " + bus + ", " + site.fuse(site.fedFrom(bus)) + ", " + way;
    }

    private static String link(String source, String bus) {
        return source + "-to-" + bus;
    }

    /** The diode lies at the bus: so a wire that chafes before it takes nothing from the bus. */
    private static Move byDiode(Drawn drawn, Site site, String source, String bus) {
        return new Move(
                MoveKind.SECOND_PATH,
                words(drawn, source, bus, "diode" + site.switchedOff(source)),
                List.of(source, bus),
                pen -> {
                    String diode = pen.add("diode", bus + "-diode", drawn.zone(bus));
                    String off = site.offSwitch(pen, source, bus);
                    String fused =
                            "from " + source + " to " + bus + ", " + site.fuse(site.fedFrom(bus));
                    pen.link(link(source, bus), fused + off + ", via " + diode);
                });
    }

    private static Move bySwitch(Drawn drawn, Site site, String source, String bus) {
        return new Move(
                MoveKind.SECOND_PATH,
                words(drawn, source, bus, "switch that the pilot closes when the engine stops"),
                List.of(source, bus),
                pen -> {
                    String zone = site.handZone(drawn.zone(source));
                    String lever = pen.add("switch", bus + "-switch", zone);
                    pen.link(
                            link(source, bus),
                            line(site, source, bus, "wire, via " + lever + ", wire"));
                    open(pen, lever);
                });
    }

    private static Move byContactor(Drawn drawn, Site site, String source, String bus) {
        return new Move(
                MoveKind.SECOND_PATH,
                words(drawn, source, bus, "contactor that the pilot closes when the engine stops"),
                List.of(source, bus),
                pen -> {
                    String zone = site.handZone(drawn.zone(source));
                    String contactor = pen.add("contactor", bus + "-contactor", drawn.zone(source));
                    String lever = pen.add("switch", bus + "-switch", zone);
                    pen.link(link(source, bus), line(site, source, bus, "via " + contactor));
                    pen.link(
                            contactor + "-coil",
                            "from " + contactor + ".in to " + contactor + ".coil-plus, direct");
                    pen.link(
                            contactor + "-ground",
                            "from "
                                    + new Terminal(contactor, "coil-minus")
                                    + " to "
                                    + ground(site, zone)
                                    + ", wire AWG 22, via "
                                    + lever
                                    + ", wire AWG 22");
                    open(pen, lever);
                });
    }

    static String ground(Site site, String zone) throws ChangeRefused {
        return site.groundOf(zone)
                .orElseThrow(() -> new ChangeRefused("nothing returns in the zone " + zone));
    }

    /** Open in flight; closed when the engine stops, and first of all with the master off. */
    private static void open(Pen pen, String lever) throws ChangeRefused {
        pen.flight(lever, "off");
        pen.firstWithMasterOff(lever, "on");
        pen.whenTheEngineStops(lever, "on");
    }

    /** Only loads of one input: one with two chooses by itself. */
    private static Stream<Move> toLoad(Drawn drawn, Site site, OutlineRun feed) {
        String load = Naming.part(feed.key());
        boolean one = drawn.loads().inputs(load).size() == 1;
        if (!one || !drawn.engineLoads().contains(load)) {
            return Stream.empty();
        }
        List<String> touches = new ArrayList<>(feed.makes());
        touches.add(Runs.from(feed));
        return site.sources().stream()
                .filter(source -> !source.equals(Runs.from(feed)))
                .map(
                        source ->
                                new Move(
                                        MoveKind.SECOND_PATH,
                                        "Feed "
                                                + drawn.called(load)
                                                + " also from the "
                                                + drawn.called(source)
                                                + ", by two diodes"
                                                + site.switchedOff(source),
                                        also(touches, source, load),
                                        pen -> byDiodes(drawn, site, feed, source, pen)));
    }

    private static List<String> also(List<String> touches, String... more) {
        List<String> all = new ArrayList<>(touches);
        all.addAll(List.of(more));
        return all;
    }

    /** Both feeds lead by a diode each to a bar beside the load, which is fed from there. */
    private static void byDiodes(Drawn drawn, Site site, OutlineRun feed, String source, Pen pen)
            throws ChangeRefused {
        String load = Naming.part(feed.key());
        String zone = drawn.zone(load);
        List<String> items =
                feed.line().pieces().stream()
                        .skip(1)
                        .map(String::strip)
                        .filter(item -> !item.startsWith("return "))
                        .toList();
        String back = Runs.back(feed).map(ground -> ", wire, return " + ground).orElse(", wire");
        String bar = pen.add(Site.BUS, load + "-bar", zone);
        String first = pen.add("diode", load + "-diode-a", zone);
        String second = pen.add("diode", load + "-diode-b", zone);
        pen.run(feed.path(), "from " + bar + back);
        String start = feed.line().pieces().get(0);
        String usual = items.isEmpty() ? "" : String.join(", ", items) + ", ";
        pen.link(load + "-feed-a", start + " to " + bar + ", " + usual + "via " + first);
        String off = site.offSwitch(pen, source, load);
        pen.link(
                load + "-feed-b",
                "from "
                        + source
                        + " to "
                        + bar
                        + ", "
                        + site.fuse(List.of(load))
                        + off
                        + ", via "
                        + second);
    }
}
