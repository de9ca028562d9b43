package stillturning.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.parts.Part;

/**
 * A candidate as far as its file can be read, mistakes and loose ends included. It is there to be
 * looked at while somebody draws: a part whose values are wrong stands in it with those of its
 * class, so nothing may be computed with it, and no room that computes takes one.
 *
 * @param id file name without ending
 * @param title what a person calls it
 * @param joins those whose two ends are known
 * @param flight position by lever in normal flight, as far as written
 * @param engineLoads loads that the engine's needs name
 * @param standIns parts whose values are wrong or missing, so that those they have are not theirs
 */
public record HalfDrawn(
        String id,
        String title,
        List<Part> parts,
        List<Join> joins,
        Map<String, String> flight,
        List<String> engineLoads,
        Set<String> standIns) {
    public HalfDrawn {
        parts = List.copyOf(parts);
        joins = List.copyOf(joins);
        flight = Ordered.copyOf(flight);
        engineLoads = List.copyOf(engineLoads);
        standIns = Set.copyOf(standIns);
    }

    /** A sound candidate, to be looked at in the same way. */
    public static HalfDrawn of(Candidate candidate, Study.Aircraft aircraft) {
        return new HalfDrawn(
                candidate.id(),
                candidate.title(),
                candidate.parts(),
                candidate.joins(),
                candidate.cockpit().flight(),
                aircraft.engine().logic().loads(),
                Set.of());
    }
}
