package stillturning.dossier.redrawn;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.assess.Scrutiny;
import stillturning.assess.requirement.Survey;
import stillturning.assess.verdict.Verdict;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * What every drawing does, nothing failing, and so every other that is looked for.
 *
 * @param wired loads with something joined to an input
 * @param working loads that work where failures happen
 * @param leftOn loads that may work after the drill that takes all power off: those that do in some
 *     drawing, and the engine's
 * @param drilled whether every drawing has that drill
 * @param parked loads that work with every switch off, in some drawing
 * @param showing the most cues that show with nothing wrong, in some drawing
 * @param drainAmps the most that a battery gives in flight in some drawing, nothing wrong (A): a
 *     layout whose battery nothing charges runs it down on every flight
 */
public record Service(
        Set<String> wired,
        Set<String> working,
        Set<String> leftOn,
        boolean drilled,
        Set<String> parked,
        int showing,
        double drainAmps) {

    /** In words, as a reason to refuse a drawing. */
    public static final String WORDS =
            "every load works and no battery runs down with nothing wrong";

    /** In words, as a reason to refuse a drawing whose drill does not take the power off. */
    public static final String TAKES_OFF = "the drill takes the power off what it should";

    /** In words, as a reason to refuse a drawing in which something cannot be switched off. */
    public static final String OFF_WHEN_PARKED = "every switch off takes the power off";

    /** In words, as a reason to refuse a drawing that warns of nothing. */
    public static final String QUIET = "nothing is shown while nothing is wrong";

    private static final String OFF = "off";

    /** What a charged battery may give beside a source that carries the loads (A). */
    private static final double NEARLY_NOTHING_AMPS = 0.1;

    public Service {
        wired = Set.copyOf(wired);
        working = Set.copyOf(working);
        leftOn = Set.copyOf(leftOn);
        parked = Set.copyOf(parked);
    }

    /** What all of these drawings do that can be computed. */
    public static Service of(List<Drawn> drawings) {
        Set<String> wired = new TreeSet<>();
        Set<String> working = new TreeSet<>();
        Set<String> leftOn = new TreeSet<>();
        double drainAmps = NEARLY_NOTHING_AMPS;
        Set<String> parked = new TreeSet<>();
        boolean drilled = true;
        int showing = 0;
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
                parked.addAll(parked(drawn.study(), drawn.candidate()));
                showing = Math.max(showing, look.normal().cuesShowing().size());
                drilled = drilled && look.masterOff().isPresent();
                drainAmps = Math.max(drainAmps, drainAmps(drawn.candidate(), look));
            } catch (UntoldStory e) {
                // a drawing that cannot be told asks for nothing
            }
        }
        return new Service(wired, working, leftOn, drilled && !first, parked, showing, drainAmps);
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

    /** Whether every switch off takes the power off all that it takes it off in the drawings. */
    public boolean isOffWhenParked(Study study, Candidate candidate) throws UntoldStory {
        return parked.containsAll(parked(study, candidate));
    }

    /** What works with the engine off and every switch off that has such a position. */
    private static Set<String> parked(Study study, Candidate candidate) throws UntoldStory {
        Map<String, String> off = new TreeMap<>();
        candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(lever -> lever.stated() && lever.positions().contains(OFF))
                .forEach(lever -> off.put(lever.name(), OFF));
        return Timeline.quick(engineOff(study), candidate.with(off)).normal().working();
    }

    private static Study engineOff(Study study) {
        Study.Aircraft aircraft = study.aircraft();
        return new Study(
                study.id(),
                study.heading(),
                new Study.Aircraft(
                        aircraft.nominalVolts(),
                        aircraft.loads(),
                        aircraft.engine(),
                        aircraft.phases().stream()
                                .map(phase -> new Phase(phase.name(), phase.seconds(), 0, true))
                                .toList(),
                        aircraft.zones(),
                        aircraft.moveSeconds()),
                study.goals(),
                study.candidates());
    }

    /** Whether no more is shown to the pilot with nothing wrong than in the drawings. */
    public boolean isQuiet(Scrutiny look) {
        return look.normal().cuesShowing().size() <= showing;
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
