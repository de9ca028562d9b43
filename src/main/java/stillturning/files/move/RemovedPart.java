package stillturning.files.move;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;

/**
 * Takes out what lies in line, a contactor, a bus that another can stand for, or a spare ground.
 */
final class RemovedPart implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        return Stream.of(
                        inLine(drawn),
                        drawn.ofKind("contactor").stream()
                                .filter(c -> !onlyTurnsTheStarter(drawn, c))
                                .flatMap(c -> contactor(drawn, c)),
                        drawn.ofKind(Site.BUS).stream().flatMap(bus -> merged(drawn, bus)))
                .flatMap(moves -> moves);
    }

    /** Takes a battery out where another is left, with what only served it. */
    static Stream<Move> batteries(Drawn drawn) {
        List<String> batteries = drawn.ofKind(Site.BATTERY);
        return batteries.stream()
                .filter(battery -> batteries.size() > 1)
                .map(
                        battery ->
                                new Move(
                                        MoveKind.BATTERY_REMOVED,
                                        "Take the " + drawn.called(battery) + " out",
                                        List.of(battery),
                                        pen -> {
                                            pen.delete(battery);
                                            pen.sweep();
                                        }));
    }

    private static Stream<Move> inLine(Drawn drawn) {
        Set<String> parts = new LinkedHashSet<>();
        drawn.outline().runs().forEach(run -> parts.addAll(Runs.through(run)));
        return parts.stream()
                .filter(drawn.outline().parts()::containsKey)
                .filter(part -> !isKey(drawn, part))
                .map(
                        part ->
                                new Move(
                                        MoveKind.PART_REMOVED,
                                        "Take the " + drawn.calledWithKind(part) + " out",
                                        List.of(part),
                                        pen -> {
                                            pen.delete(part);
                                            pen.sweep();
                                        }));
    }

    private static boolean isKey(Drawn drawn, String part) {
        return drawn.candidate().part(part).stream()
                .flatMap(p -> p.levers().stream())
                .anyMatch(lever -> drawn.isKey(lever.name()));
    }

    /** Whether nothing but the starter hangs on it: without it that would turn all the time. */
    private static boolean onlyTurnsTheStarter(Drawn drawn, String contactor) {
        Optional<String> starter = drawn.study().aircraft().engine().starting().starter();
        List<OutlineRun> fed =
                drawn.outline().runs().stream().filter(run -> leaves(run, contactor)).toList();
        return !fed.isEmpty()
                && fed.stream().allMatch(run -> Optional.of(Runs.to(run)).equals(starter));
    }

    /** What a contactor fed then hangs on what fed it. */
    private static Stream<Move> contactor(Drawn drawn, String contactor) {
        if (drawn.outline().runs().stream().noneMatch(run -> leaves(run, contactor))) {
            return Stream.empty();
        }
        Optional<OutlineRun> in =
                drawn.links().stream()
                        .filter(link -> Runs.to(link).equals(contactor))
                        .filter(link -> !Runs.from(link).equals(contactor))
                        .filter(link -> new Site(drawn).sources().contains(Runs.from(link)))
                        .findFirst();
        return in.stream()
                .map(
                        link ->
                                new Move(
                                        MoveKind.PART_REMOVED,
                                        "Take the " + drawn.called(contactor) + " out",
                                        List.of(contactor, Runs.from(link)),
                                        pen -> {
                                            for (OutlineRun run : drawn.outline().runs()) {
                                                if (leaves(run, contactor)) {
                                                    pen.run(
                                                            run.path(),
                                                            Runs.startingAt(run, Runs.from(link)));
                                                }
                                            }
                                            pen.delete(contactor);
                                            pen.sweep();
                                        }));
    }

    /** Whether a run starts at a contactor's contact. */
    private static boolean leaves(OutlineRun run, String contactor) {
        return run.line().anchors().stream()
                        .anyMatch(
                                a ->
                                        a.item() == 0
                                                && a.word().equals("from")
                                                && a.part().equals(contactor)
                                                && a.terminal().isEmpty())
                && !Runs.to(run).equals(contactor);
    }

    /** One bus stands for two that are joined. */
    private static Stream<Move> merged(Drawn drawn, String bus) {
        List<String> others = new ArrayList<>();
        for (OutlineRun link : drawn.links()) {
            if (Runs.from(link).equals(bus) && drawn.isKind(Runs.to(link), Site.BUS)) {
                others.add(Runs.to(link));
            }
        }
        return others.stream()
                .distinct()
                .map(
                        other ->
                                new Move(
                                        MoveKind.PART_REMOVED,
                                        "Make the "
                                                + drawn.called(bus)
                                                + " and the "
                                                + drawn.called(other)
                                                + " one bus",
                                        List.of(other, bus),
                                        pen -> merge(drawn, pen, bus, other)));
    }

    private static void merge(Drawn drawn, Pen pen, String bus, String other) throws ChangeRefused {
        Set<String> both = Set.of(bus, other);
        for (OutlineRun run : drawn.outline().runs()) {
            if (both.contains(Runs.from(run)) && both.contains(Runs.to(run))) {
                pen.cut(run.path());
            } else if (Runs.from(run).equals(other)) {
                pen.run(run.path(), Runs.startingAt(run, bus));
            } else if (Runs.isLink(run) && Runs.to(run).equals(other)) {
                pen.run(run.path(), Runs.endingAt(run, bus));
            }
        }
        pen.delete(other);
        pen.sweep();
    }
}
