package stillturning.story.timeline;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.KeptLines;
import stillturning.bench.Lines;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;
import stillturning.story.Trace.TracePoint;
import stillturning.story.UntoldStory;

/** All that some stories say of themselves is what was last read. */
class KeptStoriesTest {

    private static final String CASES = "src/test/resources/stillturning/cases/";

    private static final String REPLAYS = "src/test/resources/stillturning/replays/";

    private static final double HORIZON_SECONDS = 900;

    private static final int TOGETHER = 5;

    /** One failure of so many, so that the kept text stays small. */
    private static final int EACH = 4;

    static Stream<Integer> lots() {
        return Stream.iterate(0, lot -> lot + 1).limit(6);
    }

    @ParameterizedTest
    @MethodSource("lots")
    void ofAircraftDrawnByLotAreWhatIsToldToday(int lot) throws IOException, UntoldStory {
        List<String> told = new ArrayList<>();
        for (int seed = TOGETHER * lot; seed < TOGETHER * (lot + 1); seed++) {
            RandomAircraft aircraft = new RandomAircraft(seed);
            Timeline timeline = aircraft.timeline(Double.POSITIVE_INFINITY);
            told.addAll(Lines.of("normal", timeline.normal()));
            for (Failure failure : aircraft.failures) {
                told.add("== " + seed + ", " + failure.name());
                told.addAll(lot(timeline, failure, aircraft.setting));
            }
        }
        KeptLines.assertKept("story", "lot-" + lot + ".lines", told);
    }

    private static List<String> lot(Timeline timeline, Failure failure, Setting setting) {
        List<String> told = new ArrayList<>();
        try {
            Story story = timeline.tell(failure, setting, HORIZON_SECONDS);
            told.addAll(inShort(story));
            told.addAll(Lines.of("left", story.aftermath()));
            told.addAll(Lines.of("contests", story.contests()));
            told.addAll(Lines.of("bars", story.bars()));
            told.addAll(Lines.of("balance", story.balance()));
            told.addAll(Lines.of("restart", timeline.restart(failure)));
        } catch (UntoldStory e) {
            told.add(e.getMessage());
        }
        return told;
    }

    @ParameterizedTest
    @CsvSource({
        "architectures/sandpiper, split-batteries-lithium",
        "architectures/sandpiper, two-alternators",
        "architectures/first-steps, bus-and-battery",
        CASES + "automatic-gauges, one",
        CASES + "chattering-converter, one",
        CASES + "floating-converter, one",
        CASES + "isolator, isolator",
        REPLAYS + "cen23la014, as-found",
        REPLAYS + "lax05ca310, as-flown"
    })
    void ofACandidateAreWhatIsToldToday(Path folder, String name) throws IOException, UntoldStory {
        Study study = StudyReader.read(folder).study().orElseThrow();
        Candidate candidate = study.candidate(name).orElseThrow();
        Timeline timeline = Timeline.quick(study, candidate);
        List<String> told = new ArrayList<>(Lines.of("normal", timeline.normal()));
        int place = 0;
        for (List<Failure> alike : timeline.alike(FailureCatalogue.singlesOf(candidate))) {
            Failure one = alike.get(0);
            if (place++ % EACH == 0 || one.name().endsWith(": over-voltage")) {
                told.addAll(byEveryPilot(timeline, one));
            }
        }
        KeptLines.assertKept("story", folder.getFileName() + "-" + name + ".lines", told);
    }

    /** What the earlier pilot's story says already is not said again. */
    private static List<String> byEveryPilot(Timeline timeline, Failure failure) {
        List<String> told = new ArrayList<>();
        List<String> last = List.of();
        for (Pilot pilot : Pilot.values()) {
            List<String> next = inShort(timeline.tellAsFar(failure, Setting.with(pilot)));
            told.add("== " + failure.name() + ", " + pilot);
            told.addAll(next.equals(last) ? List.of("the same") : next);
            last = next;
        }
        return told;
    }

    @Test
    void ofStartsAreWhatIsToldToday() throws IOException {
        List<String> told = new ArrayList<>();
        Study study = study("sandpiper");
        for (Candidate candidate : study.candidates()) {
            for (boolean hard : new boolean[] {false, true}) {
                told.add("== " + candidate.id() + (hard ? ", hard" : ""));
                told.addAll(
                        Lines.of("start", Timeline.start(study, candidate, hard).orElseThrow()));
            }
        }
        KeptLines.assertKept("story", "starts.lines", told);
    }

    @Test
    void ofWhatIsSteadyAreWhatIsToldToday() throws IOException, UntoldStory {
        List<String> told = new ArrayList<>();
        Study study = study("first-steps");
        Candidate candidate = study.candidate("bus-and-battery").orElseThrow();
        SteadyStates steady = new SteadyStates(study, candidate, study.goals().failurePhase());
        told.addAll(Lines.of("rest", steady.rest()));
        told.addAll(Lines.of("end", steady.atEnd()));
        int place = 0;
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            if (place++ % (3 * EACH) == 0) {
                told.addAll(Lines.of(failure.name(), steady.instant(failure)));
            }
        }
        KeptLines.assertKept("story", "steady.lines", told);
    }

    private static Study study(String folder) {
        return StudyReader.read(Path.of("architectures", folder)).study().orElseThrow();
    }

    /** Events, the engine's end, and of each trace what it amounts to. */
    private static List<String> inShort(Story story) {
        List<String> told = new ArrayList<>();
        for (StoryEvent event : story.happenings()) {
            told.add(
                    String.format(
                            Locale.ROOT,
                            "%.5g %s %s: %s (%d)",
                            event.seconds(),
                            event.kind(),
                            event.part(),
                            event.words(),
                            event.cause()));
        }
        told.addAll(Lines.of("engine", story.engine()));
        told.add(story.traces().stream().map(KeptStoriesTest::amount).collect(joining("; ")));
        return told;
    }

    private static String amount(Trace trace) {
        return String.format(
                Locale.ROOT,
                "%s %.5g to %.5g, in all %.5g",
                trace.name(),
                trace.lowest(),
                trace.highest(),
                underneath(trace.points()));
    }

    private static double underneath(List<TracePoint> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            TracePoint last = points.get(i - 1);
            TracePoint next = points.get(i);
            sum += (next.seconds() - last.seconds()) * (last.value() + next.value()) / 2;
        }
        return sum;
    }
}
