package stillturning.files;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import stillturning.yaml.YamlDocument;

/**
 * Readings of candidates as they are written, kept as long as nothing that they rest on changes.
 */
final class KeptReadings {

    /** A reading and all that it rests on. */
    private record Kept(
            YamlDocument study, Set<String> names, YamlDocument candidate, ReadCandidate reading) {

        @SuppressWarnings("ReferenceEquality") // an equal text in another document has other places
        boolean restsOn(YamlDocument otherStudy, Set<String> otherNames, YamlDocument other) {
            return study == otherStudy && candidate == other && names.equals(otherNames);
        }
    }

    private final Map<String, Kept> byCandidate = new HashMap<>();

    /** The reading of a candidate beside others of these names; read now if it is not kept. */
    ReadCandidate of(
            YamlDocument study,
            Set<String> names,
            StudyFolder.File file,
            Supplier<ReadCandidate> reading) {
        Optional<ReadCandidate> kept = kept(study, names, file);
        if (kept.isPresent()) {
            return kept.get();
        }
        ReadCandidate made = reading.get();
        synchronized (this) {
            byCandidate.keySet().retainAll(names);
            byCandidate.put(file.id(), new Kept(study, names, file.document(), made));
        }
        return made;
    }

    private synchronized Optional<ReadCandidate> kept(
            YamlDocument study, Set<String> names, StudyFolder.File file) {
        return Optional.ofNullable(byCandidate.get(file.id()))
                .filter(k -> k.restsOn(study, names, file.document()))
                .map(Kept::reading);
    }
}
