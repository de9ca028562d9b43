package stillturning.sizing;

import java.util.List;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.parts.element.Generator;

/** The phases of the flight, as a candidate's alternators see them. */
final class SizingPhases {

    private final Study study;
    private final List<Generator> generators;
    private final List<Phase> running;

    SizingPhases(Study study, Candidate candidate) {
        this.study = study;
        this.generators =
                candidate
                        .generators()
                        .flatMap(part -> part.elements().stream())
                        .filter(Generator.class::isInstance)
                        .map(Generator.class::cast)
                        .toList();
        this.running = study.aircraft().phases().stream().filter(p -> !starting(p)).toList();
    }

    /** Whether the alternators stand or turn too slowly to give anything, as on the starter. */
    boolean starting(Phase phase) {
        return !generators.isEmpty() && availableAmps(phase) <= 0;
    }

    /** What the alternators can give at a phase's speed (A). */
    double availableAmps(Phase phase) {
        return generators.stream()
                .mapToDouble(g -> g.output().ampsAt(phase.alternatorRevsPerSecond()))
                .sum();
    }

    /** Phases in which the engine runs. */
    Stream<Phase> running() {
        return running.stream();
    }

    /** Whether a load cranks the engine, or runs only while that is done. */
    boolean isStarter(String load) {
        return study.aircraft().engine().starting().starter().filter(load::equals).isPresent()
                || study.aircraft()
                        .load(load)
                        .filter(
                                need ->
                                        running()
                                                .noneMatch(
                                                        p ->
                                                                need.use()
                                                                        .phases()
                                                                        .contains(p.name())))
                        .isPresent();
    }
}
