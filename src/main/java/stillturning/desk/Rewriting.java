package stillturning.desk;

import java.util.Optional;
import stillturning.yaml.YamlDocument;

/** Puts another text into a file of the open study, as one change that can be undone. */
public interface Rewriting {

    /**
     * Makes the change.
     *
     * @param name what undo calls it
     * @param before the file as it was when the change was worked out
     * @param after the file as it shall be
     * @return why nothing was changed, and what to do; empty if it was made
     */
    Optional<String> rewrite(String name, YamlDocument before, YamlDocument after);
}
