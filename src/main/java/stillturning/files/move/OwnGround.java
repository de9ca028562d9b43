package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Naming;

/** Gives some of what meets at a ground one of its own, or grounds a battery a second time. */
final class OwnGround implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        Stream<Move> loads =
                drawn.ofKind("ground").stream().flatMap(ground -> loads(drawn, site, ground));
        Stream<Move> links = drawn.links().stream().flatMap(link -> link(drawn, site, link));
        return Stream.concat(loads, links);
    }

    private static Stream<Move> loads(Drawn drawn, Site site, String ground) {
        List<String> returning =
                drawn.engineLoads().stream()
                        .sorted()
                        .filter(load -> ground(drawn, site, load).equals(Optional.of(ground)))
                        .toList();
        Set<String> spare = site.spare(returning);
        List<OutlineRun> feeds =
                spare.stream().flatMap(load -> firstFeed(drawn, load).stream()).toList();
        if (returning.size() < 2 || feeds.isEmpty()) {
            return Stream.empty();
        }
        List<String> touches = new ArrayList<>(List.of(ground));
        touches.addAll(spare);
        return Stream.of(
                new Move(
                        MoveKind.SEPARATED,
                        "Return "
                                + String.join(", ", spare.stream().map(drawn::called).toList())
                                + (spare.size() == 1
                                        ? " at a ground of its own"
                                        : " at a ground of their own")
                                + " instead of the "
                                + drawn.called(ground),
                        touches,
                        pen -> {
                            String own = site.ground(pen, ground + "-b", drawn.zone(ground));
                            for (OutlineRun feed : feeds) {
                                pen.run(feed.path(), returning(feed, own));
                            }
                        }));
    }

    private static Optional<OutlineRun> firstFeed(Drawn drawn, String load) {
        return drawn.feeds().stream().filter(f -> Naming.part(f.key()).equals(load)).findFirst();
    }

    /** Where a load returns: as one of its feeds says, or else as its zone does. */
    private static Optional<String> ground(Drawn drawn, Site site, String load) {
        return drawn.feeds().stream()
                .filter(f -> Naming.part(f.key()).equals(load))
                .flatMap(f -> Runs.back(f).stream())
                .findFirst()
                .or(() -> site.groundOf(drawn.zone(load)));
    }

    private static String returning(OutlineRun feed, String ground) {
        List<String> words = Runs.words(feed.line());
        int at = words.indexOf("return");
        List<String> back = List.of("return " + ground);
        return at > 0 ? Runs.items(feed, back, at) : Runs.items(feed, back);
    }

    private static Stream<Move> link(Drawn drawn, Site site, OutlineRun link) {
        String ground = Runs.to(link);
        String part = Runs.from(link);
        if (!drawn.isKind(ground, "ground")) {
            return Stream.empty();
        }
        List<String> touches = new ArrayList<>(List.of(ground, part));
        touches.addAll(link.makes());
        Move own =
                new Move(
                        MoveKind.SEPARATED,
                        "Lead "
                                + link.key()
                                + " to a ground of its own instead of the "
                                + drawn.called(ground),
                        touches,
                        pen -> {
                            String other = site.ground(pen, ground + "-b", drawn.zone(ground));
                            pen.run(link.path(), Runs.endingAt(link, other));
                        });
        Move twice =
                new Move(
                        MoveKind.SECOND_PATH,
                        "Ground the "
                                + drawn.called(part)
                                + " a second time, at a ground of its own",
                        touches,
                        pen -> {
                            String other = site.ground(pen, ground + "-b", drawn.zone(ground));
                            pen.link(link.key() + "-b", Runs.endingAt(link, other));
                        });
        return drawn.isKind(part, Site.BATTERY) ? Stream.of(own, twice) : Stream.of(own);
    }
}
