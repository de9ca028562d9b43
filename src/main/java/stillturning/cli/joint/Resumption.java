package stillturning.cli.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.cli.terminal.ResumeFile;
import stillturning.dossier.Kept;
import stillturning.reliability.cutset.SearchBlock;
import stillturning.reliability.cutset.Searched;

/**
 * The file in which finished blocks of a search are kept, so that work which was called off goes on
 * where it stopped.
 */
final class Resumption implements Kept, AutoCloseable {

    private static final String KIND = "stillturning search";

    private final ResumeFile<ResumptionFile> file;
    private final String fingerprint;
    private final Map<String, Map<SearchBlock, Searched>> blocks = new TreeMap<>();

    /** What stands in the file; blocks by candidate. */
    record ResumptionFile(String kind, String fingerprint, Map<String, List<Searched>> candidates)
            implements ResumeFile.ResumableWork {}

    private Resumption(ResumeFile<ResumptionFile> file, String fingerprint) {
        this.file = file;
        this.fingerprint = fingerprint;
    }

    /**
     * Opens the file, or makes it; no other search can have it until this one is closed.
     *
     * @param fingerprint of the study's files
     * @throws Refusal if it belongs to something else, another search has it, or it cannot be read
     *     or written
     */
    static Resumption of(String written, String fingerprint, CommandContext context) {
        ResumptionFile nothing = new ResumptionFile(KIND, fingerprint, Map.of());
        Resumption resumption =
                new Resumption(
                        ResumeFile.of(written, ResumptionFile.class, nothing, context),
                        fingerprint);
        resumption
                .file
                .before()
                .ifPresent(
                        kept ->
                                kept.candidates.forEach(
                                        (candidate, done) ->
                                                done.forEach(s -> resumption.keep(candidate, s))));
        return resumption;
    }

    /** Lets other searches have the file. */
    @Override
    public void close() {
        file.close();
    }

    /**
     * What the file knows of a block.
     *
     * @throws Refusal if what it holds cannot be of this candidate
     */
    @Override
    public synchronized Optional<Searched> known(String events, int count, SearchBlock block) {
        Optional<Searched> known =
                Optional.ofNullable(blocks.getOrDefault(events, Map.of()).get(block));
        known.ifPresent(
                searched -> {
                    if (!fits(searched, count)) {
                        throw file.foreign();
                    }
                });
        return known;
    }

    private static boolean fits(Searched searched, int events) {
        Stream<List<Integer>> sets =
                Stream.concat(searched.cuts().stream(), searched.untold().stream());
        return searched.asked() >= 0
                && sets.allMatch(
                        set -> isSet(set, events) && set.size() == searched.block().order())
                && searched.healings().stream()
                        .allMatch(h -> isSet(h.set(), events) && isSet(List.of(h.by()), events));
    }

    private static boolean isSet(List<Integer> set, int events) {
        return !set.isEmpty()
                && set.get(0) >= 0
                && set.get(set.size() - 1) < events
                && set.stream().sorted().distinct().toList().equals(set);
    }

    /** A block is done; the file is written now and then. */
    @Override
    public synchronized void done(String events, Searched searched) {
        keep(events, searched);
        if (file.isDue()) {
            save();
        }
    }

    private void keep(String candidate, Searched searched) {
        blocks.computeIfAbsent(
                        candidate,
                        c ->
                                new TreeMap<>(
                                        Comparator.comparingInt(SearchBlock::order)
                                                .thenComparingInt(SearchBlock::first)))
                .put(searched.block(), searched);
    }

    /**
     * Writes the file, so that at every instant either the old or the new one is there.
     *
     * @throws Refusal if it cannot be written
     */
    synchronized void save() {
        Map<String, List<Searched>> candidates = new TreeMap<>();
        blocks.forEach((id, done) -> candidates.put(id, new ArrayList<>(done.values())));
        file.save(new ResumptionFile(KIND, fingerprint, candidates));
    }
}
