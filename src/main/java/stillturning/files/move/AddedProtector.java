package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Naming;

/** Puts a fuse at the beginning of a run that has no protector. */
final class AddedProtector implements Finder {

    private static final Set<String> LIVE = Set.of(Site.BUS, Site.BATTERY, "contactor");

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.outline().runs().stream()
                .filter(run -> LIVE.contains(drawn.outline().kind(Runs.from(run)).orElse("")))
                .filter(run -> !run.line().text().contains(" to ") || leadsPower(run))
                .filter(run -> protectors(run).isEmpty())
                .map(run -> of(drawn, site, run));
    }

    /** A battery's minus and a coil's line are none. */
    private static boolean leadsPower(OutlineRun run) {
        return run.line().anchors().stream()
                .filter(a -> a.item() == 0)
                .allMatch(a -> a.terminal().isEmpty());
    }

    private static List<String> protectors(OutlineRun run) {
        return Runs.words(run.line()).stream()
                .filter(word -> word.equals("fuse") || word.equals("breaker"))
                .toList();
    }

    private static Move of(Drawn drawn, Site site, OutlineRun run) {
        Set<String> loads =
                run.section().equals(CandidateOutline.FEEDS)
                        ? Set.of(Naming.part(run.key()))
                        : drawn.loads().names();
        List<String> touches = new ArrayList<>(List.of(Runs.from(run), Runs.to(run)));
        touches.addAll(run.makes());
        return new Move(
                MoveKind.PROTECTOR,
                "Put a fuse at the beginning of " + run.key(),
                touches,
                pen -> pen.run(run.path(), run.line().with(1, fuse(drawn, site, loads)).text()));
    }

    private static String fuse(Drawn drawn, Site site, Set<String> loads) {
        boolean starts = loads.size() == 1 && loads.stream().allMatch(drawn.loads()::isStarter);
        return starts ? "fuse 300 A class high-current" : site.fuse(loads);
    }
}
