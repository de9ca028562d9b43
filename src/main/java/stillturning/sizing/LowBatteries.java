package stillturning.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.parts.AlteredPart;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Management;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;

/** What batteries take in that come to the flight nearly empty. */
final class LowBatteries {

    /** A battery that hardly turns the starter any more. A guess. */
    private static final double LOW_CHARGE = 0.1;

    private LowBatteries() {}

    /**
     * A battery that takes in more than its management lets it.
     *
     * @param amps that would flow into it if nothing disconnected it (A)
     * @param allowedAmps that its management allows (A)
     */
    record Greedy(String battery, double amps, double allowedAmps, String phase) {
        static Greedy orMore(Greedy one, Greedy other) {
            return other.amps > one.amps ? other : one;
        }
    }

    /** Those of a phase, each alone nearly empty. */
    static List<Greedy> of(Study study, Candidate candidate, Phase phase) throws UntoldStory {
        List<Greedy> greedy = new ArrayList<>();
        for (Part part : candidate.parts()) {
            for (Cell cell : limited(part).toList()) {
                double allowed = cell.management().orElseThrow().chargeAmps().at();
                Candidate low = candidate.with(p -> p.id().equals(part.id()) ? empty(p) : p);
                double amps =
                        new SteadyStates(study, low, phase).rest().amps(part.id(), cell.name());
                if (amps > allowed) {
                    greedy.add(new Greedy(part.id(), amps, allowed, phase.name()));
                }
            }
        }
        return greedy;
    }

    private static Stream<Cell> limited(Part part) {
        return part.elements().stream()
                .filter(Cell.class::isInstance)
                .map(Cell.class::cast)
                .filter(cell -> cell.management().map(LowBatteries::limits).orElse(false));
    }

    private static boolean limits(Management management) {
        return Double.isFinite(management.chargeAmps().at());
    }

    private static Part empty(Part part) {
        return new AlteredPart(part, element -> element.charged(LOW_CHARGE).unmanaged());
    }
}
