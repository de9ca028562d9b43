package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
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

    private static Stream<Move> of(Drawn drawn, Site site, OutlineRun feed) {
        String load = Naming.part(feed.key());
        String now = Runs.from(feed);
        List<String> others = new ArrayList<>(drawn.ofKind(Site.BUS));
        if (drawn.engineLoads().contains(load)) {
            others = site.sources();
        }
        return others.stream()
                .filter(other -> !other.equals(now))
                .filter(other -> site.opensBefore(feed, other))
                .map(
                        other ->
                                new Move(
                                        MoveKind.OTHER_SOURCE,
                                        "Feed "
                                                + input(drawn, feed)
                                                + " from the "
                                                + drawn.called(other)
                                                + " instead of the "
                                                + drawn.called(now)
                                                + switched(site, feed, other),
                                        touched(feed, load, now, other),
                                        pen -> lead(site, feed, other, pen)));
    }

    /**
     * A load that had no switch because its bus had one needs one where the new source has none.
     */
    private static String switched(Site site, OutlineRun feed, String other) {
        return site.isSwitched(feed) ? "" : site.switchedOff(other);
    }

    /** A feed that hung on the protector before its bus gets one of its own. */
    private static void lead(Site site, OutlineRun feed, String other, Pen pen)
            throws ChangeRefused {
        String load = Naming.part(feed.key());
        List<String> pieces = new ArrayList<>(List.of(Runs.startingAt(feed, other).split(",", -1)));
        List<String> words = Runs.words(feed.line());
        if (!site.isSwitched(feed)) {
            int back = words.indexOf("return");
            pieces.add(back > 0 ? back : pieces.size(), site.offSwitch(pen, other, load));
        }
        if (!words.contains("breaker") && !words.contains("fuse")) {
            pieces.add(1, " " + site.fuse(List.of(load)));
        }
        pieces.removeIf(String::isEmpty);
        pen.run(feed.path(), joined(pieces));
    }

    /** Items that already begin with a comma are not given another. */
    private static String joined(List<String> pieces) {
        return String.join(",", pieces).replace(",,", ",");
    }

    private static List<String> touched(OutlineRun feed, String... more) {
        List<String> touched = new ArrayList<>(List.of(more));
        touched.addAll(feed.makes());
        return touched;
    }

    /** A load, or one of its inputs. */
    static String input(Drawn drawn, OutlineRun feed) {
        String load = drawn.called(Naming.part(feed.key()));
        return Naming.behind(feed.key())
                .map(input -> "input " + input + " of " + load)
                .orElse(load);
    }
}
