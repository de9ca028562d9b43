package stillturning.story.timeline;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.story.device.BranchLayout;
import stillturning.story.timeline.DeadEnds.Left;
import stillturning.story.timeline.DeadEnds.Trimmed;

/**
 * Lays out what failures leave of one circuit, and keeps the last few: a failure is told in several
 * settings one after the other. May be asked by several threads at once.
 */
final class Layouts {

    /** More than a candidate has failures. */
    private static final int KEPT = 1024;

    private final Candidate candidate;
    private final Circuit intact;
    private final BranchLayout healthy;
    private final DeadEnds deadEnds;
    private final Map<List<Hit>, Bare> kept = new IdentityHashMap<>();
    private final Deque<List<Hit>> inTurn = new ArrayDeque<>();

    /** What is left of a circuit, as one run after the other may use it. */
    record Laid(Circuit circuit, BranchLayout layout) {

        static Laid of(Circuit circuit) {
            return new Laid(circuit, new BranchLayout(circuit, Optional.empty()));
        }
    }

    /**
     * What is left of a circuit, less the metal in it that leads nowhere.
     *
     * @param left equal where the same is left
     */
    record Bare(Laid laid, Left left) {}

    /**
     * @param healthy the candidate's circuit with nothing wrong
     */
    Layouts(Candidate candidate, Laid healthy) {
        this.candidate = candidate;
        this.intact = healthy.circuit;
        this.healthy = healthy.layout;
        this.deadEnds = new DeadEnds(candidate, intact);
    }

    /** Everything that is left, to look at. */
    Laid whole(List<Hit> hits) {
        return laid(intact.failed(candidate, hits));
    }

    /** What a story can tell of. */
    Bare bare(List<Hit> hits) {
        synchronized (kept) {
            Bare known = kept.get(hits);
            if (known != null) {
                return known;
            }
        }
        Trimmed trimmed = deadEnds.trim(intact.failed(candidate, hits), hits);
        Bare bare = new Bare(laid(trimmed.circuit()), trimmed.left());
        synchronized (kept) {
            if (kept.put(hits, bare) == null) {
                inTurn.addLast(hits);
            }
            if (inTurn.size() > KEPT) {
                kept.remove(inTurn.removeFirst());
            }
        }
        return bare;
    }

    private Laid laid(Circuit circuit) {
        return new Laid(circuit, new BranchLayout(circuit, Optional.of(healthy)));
    }
}
