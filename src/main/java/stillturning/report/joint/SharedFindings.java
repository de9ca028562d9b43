package stillturning.report.joint;

import java.util.List;
import java.util.Optional;
import stillturning.assess.crosscheck.Disagreement;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.failure.Cause;
import stillturning.structure.FunctionWays;
import stillturning.structure.SharedPlaces;
import stillturning.structure.StructureFindings.SinglePoint;

/**
 * What a candidate's parts share, and what comes of it.
 *
 * @param causes every event that fails several parts
 * @param carriers failures of connectors, grounds and switches that take feeds of several of the
 *     engine's loads
 * @param shape what the shape alone says
 * @param disagreements where shape and story say something else of the engine
 * @param untold why something could not be computed, if so
 */
public record SharedFindings(
        Candidate candidate,
        List<PlayedCause> causes,
        List<Carrier> carriers,
        SharedStructure shape,
        List<Disagreement> disagreements,
        List<String> untold) {

    /**
     * A common cause and what it comes to.
     *
     * @param verdict empty where it could not be computed
     */
    public record PlayedCause(Cause cause, Optional<Verdict> verdict) {}

    /**
     * A failure that takes feeds of several of the engine's loads.
     *
     * @param loads whose
     */
    public record Carrier(Verdict verdict, List<String> loads) {
        public Carrier {
            loads = List.copyOf(loads);
        }
    }

    /**
     * What the shape alone says.
     *
     * @param functions how each thing that the engine cannot do without is supplied
     * @param singlePoints parts without which the engine's needs are not met
     * @param places what redundant feeds share
     */
    public record SharedStructure(
            List<FunctionWays> functions, List<SinglePoint> singlePoints, SharedPlaces places) {
        public SharedStructure {
            functions = List.copyOf(functions);
            singlePoints = List.copyOf(singlePoints);
        }
    }

    public SharedFindings {
        causes = List.copyOf(causes);
        carriers = List.copyOf(carriers);
        disagreements = List.copyOf(disagreements);
        untold = List.copyOf(untold);
    }
}
