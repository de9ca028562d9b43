package stillturning.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.PartEntry.BreakerEntry;
import stillturning.files.entry.PartEntry.ContactorEntry;
import stillturning.files.entry.PartEntry.FuseEntry;
import stillturning.files.entry.PartEntry.SwitchEntry;
import stillturning.yaml.notation.Given;

/** What a candidate's contacts and protectors are rated for, which no story asks. */
final class Ratings {

    private final Map<String, Double> contactAmps = new LinkedHashMap<>();
    private final Map<String, Double> interruptAmps = new LinkedHashMap<>();

    /** Notes the ratings of a complete entry. */
    void note(String id, PartEntry entry) {
        if (entry instanceof SwitchEntry lever) {
            put(contactAmps, id, lever.rating());
        } else if (entry instanceof ContactorEntry contactor) {
            put(contactAmps, id, contactor.rating());
        } else if (entry instanceof FuseEntry fuse) {
            put(interruptAmps, id, fuse.interrupts());
        } else if (entry instanceof BreakerEntry breaker) {
            put(interruptAmps, id, breaker.interrupts());
        }
    }

    private static void put(Map<String, Double> into, String id, Optional<Given> value) {
        value.ifPresent(v -> into.put(id, v.quantity().si()));
    }

    /** Rating of switches and contactors (A), by part. */
    Map<String, Double> contactAmps() {
        return contactAmps;
    }

    /** Largest current that a protector interrupts (A), by part. */
    Map<String, Double> interruptAmps() {
        return interruptAmps;
    }
}
