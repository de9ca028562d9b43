package stillturning.files.move;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.Naming;

/**
 * Splits a bus of the engine in two. The new one takes over what the engine can do without all at
 * once, and the second input of what stays.
 */
final class SplitBus implements Finder {

    /** How the new bus gets its current. */
    private record Supply(String words, List<String> touches, Wiring wiring) {}

    /** Leads a supply to the new bus. */
    private interface Wiring {
        void to(String bus, Pen pen) throws ChangeRefused;
    }

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.ofKind(Site.BUS).stream().flatMap(bus -> of(drawn, site, bus));
    }

    private static Stream<Move> of(Drawn drawn, Site site, String bus) {
        List<OutlineRun> moved = moved(drawn, site, bus);
        Set<String> loads = new LinkedHashSet<>();
        moved.forEach(feed -> loads.add(Naming.part(feed.key())));
        if (moved.isEmpty()) {
            return Stream.empty();
        }
        return supplies(drawn, site, bus, loads).stream()
                .map(
                        supply -> {
                            List<String> touches = new ArrayList<>(List.of(bus));
                            touches.addAll(supply.touches);
                            touches.addAll(loads);
                            return new Move(
                                    MoveKind.SPLIT_BUS,
                                    "Split the " + drawn.called(bus) + " in two, " + supply.words,
                                    touches,
                                    pen -> {
                                        String other = pen.add("bus", bus + "-b", drawn.zone(bus));
                                        for (OutlineRun feed : moved) {
                                            pen.run(feed.path(), Runs.startingAt(feed, other));
                                        }
                                        supply.wiring.to(other, pen);
                                    });
                        });
    }

    /** Feeds of the engine that the new bus takes over. */
    private static List<OutlineRun> moved(Drawn drawn, Site site, String bus) {
        List<OutlineRun> feeds =
                drawn.feeds().stream()
                        .filter(feed -> Runs.from(feed).equals(bus))
                        .filter(f -> drawn.engineLoads().contains(Naming.part(f.key())))
                        .toList();
        Set<String> spare = site.spare(site.ofTheEngine(site.fedFrom(bus)));
        List<OutlineRun> moved = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (OutlineRun feed : feeds) {
            String load = Naming.part(feed.key());
            boolean first = seen.add(load);
            boolean only =
                    feeds.stream().filter(f -> Naming.part(f.key()).equals(load)).count() == 1;
            if (!first || (only && spare.contains(load))) {
                moved.add(feed);
            }
        }
        return moved.size() < feeds.size() ? moved : List.of();
    }

    private static List<Supply> supplies(Drawn drawn, Site site, String bus, Set<String> loads) {
        List<Supply> all = new ArrayList<>();
        List<OutlineRun> incoming =
                drawn.links().stream().filter(link -> Runs.to(link).equals(bus)).toList();
        for (OutlineRun link : incoming) {
            if (incoming.size() > 1 && site.sources().contains(Runs.from(link))) {
                all.add(
                        new Supply(
                                "and lead " + link.key() + " to the second one",
                                List.copyOf(link.makes()),
                                (other, pen) -> pen.run(link.path(), Runs.endingAt(link, other))));
            }
        }
        String fuse = site.fuse(loads);
        for (String battery : drawn.ofKind(Site.BATTERY)) {
            all.add(
                    new Supply(
                            "and feed the second one from the "
                                    + drawn.called(battery)
                                    + (site.isAlwaysOn(bus) ? "" : site.switchedOff(battery)),
                            List.of(battery),
                            (other, pen) -> {
                                String off =
                                        site.isAlwaysOn(bus)
                                                ? ""
                                                : site.offSwitch(pen, battery, other);
                                pen.link(
                                        battery + "-to-" + other,
                                        "from " + battery + " to " + other + ", " + fuse + off);
                            }));
        }
        all.add(
                new Supply(
                        "with a fuse between them",
                        List.of(),
                        (other, pen) ->
                                pen.link(
                                        bus + "-to-" + other,
                                        "from " + bus + " to " + other + ", " + fuse)));
        all.add(
                new Supply(
                        "with a diode between them",
                        List.of(),
                        (other, pen) -> {
                            String diode = pen.add("diode", other + "-diode", drawn.zone(bus));
                            pen.link(
                                    bus + "-to-" + other,
                                    "from " + bus + " to " + other + ", " + fuse + ", via "
                                            + diode);
                        }));
        return all;
    }
}
