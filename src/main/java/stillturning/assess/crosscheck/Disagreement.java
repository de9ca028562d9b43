package stillturning.assess.crosscheck;

import java.util.List;
import java.util.Optional;
import stillturning.story.StoryEvent;

/**
 * A part without which a candidate's shape and the time line do not say the same of the engine: a
 * model error to look at, unless what both openly treat differently explains it.
 *
 * @param part the part removed with all that it does; empty for nothing
 * @param structureSays whether by its shape the engine still has what it needs
 * @param structureEvidence the ways that are left, part by part, or why there are too few
 * @param storySays whether by its story the engine runs, once everybody has done what is planned
 * @param storyEvidence what happens in the story, in order of time
 * @param because the fewest things treated differently that, taken away together, make both say the
 *     same; empty where none of them explains it
 */
public record Disagreement(
        Optional<String> part,
        boolean structureSays,
        String structureEvidence,
        boolean storySays,
        List<StoryEvent> storyEvidence,
        List<StoryOnlyFact> because) {

    public Disagreement {
        storyEvidence = List.copyOf(storyEvidence);
        because = List.copyOf(because);
    }

    /** Whether something that both openly treat differently explains it. */
    public boolean explained() {
        return !because.isEmpty();
    }
}
