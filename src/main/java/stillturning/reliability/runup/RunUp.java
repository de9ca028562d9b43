package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cover.Cover;
import stillturning.reliability.cover.CoverChoice;
import stillturning.reliability.cover.CoverSet;
import stillturning.story.UntoldStory;

/** Finds what nobody sees in flight, and the fewest checks on the ground that show it. */
public final class RunUp {

    /** One check more is worse than any number of levers. */
    private static final int A_CHECK = 1000;

    /** A minute that one waits until lamps are out is worse than a lever or two. */
    private static final int A_MINUTE = 5;

    /** Kinds of checks, each tried for what those before it do not reveal. */
    private static final List<RunUpStage> STAGES =
            List.of(
                    GroundTrials::ofLevers,
                    GroundTrials::ofBreakers,
                    GroundTrials::ofBreakersWithMore);

    private interface RunUpStage {
        Tried moves(GroundTrials rehearsals);
    }

    private final CombinedResult joint;
    private final GroundTrials rehearsals;
    private final List<String> off;

    private RunUp(CombinedResult joint, GroundTrials rehearsals, List<String> off) {
        this.joint = joint;
        this.rehearsals = rehearsals;
        this.off = off;
    }

    /**
     * A candidate's latent failures and the card that reveals those that end the engine with one
     * more. Switches are tried first; breakers are pulled only for what no switch reveals.
     *
     * @param joint what events do together in it, two at least
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static Card of(Study study, CombinedResult joint) throws UntoldStory {
        return of(
                study,
                joint,
                new LatentFailureSearch(study, joint.candidate()).among(joint.events()));
    }

    /**
     * @param unseen numbers of the latent failures
     */
    static Card of(Study study, CombinedResult joint, List<Integer> unseen) throws UntoldStory {
        Candidate candidate = joint.candidate();
        RunUp runUp = new RunUp(joint, new GroundTrials(study, candidate), SpareLoads.of(study));
        List<Latent> latents = unseen.stream().map(runUp::latent).toList();
        return runUp.card(latents, study.goals().runUp().name());
    }

    private Latent latent(int event) {
        Set<Integer> with = new TreeSet<>();
        for (List<Integer> pair : joint.sets().ofOrder(2)) {
            if (pair.contains(event)) {
                int other = pair.get(pair.get(0) == event ? 1 : 0);
                Event.EventKind kind = joint.events().get(other).kind();
                if (kind == Event.EventKind.FAILURE || kind == Event.EventKind.CAUSE) {
                    with.add(other);
                }
            }
        }
        return new Latent(event, List.copyOf(with));
    }

    private Card card(List<Latent> latents, String phase) {
        List<Integer> open =
                new ArrayList<>(
                        latents.stream().filter(Latent::matters).map(Latent::event).toList());
        List<Check> checks = new ArrayList<>();
        List<RefusedCheck> refused = new ArrayList<>();
        boolean proven = true;
        for (RunUpStage stage : STAGES) {
            if (!open.isEmpty()) {
                Tried tried = stage.moves(rehearsals);
                refused.addAll(tried.refused());
                List<Check> possible = checks(tried.moves(), open);
                CoverChoice choice = Cover.of(open.size(), offers(possible, open));
                proven &= choice.proof() != CoverChoice.Proof.NONE;
                List<Check> chosen = choice.chosen().stream().map(possible::get).toList();
                checks.addAll(ordered(chosen));
                chosen.forEach(
                        check -> check.reveals().forEach(r -> open.remove((Integer) r.event())));
            }
        }
        return new Card(
                latents,
                phase,
                rehearsals.pace(),
                off,
                checks,
                proven,
                new Card.Missing(open, unconfirmed(checks), refusals(refused, open)));
    }

    /** Of those not offered, what each would have revealed of what stays hidden. */
    private List<RefusedCheck> refusals(List<RefusedCheck> refused, List<Integer> open) {
        List<Integer> left = new ArrayList<>(open);
        List<RefusedCheck> telling = new ArrayList<>();
        List<RefusedCheck> easiest =
                refused.stream().sorted(Comparator.comparingInt(RunUp::harm)).toList();
        for (RefusedCheck refusal : easiest) {
            List<Integer> revealed = new ArrayList<>();
            for (int event : left) {
                if (rehearsals.wouldReveal(joint.events().get(event).failure(), refusal.moves())) {
                    revealed.add(event);
                }
            }
            if (!revealed.isEmpty()) {
                left.removeAll(revealed);
                telling.add(refusal.hiding(revealed));
            }
        }
        return telling;
    }

    private static List<Check> ordered(List<Check> checks) {
        return checks.stream()
                .sorted(
                        Comparator.<Check>comparingInt(check -> check.moves().size())
                                .thenComparing(check -> -check.reveals().size()))
                .toList();
    }

    private List<Check> checks(List<SeenMoves> moves, List<Integer> latents) {
        List<Check> checks = new ArrayList<>();
        for (SeenMoves move : moves) {
            List<Check.Revealed> reveals = new ArrayList<>();
            for (int event : latents) {
                reveals(event, move).ifPresent(reveals::add);
            }
            checks.add(new Check(move.levers(), move.before(), move.then(), reveals));
        }
        return checks;
    }

    private Optional<Check.Revealed> reveals(int event, SeenMoves move) {
        return rehearsals.reveals(event, joint.events().get(event).failure(), move);
    }

    private static List<CoverSet> offers(List<Check> checks, List<Integer> latents) {
        return checks.stream()
                .map(
                        check ->
                                new CoverSet(
                                        A_CHECK + check.moves().size() + waiting(check),
                                        check.reveals().stream()
                                                .map(r -> latents.indexOf(r.event()))
                                                .toList()))
                .toList();
    }

    /** What speaks least against it first. */
    private static int harm(RefusedCheck refusal) {
        return refusal.why().fold(far -> 1, order -> 2, lingers -> 0);
    }

    private static int waiting(Check check) {
        return (int) (A_MINUTE * check.levers().settleSeconds() / 60);
    }

    /** The whole card is gone through once with each failure that it is to reveal. */
    private List<Integer> unconfirmed(List<Check> checks) {
        List<Map<String, String>> steps =
                checks.stream().flatMap(c -> List.of(c.moves(), c.back()).stream()).toList();
        Set<Integer> unconfirmed = new TreeSet<>();
        Set<Integer> asked = new HashSet<>();
        for (Check check : checks) {
            for (Check.Revealed revealed : check.reveals()) {
                int event = revealed.event();
                if (asked.add(event)
                        && rehearsals
                                .differences(joint.events().get(event).failure(), steps)
                                .isEmpty()) {
                    unconfirmed.add(event);
                }
            }
        }
        return List.copyOf(unconfirmed);
    }
}
