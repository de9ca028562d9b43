package stillturning.files.edit;

import java.util.ArrayList;
import java.util.List;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

/** Writes edits into one file, and remembers them as a change. */
public final class FileEdits {

    private final String file;
    private final YamlDocument before;
    private final List<YamlEdit> edits = new ArrayList<>();
    private YamlDocument now;

    /**
     * @param file name of the document's file, with ending
     * @throws ChangeRefused if the document cannot be read
     */
    public FileEdits(String file, YamlDocument document) throws ChangeRefused {
        this.file = file;
        this.before = document;
        this.now = document;
        if (!document.problems().isEmpty()) {
            throw ChangeRefused.unreadable(file, document.problems().get(0));
        }
    }

    /** The document with all edits so far. */
    public YamlDocument document() {
        return now;
    }

    /** Whether something stands at a path. */
    public boolean has(String path) {
        return now.places().value(path).isPresent();
    }

    private void make(YamlEdit edit) throws ChangeRefused {
        try {
            now = edit.on(now).document();
            edits.add(edit);
        } catch (EditRefused refused) {
            throw ChangeRefused.by(file, refused);
        }
    }

    /** Puts a value under a key, in the place of the one there or behind the others. */
    public void put(String mapping, String key, YamlValue value) throws ChangeRefused {
        String path = DocumentPlaces.under(mapping, key);
        if (has(path)) {
            make(new YamlEdit.Set(path, value));
        } else if (has(mapping)) {
            make(new YamlEdit.AddField(mapping, key, value));
        } else {
            int last = mapping.lastIndexOf('.');
            put(
                    last < 0 ? "" : mapping.substring(0, last),
                    mapping.substring(last + 1),
                    YamlValue.fields(new YamlValue.Field(key, value)));
        }
    }

    /** Writes another text in the place of what stands at a path. */
    public void set(String path, String text) throws ChangeRefused {
        make(new YamlEdit.Set(path, YamlValue.text(text)));
    }

    /** Gives the key at a path another name. */
    public void rename(String path, String key) throws ChangeRefused {
        make(new YamlEdit.Rename(path, key));
    }

    /** Takes what stands at a path out. */
    public void remove(String path) throws ChangeRefused {
        make(new YamlEdit.Remove(path));
    }

    /** Adds an item to a list that may not be there yet. */
    public void addItem(String list, String text) throws ChangeRefused {
        if (has(list)) {
            make(new YamlEdit.AddItem(list, YamlValue.text(text)));
        } else {
            put("", list, YamlValue.texts(text));
        }
    }

    /** Removes items from a list, by index; a list that would be empty goes with them. */
    public void removeItems(String list, List<Integer> indices) throws ChangeRefused {
        for (int i = indices.size() - 1; i >= 0; i--) {
            remove(DocumentPlaces.item(list, indices.get(i)));
        }
    }

    /** All of it as a change that is about these parts. */
    public FileChange change(String name, String... parts) {
        return change(name, List.of(parts), List.of());
    }

    /** All of it as a change. */
    public FileChange change(String name, List<String> parts, List<String> also) {
        return new FileChange(file, name, before, edits, now, parts, also);
    }
}
