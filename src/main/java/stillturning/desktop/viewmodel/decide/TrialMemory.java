package stillturning.desktop.viewmodel.decide;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import stillturning.assess.front.TrialResult;

/**
 * What came of layouts that were looked at, so that another search goes on from there. It holds as
 * long as the study stays the same. May be asked by several threads at once.
 */
final class TrialMemory {

    private final Map<String, TrialResult> trials = new ConcurrentHashMap<>();
    private String fingerprint = "";

    /** Forgets what it knows unless it is of these texts. */
    synchronized void isOf(String texts) {
        if (!fingerprint.equals(texts)) {
            fingerprint = texts;
            trials.clear();
        }
    }

    Optional<TrialResult> known(String way) {
        return Optional.ofNullable(trials.get(way));
    }

    void done(String way, TrialResult trial) {
        trials.put(way, trial);
    }

    /** How many layouts it knows. */
    int size() {
        return trials.size();
    }
}
