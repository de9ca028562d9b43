package stillturning.story.device;

import java.util.List;
import stillturning.parts.element.curve.Tripping;
import stillturning.story.TripContest;

/** Who might have given way first, judged by the currents at which somebody did. */
final class Race {

    /** Currents were others a moment before; a rival that is this much later still counts. */
    private static final double ROOM = 1.25;

    private Race() {}

    static TripContest wonBy(String winner, double slowSeconds, List<Racer> racers) {
        List<String> rivals =
                racers.stream()
                        .filter(r -> !r.part().equals(winner))
                        .filter(r -> r.seconds(Tripping.FAST) < ROOM * slowSeconds)
                        .map(Racer::part)
                        .distinct()
                        .toList();
        return new TripContest(winner, slowSeconds, rivals);
    }
}
