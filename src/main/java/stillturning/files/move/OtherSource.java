package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.Run;
import stillturning.files.edit.Naming;

/** Feeds an input of a load from another bus, or one of the engine's from a battery. */
final class OtherSource implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.feeds().stream()
                .filter(feed -> site.sources().contains(Runs.from(feed)))
                .flatMap(feed -> of(drawn, site, feed));
    }

    private static Stream<Move> of(Drawn drawn, Site site, Run feed) {
        String load = Naming.part(feed.key());
        String now = Runs.from(feed);
        List<String> others = new ArrayList<>(drawn.ofKind(Site.BUS));
        if (drawn.engineLoads().contains(load)) {
            others = site.sources();
        }
        return others.stream()
                .filter(other -> !other.equals(now))
                .map(
                        other ->
                                new Move(
                                        MoveKind.OTHER_SOURCE,
                                        "Feed "
                                                + input(drawn, feed)
                                                + " from the "
                                                + drawn.called(other)
                                                + " instead of the "
                                                + drawn.called(now),
                                        touched(feed, load, now, other),
                                        pen -> pen.run(feed.path(), Runs.startingAt(feed, other))));
    }

    private static List<String> touched(Run feed, String... more) {
        List<String> touched = new ArrayList<>(List.of(more));
        touched.addAll(feed.makes());
        return touched;
    }

    /** A load, or one of its inputs. */
    static String input(Drawn drawn, Run feed) {
        String load = drawn.called(Naming.part(feed.key()));
        return Naming.behind(feed.key())
                .map(input -> "input " + input + " of " + load)
                .orElse(load);
    }
}
