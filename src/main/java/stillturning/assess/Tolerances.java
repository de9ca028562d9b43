package stillturning.assess;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.story.Contest;
import stillturning.story.Happening;
import stillturning.story.Happening.Kind;
import stillturning.story.Setting.Race;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/** Plays a failure's races again with the odds against whoever won them. */
final class Tolerances {

    private static final Set<Kind> GIVING_WAY =
            Set.copyOf(EnumSet.of(Kind.PROTECTOR_OPENS, Kind.WIRE_OVERHEATS, Kind.WIRE_MELTS));

    /** Judges the failure with the protectors elsewhere in their bands. */
    interface Again {
        Verdict judge(Race race) throws UntoldStory;
    }

    private Tolerances() {}

    /**
     * The worst that the bands leave open. No story is told again unless somebody else was heating
     * who might have won.
     */
    static Optional<InBand> of(Story typical, Again again) throws UntoldStory {
        Set<String> expected = givingWay(typical).map(Happening::part).collect(Collectors.toSet());
        Optional<InBand> worst = Optional.empty();
        for (Contest contest : typical.contests()) {
            if (open(contest, expected) || together(typical, contest.winner())) {
                worst = worse(worst, inBand(contest, expected, again));
            }
        }
        return worst;
    }

    private static boolean open(Contest contest, Set<String> expected) {
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

    private static Optional<InBand> inBand(Contest contest, Set<String> expected, Again again)
            throws UntoldStory {
        Verdict then = again.judge(Race.against(contest.winner()));
        List<Happening> gaveWay = givingWay(then.planned()).toList();
        // what gives way after the winner all the same has lost this race
        List<Happening> before =
                gaveWay.stream().takeWhile(h -> !h.part().equals(contest.winner())).toList();
        boolean opened = gaveWay.stream().anyMatch(h -> h.part().equals(contest.winner()));
        Optional<Happening> instead =
                before.stream().filter(h -> !opened || !expected.contains(h.part())).findFirst();
        if (instead.isEmpty() && (opened || Double.isFinite(contest.slowSeconds()))) {
            return Optional.empty();
        }
        return Optional.of(
                new InBand(
                        contest.winner(),
                        instead.map(Happening::part).orElse(""),
                        instead.map(Happening::seconds).orElse(Double.POSITIVE_INFINITY),
                        contest.slowSeconds(),
                        then));
    }

    private static Optional<InBand> worse(Optional<InBand> one, Optional<InBand> other) {
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .min(Comparator.comparing(band -> band.then().outcome()));
    }

    private static Stream<Happening> givingWay(Story story) {
        return story.happenings().stream().filter(h -> GIVING_WAY.contains(h.kind()));
    }
}
