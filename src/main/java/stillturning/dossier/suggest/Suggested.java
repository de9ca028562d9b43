package stillturning.dossier.suggest;

import java.util.List;
import stillturning.assess.suggest.Suggestions;
import stillturning.files.move.Drawn;

/**
 * What was found, and how it is drawn.
 *
 * @param drawings one for each suggestion, in their order; those that are outweighed last
 */
public record Suggested(Suggestions suggestions, List<Drawn> drawings) {
    public Suggested {
        drawings = List.copyOf(drawings);
    }

    /** The same with what is outweighed after the others. */
    public Suggested withOutweighed() {
        return new Suggested(suggestions.withOutweighed(), drawings);
    }
}
