package stillturning.yaml.edit;

import stillturning.yaml.Splice;
import stillturning.yaml.YamlDocument;

/**
 * A document after an edit.
 *
 * @param splice what changed; {@code document.with(splice.inverse())} is the document before it
 */
public record Edited(YamlDocument document, Splice splice) {}
