package stillturning.assess.verdict;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.story.Setting.Race;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.TripContest;

/** Plays a failure's trip contests again, with the winner at its slow edge. */
final class Tolerances {

    private static final Set<Kind> GIVING_WAY =
            Set.copyOf(EnumSet.of(Kind.PROTECTOR_OPENS, Kind.WIRE_OVERHEATS, Kind.WIRE_MELTS));

    private Tolerances() {}

    /**
     * The worst that the bands leave open. No story is told again unless somebody else was heating
     * who might have won, and none is judged unless he does.
     *
     * @param again tells the failure with the protectors elsewhere in their bands
     * @param judging judges such a story
     */
    static Optional<ToleranceOutcome> of(
            Story typical, Function<Race, Story> again, BiFunction<Race, Story, Verdict> judging) {
        Set<String> expected = givingWay(typical).map(StoryEvent::part).collect(Collectors.toSet());
        Optional<ToleranceOutcome> worst = Optional.empty();
        for (TripContest contest : typical.contests()) {
            if (open(contest, expected) || together(typical, contest.winner())) {
                Race race = Race.against(contest.winner());
                Story then = again.apply(race);
                worst =
                        worse(
                                worst,
                                inBand(contest, expected, then, () -> judging.apply(race, then)));
            }
        }
        return worst;
    }

    private static boolean open(TripContest contest, Set<String> expected) {
        return Double.isInfinite(contest.slowSeconds()) || !expected.containsAll(contest.rivals());
    }

    /** Whether the winner typically has company: the bands tell apart what the curves do not. */
    private static boolean together(Story typical, String winner) {
        return givingWay(typical)
                .filter(h -> h.part().equals(winner))
                .anyMatch(
                        h ->
                                givingWay(typical)
                                        .anyMatch(
                                                other ->
                                                        !other.part().equals(winner)
                                                                && other.seconds() == h.seconds()));
    }

    private static Optional<ToleranceOutcome> inBand(
            TripContest contest, Set<String> expected, Story then, Supplier<Verdict> judging) {
        List<StoryEvent> gaveWay = givingWay(then).toList();
        // what gives way after the winner all the same has lost this race
        List<StoryEvent> before =
                gaveWay.stream().takeWhile(h -> !h.part().equals(contest.winner())).toList();
        boolean opened = gaveWay.stream().anyMatch(h -> h.part().equals(contest.winner()));
        Optional<StoryEvent> instead =
                before.stream().filter(h -> !opened || !expected.contains(h.part())).findFirst();
        if (instead.isEmpty() && (opened || Double.isFinite(contest.slowSeconds()))) {
            return Optional.empty();
        }
        return Optional.of(
                new ToleranceOutcome(
                        contest.winner(),
                        instead.map(StoryEvent::part).orElse(""),
                        instead.map(StoryEvent::seconds).orElse(Double.POSITIVE_INFINITY),
                        contest.slowSeconds(),
                        judging.get()));
    }

    private static Optional<ToleranceOutcome> worse(
            Optional<ToleranceOutcome> one, Optional<ToleranceOutcome> other) {
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .min(Comparator.comparing(band -> band.then().outcome()));
    }

    private static Stream<StoryEvent> givingWay(Story story) {
        return story.happenings().stream().filter(h -> GIVING_WAY.contains(h.kind()));
    }
}
