package stillturning.sizing;

import java.util.List;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.model.Study.Aircraft;
import stillturning.parts.AlteredPart;

/** Studies and candidates as they are supposed for one question. */
final class Draws {

    private Draws() {}

    /** Every load that may run in a phase runs there all the time, at its full current. */
    static Study full(Study study) {
        List<LoadNeed> loads = study.aircraft().loads().stream().map(Draws::always).toList();
        Aircraft as = study.aircraft();
        return new Study(
                study.id(),
                study.heading(),
                new Aircraft(
                        as.nominalVolts(),
                        loads,
                        as.engine(),
                        as.phases(),
                        as.zones(),
                        as.moveSeconds()),
                study.goals(),
                study.candidates());
    }

    private static LoadNeed always(LoadNeed load) {
        return new LoadNeed(
                load.id(),
                load.label(),
                load.zone(),
                load.demand(),
                load.tolerance(),
                load.inputs(),
                load.use().always(),
                load.shedOrder());
    }

    /** The candidate with all of its batteries full. */
    static Candidate full(Candidate candidate) {
        return candidate.with(part -> new AlteredPart(part, element -> element.charged(1)));
    }

    /** The candidate with its batteries at these charges, from 0 to 1, by part. */
    static Candidate charged(Candidate candidate, Map<String, Double> charges) {
        return candidate.with(
                part ->
                        charges.containsKey(part.id())
                                ? new AlteredPart(part, e -> e.charged(charges.get(part.id())))
                                : part);
    }
}
