package stillturning.story.timeline.wiring;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.story.device.BranchLayout;
import stillturning.story.timeline.wiring.DeadEnds.Trimmed;

/**
 * Lays out what failures leave of one circuit, and keeps the last few: a failure is told in several
 * settings one after the other. May be asked by several threads at once.
 */
public final class Layouts {

    /** More than a candidate has failures. */
    private static final int KEPT = 1024;

    private final Candidate candidate;
    private final Laid intact;
    private final DeadEnds deadEnds;
    private final IdentityHashMap<List<Hit>, Bare> kept = new IdentityHashMap<>();
    private final Deque<List<Hit>> inTurn = new ArrayDeque<>();

    /** What is left of a circuit, as one run after the other may use it. */
    public record Laid(Circuit circuit, BranchLayout layout) {

        /** One that is known of nothing else. */
        public static Laid of(Circuit circuit) {
            return new Laid(circuit, new BranchLayout(circuit, Optional.empty()));
        }
    }

    /**
     * What is left of a candidate's circuit.
     *
     * @param intact which of its elements are as they were
     * @param changed all others
     * @param named parts hit that stories tell of by their name
     */
    public record Left(BitSet intact, List<Placed> changed, Set<String> named) {}

    /**
     * What is left of a circuit, less the metal in it that leads nowhere.
     *
     * @param left equal where the same is left
     */
    public record Bare(Laid laid, Left left) {}

    public Layouts(Candidate candidate) {
        this.candidate = candidate;
        this.intact = Laid.of(candidate.circuit());
        this.deadEnds = new DeadEnds(candidate, intact.circuit);
    }

    /** The candidate's circuit with nothing wrong. */
    public Laid intact() {
        return intact;
    }

    /** Everything that is left, to look at. */
    public Laid whole(List<Hit> hits) {
        return laid(intact.circuit.failed(candidate, hits));
    }

    /** What a story can tell of. */
    public Bare bare(List<Hit> hits) {
        synchronized (kept) {
            Bare known = kept.get(hits);
            if (known != null) {
                return known;
            }
        }
        Trimmed trimmed = deadEnds.trim(intact.circuit.failed(candidate, hits), hits);
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
        return new Laid(circuit, new BranchLayout(circuit, Optional.of(intact.layout)));
    }
}
