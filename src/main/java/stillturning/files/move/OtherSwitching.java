package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Naming;
import stillturning.files.edit.UsualProtection;

/** Feeds a load by a breaker instead of a controller's channel, or the other way round. */
final class OtherSwitching implements Finder {

    private static final String CONTROLLER = "controller";

    @Override
    public Stream<Move> in(Drawn drawn) {
        return drawn.feeds().stream()
                .flatMap(
                        feed ->
                                drawn.isKind(Runs.from(feed), CONTROLLER)
                                        ? toBreaker(drawn, feed)
                                        : toController(drawn, feed));
    }

    private static Stream<Move> toBreaker(Drawn drawn, OutlineRun feed) {
        String load = Naming.part(feed.key());
        Optional<String> rating = drawn.loads().amps(load).flatMap(UsualProtection::rating);
        return rating.stream()
                .flatMap(
                        amps ->
                                drawn.ofKind(Site.BUS).stream()
                                        .map(bus -> byBreaker(drawn, feed, bus, amps)));
    }

    private static Move byBreaker(Drawn drawn, OutlineRun feed, String bus, String amps) {
        List<String> touches =
                new ArrayList<>(List.of(Naming.part(feed.key()), Runs.from(feed), bus));
        touches.addAll(feed.makes());
        return new Move(
                MoveKind.SWITCHED_OTHERWISE,
                "Feed "
                        + OtherSource.input(drawn, feed)
                        + " by a breaker from the "
                        + drawn.called(bus)
                        + ", past the "
                        + drawn.called(Runs.from(feed)),
                touches,
                pen -> {
                    List<String> pieces =
                            new ArrayList<>(List.of(Runs.startingAt(feed, bus).split(",", -1)));
                    pieces.add(1, " breaker " + amps);
                    pen.run(feed.path(), String.join(",", pieces));
                });
    }

    private static Stream<Move> toController(Drawn drawn, OutlineRun feed) {
        String load = Naming.part(feed.key());
        Optional<String> rating = drawn.loads().amps(load).flatMap(UsualProtection::rating);
        boolean byBreaker = Runs.words(feed.line()).contains("breaker");
        if (!byBreaker || rating.isEmpty()) {
            return Stream.empty();
        }
        return drawn.ofKind(CONTROLLER).stream()
                .map(controller -> byChannel(drawn, feed, controller, rating.get()));
    }

    private static Move byChannel(Drawn drawn, OutlineRun feed, String controller, String amps) {
        List<String> touches =
                new ArrayList<>(List.of(Naming.part(feed.key()), Runs.from(feed), controller));
        touches.addAll(feed.makes());
        String channels = "parts." + controller + ".channels";
        int next =
                drawn.outline()
                                .all()
                                .under("parts")
                                .under(controller)
                                .under("channels")
                                .items()
                                .size()
                        + 1;
        return new Move(
                MoveKind.SWITCHED_OTHERWISE,
                "Feed "
                        + OtherSource.input(drawn, feed)
                        + " by a channel of the "
                        + drawn.called(controller)
                        + " instead of a breaker",
                touches,
                pen -> {
                    pen.addItem(channels, amps + ", default on");
                    int breaker = Runs.words(feed.line()).indexOf("breaker");
                    List<String> pieces =
                            new ArrayList<>(
                                    List.of(
                                            Runs.startingAt(feed, controller + " channel " + next)
                                                    .split(",", -1)));
                    pieces.remove(breaker);
                    pen.run(feed.path(), String.join(",", pieces));
                });
    }
}
