package stillturning.sizing;

import java.util.List;
import java.util.function.UnaryOperator;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.LoadNeed.Use;
import stillturning.model.Study;
import stillturning.model.Study.Aircraft;
import stillturning.parts.source.Battery;
import stillturning.parts.Part;

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
                new Aircraft(as.nominalVolts(), loads, as.engine(), as.phases(), as.zones()),
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
                new Use(load.use().phases(), 1, load.use().noticed()),
                load.shedOrder());
    }

    /** The candidate with its batteries changed. */
    static Candidate with(Candidate candidate, UnaryOperator<Battery> change) {
        List<Part> parts =
                candidate.parts().stream()
                        .map(p -> p instanceof Battery b ? change.apply(b) : p)
                        .toList();
        return new Candidate(
                candidate.id(),
                candidate.title(),
                candidate.about(),
                parts,
                candidate.joins(),
                candidate.cockpit());
    }

    /** The battery at another charge, from 0 to 1. */
    static Battery charged(Battery battery, double charge) {
        return new Battery(
                battery.tag(),
                battery.openCircuit(),
                battery.cells(),
                battery.capacity(),
                battery.ohms(),
                charge,
                battery.management());
    }
}
