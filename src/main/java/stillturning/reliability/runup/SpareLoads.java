package stillturning.reliability.runup;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;

/**
 * Loads that are off while checks are made: those that the pilot may shed and does not watch. On
 * the ground an alternator turns slowly; with everything on it may not fill the battery again that
 * a check has drawn on, and a lamp would stay lit.
 */
final class SpareLoads {

    private SpareLoads() {}

    /** Their names, in the study's order. */
    static List<String> of(Study study) {
        Phase phase = study.goals().runUp();
        return study.aircraft().loads().stream()
                .filter(load -> isSpare(load) && load.use().phases().contains(phase.name()))
                .map(LoadNeed::id)
                .toList();
    }

    private static boolean isSpare(LoadNeed load) {
        return load.shedOrder().isPresent() && !load.noticed();
    }

    /** The study with them off in the phase in which checks are made. */
    static Study off(Study study) {
        String phase = study.goals().runUp().name();
        return study.withLoads(load -> isSpare(load) ? not(load, phase) : load);
    }

    private static LoadNeed not(LoadNeed load, String phase) {
        Set<String> phases = new HashSet<>(load.use().phases());
        phases.remove(phase);
        return load.with(
                new LoadNeed.Use(phases, load.use().duty(), load.noticed(), load.use().inrush()));
    }
}
