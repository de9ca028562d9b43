package stillturning.desktop.viewmodel.decide;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import stillturning.assess.front.TrialResult;

/**
 * What came of layouts that were looked at, so that another search goes on from there. It holds as
 * long as the study stays the same. May be asked by several threads at once.
 */
final class TrialMemory {

    private String fingerprint = "";
    private Map<String, TrialResult> trials = new ConcurrentHashMap<>();

    /**
     * What is known of a study with these texts, by the way to each layout, to be added to. A
     * search of other texts that still runs goes on with a map of its own.
     */
    synchronized Map<String, TrialResult> of(String texts) {
        if (!fingerprint.equals(texts)) {
            fingerprint = texts;
            trials = new ConcurrentHashMap<>();
        }
        return trials;
    }

    /** How many layouts it knows. */
    synchronized int size() {
        return trials.size();
    }
}
