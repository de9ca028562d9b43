package stillturning.story.timeline;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.story.device.BranchLayout;

/**
 * Lays out what failures leave of one circuit, and keeps the last few: a failure is told in several
 * settings one after the other. May be asked by several threads at once.
 */
final class Layouts {

    /** More than there are threads that tell. */
    private static final int KEPT = 32;

    private final Candidate candidate;
    private final Circuit intact;
    private final BranchLayout healthy;
    private final Deque<Kept> kept = new ArrayDeque<>();

    /** What is left of a circuit, as one run after the other may use it. */
    record Laid(Circuit circuit, BranchLayout layout) {

        static Laid of(Circuit circuit) {
            return new Laid(circuit, new BranchLayout(circuit, Optional.empty()));
        }
    }

    private record Kept(List<Hit> hits, Laid laid) {}

    /**
     * @param healthy the candidate's circuit with nothing wrong
     */
    Layouts(Candidate candidate, Laid healthy) {
        this.candidate = candidate;
        this.intact = healthy.circuit;
        this.healthy = healthy.layout;
    }

    Laid after(List<Hit> hits) {
        return known(hits).orElseGet(() -> keep(hits, laid(hits)));
    }

    private Laid laid(List<Hit> hits) {
        Circuit circuit = intact.failed(candidate, hits);
        return new Laid(circuit, new BranchLayout(circuit, Optional.of(healthy)));
    }

    private synchronized Optional<Laid> known(List<Hit> hits) {
        return kept.stream().filter(k -> k.hits == hits).map(Kept::laid).findFirst();
    }

    private synchronized Laid keep(List<Hit> hits, Laid laid) {
        kept.addFirst(new Kept(hits, laid));
        if (kept.size() > KEPT) {
            kept.removeLast();
        }
        return laid;
    }
}
