package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.front.Found;
import stillturning.assess.front.FrontSearch;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestions;
import stillturning.assess.suggest.Wanted;
import stillturning.dossier.RequirementSurvey;
import stillturning.files.move.Drawn;
import stillturning.story.UntoldStory;

/** Looks for small changes that mend a candidate. */
public final class Suggest {

    private static final Comparator<List<Double>> ORDER =
            (one, other) -> {
                int order = 0;
                for (int i = 0; i < one.size() && order == 0; i++) {
                    order = Double.compare(one.get(i), other.get(i));
                }
                return order;
            };

    private final Drawn drawn;
    private final Appraisal before;

    private Suggest(Drawn drawn, Appraisal before) {
        this.drawn = drawn;
        this.before = before;
    }

    /**
     * Begins with a candidate as it is drawn.
     *
     * @throws UntoldStory if it cannot be computed as it is
     */
    public static Suggest of(Drawn drawn) throws UntoldStory {
        return new Suggest(drawn, scrutiny(drawn).appraisal());
    }

    static Scrutiny scrutiny(Drawn drawn) throws UntoldStory {
        return Scrutiny.of(
                drawn.study(),
                drawn.candidate(),
                new RequirementSurvey(drawn.study(), drawn.installation()));
    }

    /**
     * What is wrong with the candidate before any single failure: what gives way with nothing
     * wrong, switches that nobody sees left wrong, sizes.
     */
    public List<Aim> findings() {
        return Stream.of(
                        NothingWrong.in(before.flight()),
                        LeftWrong.in(before.cases().leftSwitches()),
                        TooSmall.in(drawn))
                .flatMap(aims -> aims)
                .toList();
    }

    /**
     * Whether something else is wrong with the candidate as it is.
     *
     * @throws UntoldStory if nobody can say
     */
    public boolean isLeft(Aim aim) throws UntoldStory {
        return aim.isLeft(drawn, scrutiny(drawn));
    }

    /** The candidate as it is. */
    public Appraisal before() {
        return before;
    }

    /**
     * Looks for what mends it. The result does not depend on the number of threads, unless the
     * watch ends the search by the clock.
     *
     * @param limits how many moves one after the other, and how many drawings at most
     */
    public Suggested mending(Wanted wanted, SearchLimits limits, SearchWatch watch) {
        return mending(Asked.of(wanted), limits, watch);
    }

    /** Looks for what mends something else about it. */
    public Suggested mending(Aim aim, SearchLimits limits, SearchWatch watch) {
        return mending(Asked.of(aim), limits, watch);
    }

    private Suggested mending(Asked asked, SearchLimits limits, SearchWatch watch) {
        MendSpace space = new MendSpace(drawn, before, asked);
        Found<Drawn> found = FrontSearch.in(space, limits, watch);
        List<Placed> placed = new ArrayList<>();
        for (Found.Member<Drawn> member : found.front()) {
            try {
                Drawn thing = member.thing();
                placed.add(
                        new Placed(
                                asked.suggestion(thing, member.steps(), before, scrutiny(thing)),
                                thing));
            } catch (UntoldStory e) {
                throw new IllegalStateException("told before, and not now", e);
            }
        }
        placed.sort(Comparator.comparing(p -> p.suggestion.values(), ORDER));
        return new Suggested(
                new Suggestions(
                        drawn.study(),
                        before,
                        asked.wanted(),
                        placed.stream().map(Placed::suggestion).toList(),
                        new Suggestions.LookedAt(found.tally(), limits.steps(), found.whole())),
                placed.stream().map(Placed::drawing).toList());
    }

    private record Placed(Suggestion suggestion, Drawn drawing) {}
}
