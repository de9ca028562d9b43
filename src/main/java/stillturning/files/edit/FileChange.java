package stillturning.files.edit;

import java.util.List;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.YamlEdit;

/**
 * Something done to one file, worked out and not yet made.
 *
 * @param file name of the file, with ending
 * @param name what a person calls it: {@code Add breaker}
 * @param before the file that it was worked out on
 * @param edits one after the other
 * @param after the file with all of them
 * @param parts names of the parts that it is about
 * @param also what it does beside what its name says, a sentence each
 */
public record FileChange(
        String file,
        String name,
        YamlDocument before,
        List<YamlEdit> edits,
        YamlDocument after,
        List<String> parts,
        List<String> also) {
    public FileChange {
        edits = List.copyOf(edits);
        parts = List.copyOf(parts);
        also = List.copyOf(also);
    }

    /** The same under another name. */
    FileChange named(String other) {
        return new FileChange(file, other, before, edits, after, parts, also);
    }
}
