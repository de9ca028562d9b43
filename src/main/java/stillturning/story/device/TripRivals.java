package stillturning.story.device;

import java.util.List;
import stillturning.parts.element.curve.Tripping;
import stillturning.story.TripContest;

/** What might have given way first, judged by the currents at which something did. */
final class TripRivals {

    /** Currents differed a moment before, so a rival that is this much later still counts. */
    private static final double ROOM = 1.25;

    private TripRivals() {}

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
