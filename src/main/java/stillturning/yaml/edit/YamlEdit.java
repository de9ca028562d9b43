package stillturning.yaml.edit;

import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/**
 * A change to a document, as a value. Everything that it does not concern stays as the person wrote
 * it: comments, order, blank lines, quotes. Paths are those of {@link DocumentPlaces}.
 */
public sealed interface YamlEdit {

    /** Puts a value in the place of the one at a path. */
    record Set(String path, YamlValue value) implements YamlEdit {}

    /** Adds a key behind the others of the mapping at a path. */
    record AddField(String mapping, String key, YamlValue value) implements YamlEdit {}

    /** Adds an item behind the others of the list at a path. */
    record AddItem(String list, YamlValue value) implements YamlEdit {}

    /**
     * Takes a key with its value, or an item of a list, out, with the comments on its own lines.
     */
    record Remove(String path) implements YamlEdit {}

    /** Gives the key at a path another name. */
    record Rename(String path, String name) implements YamlEdit {}

    /**
     * Makes the change.
     *
     * @throws EditRefused if the place does not exist, or if the result would not read back as
     *     exactly the intended change
     */
    default Edited on(YamlDocument document) throws EditRefused {
        return new Editor(document).make(this);
    }
}
