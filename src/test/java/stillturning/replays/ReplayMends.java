package stillturning.replays;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.dossier.suggest.Aim;
import stillturning.dossier.suggest.HiddenThenOne;
import stillturning.dossier.suggest.Suggest;
import stillturning.dossier.suggest.Suggested;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.failure.Failure;
import stillturning.replays.Replay.Replayed;
import stillturning.replays.ReplayFile.Mend;
import stillturning.report.suggest.SuggestionWords;
import stillturning.story.UntoldStory;

/** What is suggested for a layout that has failed, and the reported flight flown with it. */
final class ReplayMends {

    /** Among so many the change has to be. */
    static final int FIRST = 3;

    /** More are looked at by nobody in a test. */
    private static final int MOST = 120;

    /** With the change made, the flight is flown so often. */
    private static final int TIMES = 16;

    /** A course that is rarer than one in so many is flown as often as without the change. */
    private static final int RARE = 4;

    private static final Map<String, ReplayMends> DONE = new ConcurrentHashMap<>();

    private final Replay replay;
    private final Suggested suggested;
    private final int place;
    private final Flown flown;

    /**
     * Reported flights with the change made.
     *
     * @param ends in how many the engine is lost; -1 where nothing is found
     */
    private record Flown(int times, int ends) {}

    private ReplayMends(Replay replay, Suggested suggested, int place, Flown flown) {
        this.replay = replay;
        this.suggested = suggested;
        this.place = place;
        this.flown = flown;
    }

    /** The likely layout with these moves made, in words, one after the other. */
    static Drawn drawn(Replay replay, List<String> moves) throws ChangeRefused {
        StudyReader reader = StudyReader.open(replay.folder());
        Drawn drawn = Drawn.of(reader, reader.study(Variation.NONE), replay.candidate());
        for (String words : moves) {
            drawn =
                    DrawnStep.all(drawn).stream()
                            .filter(step -> step.words().equals(words))
                            .findFirst()
                            .flatMap(DrawnStep::taken)
                            .orElseThrow(() -> new AssertionError(words));
        }
        return drawn;
    }

    /** Looked for once for every test that wants to know. */
    static ReplayMends of(Replay replay) {
        return DONE.computeIfAbsent(replay.id(), same -> work(replay));
    }

    private static ReplayMends work(Replay replay) {
        Mend mend = replay.file().mend().orElseThrow();
        try {
            Suggest suggest = Suggest.of(drawn(replay, List.of()));
            Suggested suggested = suggested(suggest, mend).withOutweighed();
            List<Suggestion> found = suggested.suggestions().found();
            int place =
                    IntStream.range(0, found.size())
                                    .filter(n -> found.get(n).left().isEmpty())
                                    .filter(n -> says(found.get(n), mend))
                                    .findFirst()
                                    .orElse(-1)
                            + 1;
            int times = times(replay);
            int ends = place == 0 ? -1 : ends(replay, suggested.drawings().get(place - 1), times);
            return new ReplayMends(replay, suggested, place, new Flown(times, ends));
        } catch (ChangeRefused | UntoldStory e) {
            throw new AssertionError(replay.id(), e);
        }
    }

    private static int times(Replay replay) {
        int before = Replayed.ended(replay.replayed().samples());
        return before * RARE <= Replay.SAMPLES ? Replay.SAMPLES : TIMES;
    }

    private static boolean says(Suggestion suggestion, Mend mend) {
        String words = SuggestionWords.moves(suggestion);
        return !mend.says().isEmpty() && mend.says().stream().allMatch(words::contains);
    }

    private static Suggested suggested(Suggest suggest, Mend mend) throws UntoldStory {
        SearchLimits limits = new SearchLimits(mend.moves(), MOST);
        Optional<Aim> aim = aim(suggest, mend);
        return aim.isPresent()
                ? suggest.mending(aim.get(), limits, SearchWatch.NOBODY)
                : suggest.mending(
                        Wanted.of(
                                suggest.before().singles().stream()
                                        .filter(v -> mend.failures().contains(v.failure().name()))
                                        .toList()),
                        limits,
                        SearchWatch.NOBODY);
    }

    private static Optional<Aim> aim(Suggest suggest, Mend mend) throws UntoldStory {
        if (mend.failures().size() == 2) {
            Map<String, Failure> names =
                    NamedFailures.everything(suggest.before().candidate()).stream()
                            .collect(Collectors.toMap(Failure::name, f -> f));
            Aim pair =
                    new HiddenThenOne(
                            requireNonNull(names.get(mend.failures().get(0))),
                            requireNonNull(names.get(mend.failures().get(1))));
            if (!suggest.isLeft(pair)) {
                throw new AssertionError(pair + " ends nothing");
            }
            return Optional.of(pair);
        }
        if (mend.finding().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                suggest.findings().stream()
                        .filter(aim -> mend.finding().stream().allMatch(aim.words()::contains))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new AssertionError(
                                                mend.finding()
                                                        + " is none of "
                                                        + suggest.findings().stream()
                                                                .map(Aim::words)
                                                                .toList())));
    }

    /** In how many of the reported flights the engine is lost with the change made. */
    private static int ends(Replay replay, Drawn changed, int times) {
        try {
            Path folder = Files.createTempDirectory("mended");
            try {
                Files.writeString(folder.resolve("study.yaml"), changed.studyText().text());
                Files.writeString(
                        folder.resolve(replay.candidate() + ".yaml"), changed.text().text());
                Replay again = new Replay(replay.id(), folder, replay.file());
                return Replayed.ended(again.played(replay.file().course().orElseThrow(), times));
            } finally {
                try (Stream<Path> files = Files.walk(folder)) {
                    for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The place of the change that is looked for, where what loses the engine in more ways than
     * before is listed last; 0 for nowhere.
     */
    int place() {
        return place;
    }

    /** Whether the engine is lost more rarely with the change than it was in so many without. */
    boolean prevents(int before) {
        return flown.ends * Replay.SAMPLES < before * flown.times;
    }

    /** In how many of the reported flights the engine is still lost, in words. */
    String stillLost() {
        return flown.ends + " of " + flown.times;
    }

    /** How many of the first mend all that was asked for. */
    int mending() {
        return (int)
                suggested.suggestions().found().stream()
                        .limit(FIRST)
                        .filter(s -> s.left().isEmpty())
                        .count();
    }

    /** What is suggested, in words, or why nothing is. */
    static String words(Replay replay) {
        if (replay.file().noMend().isPresent()) {
            return replay.file().noMend().get();
        }
        return replay.file().mend().isPresent() ? of(replay).words() : "not asked";
    }

    private String words() {
        Suggestion found = suggested.suggestions().found().get(place - 1);
        return place
                + (found.isOutweighed() ? " with --all: " : ": ")
                + SuggestionWords.moves(found)
                + (mend().leaves() ? " (shown before flight)" : " (" + stillLost() + ")");
    }

    Mend mend() {
        return replay.file().mend().orElseThrow();
    }

    /** The first ones, for the reader of a test that fails. */
    String told() {
        SuggestionWords words = new SuggestionWords(suggested.suggestions());
        StringBuilder told = new StringBuilder(replay.id() + ": " + words.wanted());
        suggested.suggestions().found().stream()
                .limit(2L * FIRST)
                .forEach(
                        s ->
                                told.append("\n")
                                        .append(SuggestionWords.moves(s))
                                        .append("\n    ")
                                        .append(String.join("\n    ", words.about(s))));
        return told.append("\n").append(words.done()).toString();
    }
}
