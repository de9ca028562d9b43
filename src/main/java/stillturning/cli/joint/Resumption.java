package stillturning.cli.joint;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.Kept;
import stillturning.reliability.cutset.SearchBlock;
import stillturning.reliability.cutset.Searched;
import stillturning.yaml.disk.FileClaim;
import stillturning.yaml.disk.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The file in which finished blocks of a search are kept, so that work which was called off goes on
 * where it stopped.
 */
final class Resumption implements Kept, AutoCloseable {

    private static final String KIND = "stillturning search";
    private static final Duration BETWEEN = Duration.ofSeconds(5);

    /** Such files are far smaller (bytes). */
    private static final long LARGEST = 200_000_000;

    private final Path file;
    private final String shown;
    private final String fingerprint;
    private final FileClaim claim;
    private final Map<String, Map<SearchBlock, Searched>> blocks = new TreeMap<>();
    private long savedNanos = System.nanoTime();

    /** What stands in the file; blocks by candidate. */
    record Written(String kind, String fingerprint, Map<String, List<Searched>> candidates) {}

    private Resumption(Path file, String shown, String fingerprint, FileClaim claim) {
        this.file = file;
        this.shown = shown;
        this.fingerprint = fingerprint;
        this.claim = claim;
    }

    /**
     * Opens the file, or makes it; no other search can have it until this one is closed.
     *
     * @param fingerprint of the study's files
     * @throws Refusal if it belongs to something else, another search has it, or it cannot be read
     *     or written
     */
    static Resumption of(String written, String fingerprint, CommandContext context) {
        Path file = context.path(written);
        String shown = context.shown(file);
        Resumption resumption = new Resumption(file, shown, fingerprint, claim(file, shown));
        boolean open = false;
        try {
            if (Files.exists(file)) {
                resumption.read();
            }
            resumption.save();
            open = true;
            return resumption;
        } finally {
            if (!open) {
                resumption.close();
            }
        }
    }

    private static FileClaim claim(Path file, String shown) {
        try {
            return FileClaim.on(file.resolveSibling("." + file.getFileName() + ".lock"))
                    .orElseThrow(
                            () ->
                                    new Refusal(
                                            shown
                                                    + " is written by another search that runs now;"
                                                    + " wait until it ends, or name another file"
                                                    + " with --resume"));
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
    }

    /** Lets other searches have the file. */
    @Override
    public void close() {
        try {
            claim.end();
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
    }

    private void read() {
        Written kept = kept();
        if (!kept.kind.equals(KIND)) {
            throw new Refusal(foreign());
        }
        if (!kept.fingerprint.equals(fingerprint)) {
            throw new Refusal(
                    shown
                            + " belongs to other inputs: to a study with the fingerprint "
                            + shortly(kept.fingerprint)
                            + " and not "
                            + shortly(fingerprint)
                            + "; name another file with --resume, or remove it");
        }
        kept.candidates.forEach(
                (candidate, done) -> done.forEach(searched -> keep(candidate, searched)));
    }

    private Written kept() {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                throw new Refusal(foreign());
            }
            return JsonMapper.builder()
                    .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build()
                    .readValue(Files.readString(file), Written.class);
        } catch (IOException | JacksonException e) {
            throw new Refusal(foreign());
        }
    }

    private String foreign() {
        return shown
                + " is there already and holds no search of this program; name another file with"
                + " --resume";
    }

    private static String shortly(String fingerprint) {
        return fingerprint.substring(0, Math.min(12, fingerprint.length()));
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
                        throw new Refusal(foreign());
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
        if (System.nanoTime() - savedNanos > BETWEEN.toNanos()) {
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
        String text =
                JsonMapper.builder()
                        .build()
                        .writeValueAsString(new Written(KIND, fingerprint, candidates));
        try {
            WholeFile.replace(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
        savedNanos = System.nanoTime();
    }
}
