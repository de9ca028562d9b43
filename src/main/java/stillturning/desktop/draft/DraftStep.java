package stillturning.desktop.draft;

import java.util.List;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.YamlEdit;

/** One thing done to one file of a study, as a value. Files go by their names with ending. */
public sealed interface DraftStep {

    /** The file that it is done to. */
    String file();

    /**
     * The files after it.
     *
     * @throws ChangeRefused if it cannot be done
     */
    EditedFiles on(EditedFiles files) throws ChangeRefused;

    /** One value, key or item changed; everything else stays as it is written. */
    record Edit(String file, YamlEdit edit) implements DraftStep {
        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.edited(file, List.of(edit));
        }
    }

    /**
     * Several edits, one after the other. Where the file is still what they were worked out on, the
     * result is taken; elsewhere they are made again.
     */
    record Edits(String file, YamlDocument before, List<YamlEdit> edits, YamlDocument after)
            implements DraftStep {
        public Edits {
            edits = List.copyOf(edits);
        }

        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.edited(this);
        }
    }

    /**
     * Another text in the place of the whole one.
     *
     * @param typed whether somebody types it; what is typed without a pause is undone at once
     */
    record Replace(String file, String text, boolean typed) implements DraftStep {
        public Replace(String file, String text) {
            this(file, text, false);
        }

        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.replaced(file, text);
        }
    }

    /** A file that was not there. */
    record Create(String file, String text) implements DraftStep {
        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.created(file, text);
        }
    }

    /** A file that is to be there no longer. */
    record Delete(String file) implements DraftStep {
        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.deleted(file);
        }
    }

    /** A file under another name. */
    record RenameFile(String file, String to) implements DraftStep {
        @Override
        public EditedFiles on(EditedFiles files) throws ChangeRefused {
            return files.renamed(file, to);
        }
    }
}
