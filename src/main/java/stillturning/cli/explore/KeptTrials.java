package stillturning.cli.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.front.TrialResult;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.cli.terminal.ResumeFile;

/** The file in which is kept what came of every layout that was looked at. */
final class KeptTrials implements AutoCloseable {

    private static final String KIND = "stillturning exploration";

    private final ResumeFile<TrialsFile> file;
    private final String fingerprint;
    private final Map<String, TrialResult> before;
    private final List<KeptTrial> looked = new ArrayList<>();

    /**
     * What came of one layout.
     *
     * @param way the changes that led to it
     * @param missed what it misses; empty if nothing
     * @param tried false if it cannot be on the front
     * @param values of one that misses nothing
     */
    record KeptTrial(
            String way,
            String missed,
            boolean tried,
            double shortfall,
            List<Double> values,
            List<String> evidence) {

        static KeptTrial of(String way, TrialResult trial) {
            double shortfall = trial.misses().isPresent() ? trial.shortfall() : 0;
            return new KeptTrial(
                    way,
                    trial.misses().orElse(""),
                    trial.tried(),
                    shortfall,
                    trial.worth().orElse(List.of()),
                    trial.evidence());
        }

        /** Whether a search by so many criteria can have found this. */
        private boolean isOf(int criteria) {
            boolean measured = tried && missed.isEmpty();
            return values.size() == (measured ? criteria : 0)
                    && values.stream().noneMatch(v -> v.isNaN())
                    && shortfall >= 0;
        }

        TrialResult trial() {
            if (!tried) {
                return new TrialResult.Outdone(evidence);
            }
            return missed.isEmpty()
                    ? new TrialResult.Met(values, evidence)
                    : new TrialResult.Missed(missed, shortfall, evidence);
        }
    }

    /** What stands in the file. */
    record TrialsFile(String kind, String fingerprint, List<KeptTrial> looked)
            implements ResumeFile.ResumableWork {

        /** What came of each layout by the way to it; nothing if some of it can come of none. */
        Optional<Map<String, TrialResult>> trials(int criteria) {
            Map<String, TrialResult> trials = new HashMap<>();
            for (KeptTrial one : looked) {
                if (!one.isOf(criteria)) {
                    return Optional.empty();
                }
                trials.put(one.way, one.trial());
            }
            return Optional.of(trials);
        }
    }

    private KeptTrials(
            ResumeFile<TrialsFile> file, String fingerprint, Map<String, TrialResult> before) {
        this.file = file;
        this.fingerprint = fingerprint;
        this.before = Map.copyOf(before);
    }

    /**
     * Opens the file, or makes it.
     *
     * @param fingerprint of the study's files and of what is asked
     * @param criteria how many values each layout is compared by
     * @throws Refusal if it belongs to something else, another command has it, or it cannot be read
     *     or written
     */
    static KeptTrials of(String written, String fingerprint, int criteria, CommandContext context) {
        TrialsFile nothing = new TrialsFile(KIND, fingerprint, List.of());
        ResumeFile<TrialsFile> file = ResumeFile.of(written, TrialsFile.class, nothing, context);
        Map<String, TrialResult> before = new HashMap<>();
        if (file.before().isPresent()) {
            Optional<Map<String, TrialResult>> trials = file.before().get().trials(criteria);
            if (trials.isEmpty()) {
                file.close();
                throw file.foreign();
            }
            before.putAll(trials.get());
        }
        return new KeptTrials(file, fingerprint, before);
    }

    Optional<TrialResult> known(String way) {
        return Optional.ofNullable(before.get(way));
    }

    synchronized void done(String way, TrialResult trial) {
        looked.add(KeptTrial.of(way, trial));
        if (file.isDue()) {
            save();
        }
    }

    /** What an earlier search found and this one has not come to yet stays in the file. */
    synchronized void save() {
        Map<String, TrialResult> all = new HashMap<>(before);
        looked.forEach(one -> all.remove(one.way));
        List<KeptTrial> written = new ArrayList<>(looked);
        all.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> written.add(KeptTrial.of(e.getKey(), e.getValue())));
        file.save(new TrialsFile(KIND, fingerprint, written));
    }

    @Override
    public void close() {
        file.close();
    }
}
