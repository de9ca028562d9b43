package stillturning.files;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.entry.LoadEntry;
import stillturning.model.LoadNeed;
import stillturning.model.Study;

/**
 * What a study's file says, checked: everything that its candidates share.
 *
 * @param written every load of the file, whether or not it could be made
 */
record Frame(
        Study.Heading heading,
        Study.Aircraft aircraft,
        Study.Goals goals,
        Zones zones,
        Map<String, LoadEntry> written) {

    Optional<LoadNeed> load(String id) {
        return aircraft.load(id);
    }

    Set<String> loadNames() {
        return written.keySet();
    }

    boolean needsForEngine(String load) {
        return aircraft.engine().logic().loads().contains(load);
    }
}
