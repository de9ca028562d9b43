package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

/**
 * What can be seen of a study's files without reading them: it changes when somebody writes one.
 *
 * @param files time and length by name of file
 */
public record FolderStamp(Map<String, String> files) {

    private static final FolderStamp UNREADABLE = new FolderStamp(Map.of());

    public FolderStamp {
        files = Map.copyOf(files);
    }

    /** The stamp of a folder; that of an empty one if it cannot be read. */
    public static FolderStamp of(Path folder) {
        try {
            return new FolderStamp(Listing.stamp(folder));
        } catch (IOException unreadable) {
            return UNREADABLE;
        }
    }
}
