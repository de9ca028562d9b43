package stillturning.files.move;

import java.util.List;
import java.util.stream.Stream;

/** Takes a battery out where another is left, with what only served it. */
final class RemovedBattery implements Finder {

    @Override
    public Stream<Move> in(Drawn drawn) {
        List<String> batteries = drawn.ofKind(Site.BATTERY);
        if (batteries.size() < 2) {
            return Stream.empty();
        }
        return batteries.stream()
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
}
