package stillturning.desktop.viewmodel.offer;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stillturning.model.Candidate;
import stillturning.model.HalfDrawn;
import stillturning.model.Join;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.oneline.DrawnCandidate;

/**
 * An offer as it is drawn, beside what it was made from.
 *
 * @param now what it was made from; marked is what would go and what would be altered
 * @param then what it would be; marked is what would be new and what would be altered
 */
public record OfferSketch(SketchSide now, SketchSide then) {

    /** Width over height of the room for a drawing beside what is said of it. */
    private static final double SHAPE = 1.3;

    /**
     * One of the two drawings.
     *
     * @param own keys of what only this one has
     * @param altered keys of what both have, and not alike
     */
    public record SketchSide(Sheet sheet, List<String> own, List<String> altered) {
        public SketchSide {
            own = List.copyOf(own);
            altered = List.copyOf(altered);
        }
    }

    /** Lays both out, as like each other as may be; takes a moment. */
    static OfferSketch of(OfferedDrawing offer) {
        Study.Aircraft aircraft = offer.drawn().study().aircraft();
        Candidate before = offer.before();
        Candidate after = offer.drawn().candidate();
        Set<String> altered = altered(before, after);
        DrawnCandidate was = CandidateDrawing.atWork(HalfDrawn.of(before, aircraft));
        DrawnCandidate is = CandidateDrawing.atWork(HalfDrawn.of(after, aircraft));
        Sheet first = OneLine.laidOut(was.diagram(), SHAPE);
        return new OfferSketch(
                side(was, first, own(before, after), altered),
                side(is, OneLine.laidOut(is.diagram(), first), own(after, before), altered));
    }

    private static SketchSide side(
            DrawnCandidate drawn, Sheet sheet, Set<String> own, Set<String> altered) {
        return new SketchSide(sheet, keys(drawn, own), keys(drawn, altered));
    }

    private static List<String> keys(DrawnCandidate drawn, Collection<String> parts) {
        return parts.stream().flatMap(part -> drawn.keysOf(part).stream()).toList();
    }

    private static Set<String> own(Candidate candidate, Candidate other) {
        Set<String> own = new TreeSet<>(parts(candidate).keySet());
        own.removeAll(parts(other).keySet());
        return own;
    }

    /** Parts that are not alike, wires that lead elsewhere, and levers that stand otherwise. */
    private static Set<String> altered(Candidate before, Candidate after) {
        Map<String, Part> was = parts(before);
        Map<String, Part> is = parts(after);
        Map<String, Set<String>> ledTo = ends(before);
        Map<String, Set<String>> leadsTo = ends(after);
        Set<String> altered = new TreeSet<>();
        for (Map.Entry<String, Part> part : is.entrySet()) {
            String id = part.getKey();
            if (was.containsKey(id)
                    && (!part.getValue().equals(was.get(id))
                            || (isWire(part.getValue())
                                    && !leadsTo.getOrDefault(id, Set.of())
                                            .equals(ledTo.getOrDefault(id, Set.of()))))) {
                altered.add(id);
            }
        }
        altered.addAll(movedLevers(before, after));
        altered.retainAll(was.keySet());
        return altered;
    }

    private static Set<String> movedLevers(Candidate before, Candidate after) {
        Map<String, String> was = before.cockpit().flight();
        Map<String, String> is = after.cockpit().flight();
        Set<String> moved = new HashSet<>();
        is.forEach(
                (lever, position) -> {
                    if (was.containsKey(lever) && !position.equals(was.get(lever))) {
                        moved.add(lever);
                    }
                });
        return moved;
    }

    private static boolean isWire(Part part) {
        return part.role() == Part.Role.WIRE;
    }

    private static Map<String, Part> parts(Candidate candidate) {
        Map<String, Part> parts = new LinkedHashMap<>();
        candidate.parts().forEach(part -> parts.put(part.id(), part));
        return parts;
    }

    private static Map<String, Set<String>> ends(Candidate candidate) {
        Map<String, Set<String>> ends = new LinkedHashMap<>();
        for (Join join : candidate.joins()) {
            ends.computeIfAbsent(join.one().part(), p -> new TreeSet<>())
                    .add(join.one() + " " + join.other());
            ends.computeIfAbsent(join.other().part(), p -> new TreeSet<>())
                    .add(join.other() + " " + join.one());
        }
        return ends;
    }
}
