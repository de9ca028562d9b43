package stillturning.desktop.draft;

import java.util.List;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.YamlEdit;

/** One thing done to one file of a study, as a value. Files go by their names with ending. */
public sealed interface Step {

    /** The file that it is done to. */
    String file();

    /** One value, key or item changed; everything else stays as it is written. */
    record Edit(String file, YamlEdit edit) implements Step {}

    /**
     * Several edits, one after the other. Where the file is still what they were worked out on, the
     * result is taken; elsewhere they are made again.
     */
    record Edits(String file, YamlDocument before, List<YamlEdit> edits, YamlDocument after)
            implements Step {
        public Edits {
            edits = List.copyOf(edits);
        }
    }

    /** Another text in the place of the whole one. */
    record Replace(String file, String text) implements Step {}

    /** The text as somebody types it; what is typed without a pause is undone at once. */
    record Typed(String file, String text) implements Step {}

    /** A file that was not there. */
    record Create(String file, String text) implements Step {}

    /** A file that is to be there no longer. */
    record Delete(String file) implements Step {}

    /** A file under another name. */
    record Rename(String file, String to) implements Step {}
}
