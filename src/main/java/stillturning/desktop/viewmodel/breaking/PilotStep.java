package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.report.Spoken;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/**
 * A procedure within a story.
 *
 * @param does what it moves and sheds, in words
 * @param automatic what carries it out by itself; empty for the pilot
 * @param calledSeconds when the first of its cues shows (s); empty if none does
 * @param dueSeconds when it is due with this pilot (s); infinite if he never does anything; empty
 *     if nothing calls for it
 * @param doneSeconds when it was carried out (s); empty if it was not
 */
public record PilotStep(
        String procedure,
        String does,
        Optional<String> automatic,
        OptionalDouble calledSeconds,
        OptionalDouble dueSeconds,
        OptionalDouble doneSeconds) {

    /** How it stands at a time. */
    public enum StepState {
        /** Nothing calls for it yet. */
        NOT_CALLED_FOR("not called for"),
        /** A cue shows, and its time has not come. */
        DUE("falls due"),
        DONE("done"),
        /** Its time came, and the cue had gone out or there was nothing left to move. */
        NEEDLESS("not needed any more"),
        /** A cue shows, and the pilot does nothing. */
        LEFT_UNDONE("left undone");

        private final String words;

        StepState(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Every procedure of a candidate, in the order in which a story calls for them. */
    public static List<PilotStep> of(Candidate candidate, Story story) {
        List<PilotStep> steps = new ArrayList<>();
        candidate
                .cockpit()
                .procedures()
                .forEach(p -> steps.add(of(p, story, new Spoken(candidate))));
        steps.sort(
                (one, other) ->
                        Double.compare(
                                one.calledSeconds.orElse(Double.POSITIVE_INFINITY),
                                other.calledSeconds.orElse(Double.POSITIVE_INFINITY)));
        return List.copyOf(steps);
    }

    private static PilotStep of(Procedure procedure, Story story, Spoken spoken) {
        Optional<String> automatic = procedure.execution().automatic();
        OptionalDouble called =
                story.of(Kind.CUE).stream()
                        .filter(cue -> procedure.when().contains(cue.part()))
                        .mapToDouble(StoryEvent::seconds)
                        .min();
        Kind doing = automatic.isPresent() ? Kind.AUTOMATIC : Kind.PILOT;
        OptionalDouble done =
                story.of(doing).stream()
                        .filter(h -> h.part().equals(procedure.name()))
                        .mapToDouble(StoryEvent::seconds)
                        .min();
        double planned = procedure.responseSeconds();
        double response = automatic.isPresent() ? planned : story.pilot().responseSeconds(planned);
        OptionalDouble due =
                called.isPresent()
                        ? OptionalDouble.of(done.orElse(called.getAsDouble() + response))
                        : OptionalDouble.empty();
        return new PilotStep(
                procedure.name(), words(procedure, spoken), automatic, called, due, done);
    }

    private static String words(Procedure procedure, Spoken spoken) {
        List<String> words = new ArrayList<>();
        procedure.moves().forEach((lever, position) -> words.add(spoken.move(lever, position)));
        if (!procedure.sheds().isEmpty()) {
            words.add(
                    "switch off "
                            + String.join(
                                    ", ", procedure.sheds().stream().map(spoken::of).toList()));
        }
        return String.join("; ", words);
    }

    /** How it stands at a time (s). */
    public StepState at(double seconds) {
        if (calledSeconds.isEmpty() || seconds < calledSeconds.getAsDouble()) {
            return StepState.NOT_CALLED_FOR;
        } else if (doneSeconds.isPresent()) {
            return seconds < doneSeconds.getAsDouble() ? StepState.DUE : StepState.DONE;
        } else if (Double.isInfinite(dueSeconds.getAsDouble())) {
            return StepState.LEFT_UNDONE;
        }
        return seconds < dueSeconds.getAsDouble() ? StepState.DUE : StepState.NEEDLESS;
    }
}
