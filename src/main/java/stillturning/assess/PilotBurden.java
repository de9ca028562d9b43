package stillturning.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Procedure;

/**
 * What a layout asks of its pilot: procedures that he has to know, act by act.
 *
 * @param tasks the drill first, then the procedures in the candidate's order; what works by itself
 *     is none of them
 */
public record PilotBurden(List<Task> tasks) {

    /** An act due sooner than this is done by heart (s). Common practice, no published source. */
    public static final double URGENT_SECONDS = 30;

    /**
     * One thing to do.
     *
     * @param when cues that ask for it; none for the drill
     * @param acts what is moved, switched off or pressed, each once
     * @param dueSeconds from the cue to the first act (s); infinite for the drill, which the pilot
     *     begins himself
     */
    public record Task(String name, List<String> when, List<String> acts, double dueSeconds) {
        public Task {
            when = List.copyOf(when);
            acts = List.copyOf(acts);
        }

        /** Whether there is no time to read it from a card. */
        public boolean byHeart() {
            return dueSeconds <= URGENT_SECONDS;
        }
    }

    public PilotBurden {
        tasks = List.copyOf(tasks);
    }

    static PilotBurden of(Candidate candidate) {
        List<Task> tasks = new ArrayList<>();
        List<String> drill = moves(changed(candidate));
        if (!drill.isEmpty()) {
            tasks.add(new Task("master off", List.of(), drill, Double.POSITIVE_INFINITY));
        }
        candidate.cockpit().procedures().stream()
                .filter(p -> p.execution().automatic().isEmpty())
                .map(p -> new Task(p.name(), p.when(), acts(p), p.responseSeconds()))
                .forEach(tasks::add);
        return new PilotBurden(tasks);
    }

    private static List<String> acts(Procedure procedure) {
        List<String> acts = new ArrayList<>(moves(procedure.moves()));
        procedure.sheds().forEach(load -> acts.add(load + " off"));
        if (procedure.execution().pressesStarter()) {
            acts.add("press the starter");
        }
        return acts;
    }

    private static Map<String, String> changed(Candidate candidate) {
        Map<String, String> moves = new LinkedHashMap<>(candidate.cockpit().masterOff());
        moves.entrySet().removeAll(candidate.cockpit().flight().entrySet());
        return moves;
    }

    private static List<String> moves(Map<String, String> moves) {
        return moves.entrySet().stream().map(m -> m.getKey() + " " + m.getValue()).toList();
    }

    /** Acts that have to be known by heart, each once, in however many procedures it stands. */
    public Set<String> byHeart() {
        return acts(Task::byHeart);
    }

    /** Acts that can always be read from a card, each once. */
    public Set<String> withTimeInHand() {
        Set<String> acts = acts(task -> !task.byHeart());
        acts.removeAll(byHeart());
        return acts;
    }

    /** Cues after which something has to be done by heart. */
    public Set<String> cuesToKnow() {
        Set<String> cues = new LinkedHashSet<>();
        tasks.stream().filter(Task::byHeart).forEach(t -> cues.addAll(t.when));
        return cues;
    }

    private Set<String> acts(Predicate<Task> wanted) {
        Set<String> acts = new LinkedHashSet<>();
        tasks.stream().filter(wanted).forEach(t -> acts.addAll(t.acts));
        return acts;
    }
}
