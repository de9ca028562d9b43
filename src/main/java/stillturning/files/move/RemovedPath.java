package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Naming;

/** Takes a link between buses and batteries out, or one of several feeds of a load. */
final class RemovedPath implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        Stream<OutlineRun> links =
                drawn.links().stream()
                        .filter(link -> site.sources().contains(Runs.from(link)))
                        .filter(link -> joins(drawn, site, link));
        Stream<OutlineRun> feeds =
                drawn.feeds().stream().filter(feed -> feedsOf(drawn, Naming.part(feed.key())) > 1);
        return Stream.concat(links, feeds).map(run -> of(drawn, run));
    }

    private static boolean joins(Drawn drawn, Site site, OutlineRun link) {
        return site.sources().contains(Runs.to(link))
                || drawn.loads().names().contains(Runs.to(link));
    }

    private static long feedsOf(Drawn drawn, String load) {
        return drawn.feeds().stream().filter(f -> Naming.part(f.key()).equals(load)).count();
    }

    private static Move of(Drawn drawn, OutlineRun run) {
        List<String> touches = new ArrayList<>(Runs.through(run));
        touches.addAll(run.makes());
        touches.add(Runs.from(run));
        touches.add(Runs.to(run));
        String what =
                Runs.isLink(run)
                        ? "way from the "
                                + drawn.called(Runs.from(run))
                                + " to the "
                                + drawn.called(Runs.to(run))
                                + " ("
                                + run.key()
                                + ")"
                        : "feed of " + OtherSource.input(drawn, run);
        return new Move(
                MoveKind.PATH_REMOVED,
                "Take the " + what + " out",
                touches,
                pen -> {
                    pen.cut(run.path());
                    pen.sweep();
                });
    }
}
