package stillturning.desktop.viewmodel.record;

import java.util.List;

/** Blanks that are filled in together, under one title. */
public record EntryGroup(String title, List<Entry> entries) {
    public EntryGroup {
        entries = List.copyOf(entries);
    }

    /** How many are filled in. */
    public long filled() {
        return entries.stream().filter(e -> !e.written().get().isBlank()).count();
    }

    /** How many hold a mistake. */
    public long mistakes() {
        return entries.stream().filter(e -> !e.mistake().get().isEmpty()).count();
    }
}
