package stillturning.dossier.redrawn;

import stillturning.assess.Scrutiny;
import stillturning.assess.requirement.Survey;
import stillturning.assess.verdict.Verdict;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.story.UntoldStory;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What every drawing does, nothing failing, and so every other that is looked for.
 *
 * @param wired loads with something joined to an input
 * @param working loads that work where failures happen
 * @param leftOn loads that may work after the drill that takes all power off: those that do in some
 *     drawing, and the engine's
 * @param drilled whether every drawing has that drill
 * @param drainAmps the most that a battery gives in flight in some drawing, nothing wrong (A): a
 *     layout whose battery nothing charges runs it down on every flight
 */
public record Service(
        Set<String> wired,
        Set<String> working,
        Set<String> leftOn,
        boolean drilled,
        double drainAmps) {

    /** In words, as a reason to refuse a drawing. */
    public static final String WORDS =
            "every load works and no battery runs down with nothing wrong";

    /** In words, as a reason to refuse a drawing whose drill does not take the power off. */
    public static final String TAKES_OFF = "the drill takes the power off what it should";

    /** What a charged battery may give beside a source that carries the loads (A). */
    private static final double NEARLY_NOTHING_AMPS = 0.1;

    public Service {
        wired = Set.copyOf(wired);
        working = Set.copyOf(working);
        leftOn = Set.copyOf(leftOn);
    }

    /** What all of these drawings do that can be computed. */
    public static Service of(List<Drawn> drawings) {
        Set<String> wired = new TreeSet<>();
        Set<String> working = new TreeSet<>();
        Set<String> leftOn = new TreeSet<>();
        double drainAmps = NEARLY_NOTHING_AMPS;
        boolean drilled = true;
        boolean first = true;
        for (Drawn drawn : drawings) {
            try {
                Scrutiny look = Scrutiny.of(drawn.study(), drawn.candidate(), Survey.NONE);
                Set<String> joined = wired(drawn.candidate());
                if (first) {
                    wired.addAll(joined);
                    working.addAll(look.normal().working());
                    first = false;
                }
                wired.retainAll(joined);
                working.retainAll(look.normal().working());
                leftOn.addAll(drawn.study().aircraft().engine().logic().loads());
                look.masterOff().ifPresent(drill -> leftOn.addAll(on(drill)));
                drilled = drilled && look.masterOff().isPresent();
                drainAmps = Math.max(drainAmps, drainAmps(drawn.candidate(), look));
            } catch (UntoldStory e) {
                // a drawing that cannot be told asks for nothing
            }
        }
        return new Service(wired, working, leftOn, drilled && !first, drainAmps);
    }

    /** Whether a layout does it too. */
    public boolean isDoneBy(Candidate candidate, Scrutiny look) {
        return wired(candidate).containsAll(wired)
                && look.normal().working().containsAll(working)
                && drainAmps(candidate, look) <= drainAmps;
    }

    private static double drainAmps(Candidate candidate, Scrutiny look) {
        return candidate.parts().stream()
                .filter(part -> part.elements().stream().anyMatch(Cell.class::isInstance))
                .mapToDouble(part -> look.normal().sourceAmps().getOrDefault(part.id(), 0.0))
                .max()
                .orElse(0);
    }

    /**
     * Whether its drill takes the power off what the drawings' drills take it off. One that has no
     * such drill does so only where some drawing has none either.
     */
    public boolean takesOff(Scrutiny look) {
        return look.masterOff().map(drill -> leftOn.containsAll(on(drill))).orElse(!drilled);
    }

    private static Set<String> on(Verdict drill) {
        return drill.planned().aftermath().working();
    }

    private static Set<String> wired(Candidate candidate) {
        Set<String> joined = new HashSet<>();
        for (Join join : candidate.joins()) {
            joined.add(join.one().toString());
            joined.add(join.other().toString());
        }
        Set<String> wired = new TreeSet<>();
        candidate
                .all(Part.Role.LOAD)
                .filter(
                        load ->
                                load.inputs().stream()
                                        .anyMatch(i -> joined.contains(load.id() + "." + i)))
                .forEach(load -> wired.add(load.id()));
        return wired;
    }
}
