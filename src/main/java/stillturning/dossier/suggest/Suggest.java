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
import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestions;
import stillturning.assess.suggest.Suggestions.LookedAt;
import stillturning.assess.suggest.Wanted;
import stillturning.dossier.RequirementSurvey;
import stillturning.dossier.suggest.LightestFound.OfCandidate;
import stillturning.files.move.Drawn;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;
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

    /** Events that fail several parts of the candidate together. */
    public List<Failure> causes() {
        return drawn.causes().stream().map(Cause::failure).toList();
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
        Found<Drawn> found = FrontSearch.in(new MendSpace(drawn, before, asked), limits, watch);
        List<Placed> placed = new ArrayList<>(placed(asked, made(found)));
        placed.sort(
                Comparator.<Placed, Boolean>comparing(p -> p.suggestion.isOutweighed())
                        .thenComparing(p -> p.suggestion.values(), ORDER));
        return new Suggested(
                new Suggestions(
                        drawn.study(),
                        before,
                        asked.wanted(),
                        suggestions(placed, false),
                        suggestions(placed, true),
                        lookedAt(found, limits)),
                placed.stream().map(p -> p.made.drawn).toList());
    }

    private static List<Suggestion> suggestions(List<Placed> placed, boolean outweighed) {
        return placed.stream()
                .map(Placed::suggestion)
                .filter(suggestion -> suggestion.isOutweighed() == outweighed)
                .toList();
    }

    private static List<Made> made(Found<Drawn> found) {
        return found.front().stream().map(m -> new Made(m.steps(), m.thing())).toList();
    }

    private static LookedAt lookedAt(Found<Drawn> found, SearchLimits limits) {
        return new LookedAt(found.tally(), limits.steps(), found.whole());
    }

    /**
     * Looks for the lightest change for each single failure that loses the engine, and for each
     * requirement that is missed.
     *
     * @param limits how many moves one after the other, and how many drawings at most
     */
    OfCandidate lightest(SearchLimits limits, SearchWatch watch) {
        Wanted wanted = Wanted.all(before);
        if (wanted.isNothing()) {
            return lightest(List.of(), LookedAt.NOTHING);
        }
        MendSpace space = new MendSpace(drawn, before, Asked.oneByOne(wanted));
        Found<Drawn> found = FrontSearch.in(space, limits, watch);
        return lightest(made(found), lookedAt(found, limits));
    }

    /**
     * The lightest among changes that are drawn already; each is assessed in full.
     *
     * @param done what was looked at to find them
     */
    OfCandidate lightest(List<Made> made, LookedAt done) {
        Asked asked = Asked.oneByOne(Wanted.all(before));
        List<Placed> placed = placed(asked, made);
        LightestMends mends =
                LightestMends.among(
                        drawn.study(),
                        before,
                        asked.wanted(),
                        placed.stream().map(Placed::suggestion).toList(),
                        done);
        return new OfCandidate(
                mends,
                mends.withOutweighed().mends().stream()
                        .map(mend -> drawing(mend.suggestion(), placed))
                        .toList());
    }

    private static Drawn drawing(Suggestion suggestion, List<Placed> placed) {
        return placed.stream()
                .filter(p -> p.suggestion.equals(suggestion))
                .map(p -> p.made.drawn)
                .findFirst()
                .orElseThrow();
    }

    private List<Placed> placed(Asked asked, List<Made> made) {
        List<Placed> placed = new ArrayList<>();
        for (Made one : made) {
            try {
                Scrutiny look = scrutiny(one.drawn);
                placed.add(new Placed(asked.suggestion(one.drawn, one.moves, before, look), one));
            } catch (UntoldStory e) {
                throw new IllegalStateException("told before, and not now", e);
            }
        }
        return placed;
    }

    /**
     * A drawing, and the moves that lead to it.
     *
     * @param moves in words
     */
    record Made(List<String> moves, Drawn drawn) {}

    private record Placed(Suggestion suggestion, Made made) {}
}
