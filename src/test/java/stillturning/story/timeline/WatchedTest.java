package stillturning.story.timeline;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Snapshot;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;

/** Frames of a story, held against the story that was told without them. */
class WatchedTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();

    @ParameterizedTest
    @EnumSource(Pilot.class)
    void watchingChangesNothingAndShowsWhatTheStorySays(Pilot pilot) throws UntoldStory {
        for (Candidate candidate : STUDY.candidates()) {
            Timeline timeline = new Timeline(STUDY, candidate);
            for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
                WatchedStory watched = timeline.watch(failure, Setting.with(pilot));
                Story told = timeline.tell(failure, pilot);
                assertTrue(watched.story().isCourseOf(told), failure.name());
                assertEquals(told.setting(), watched.story().setting());
                assertEquals(told.aftermath(), watched.story().aftermath());
                tracesAgree(watched, candidate.circuit());
                barsAgree(watched);
            }
        }
    }

    @Test
    void aStoryIsWatchedAgainAtItsEventsAsItWasTold() throws UntoldStory {
        Candidate candidate = STUDY.candidates().get(0);
        Timeline timeline = Timeline.quick(STUDY, candidate);
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            Story told = timeline.tellAsFar(failure, Setting.with(Pilot.PLANNED));
            WatchedStory again = timeline.watchEvents(told);
            assertTrue(again.story().isCourseOf(told), failure.name());
            for (StoryEvent event : again.story().happenings()) {
                assertEquals(event.seconds(), again.at(event.seconds()).seconds());
            }
        }
    }

    private static void tracesAgree(WatchedStory watched, Circuit circuit) {
        for (Trace trace : watched.story().traces()) {
            assertEquals(trace.points().size(), watched.frames().size());
            for (int i = 0; i < trace.points().size(); i++) {
                Snapshot frame = watched.frames().get(i);
                double value =
                        trace.unit().equals("V")
                                ? frame.volts(circuit.net(trace.name(), "bar"))
                                : 100 * requireNonNull(frame.charges().get(trace.name()));
                assertEquals(new Trace.TracePoint(frame.seconds(), value), trace.points().get(i));
            }
        }
    }

    private static void barsAgree(WatchedStory watched) {
        for (StateBar bar : watched.story().bars()) {
            for (StateBar.StateSpan span : bar.spans()) {
                double middle = (span.fromSeconds() + span.toSeconds()) / 2;
                Activity doing = watched.at(middle).doing(bar.name());
                assertEquals(span.doing(), doing, bar.name() + " at " + middle + " s");
            }
        }
    }

    @Test
    void theFrameBeforeIsTheCandidateWithNothingWrong() throws UntoldStory {
        Candidate candidate = STUDY.candidates().get(0);
        Timeline timeline = new Timeline(STUDY, candidate);
        Snapshot before = timeline.before();
        timeline.normal()
                .busVolts()
                .forEach(
                        (bus, volts) ->
                                assertEquals(
                                        volts, before.volts(candidate.circuit().net(bus, "bar"))));
        timeline.normal().working().forEach(l -> assertEquals(Activity.WORKS, before.doing(l)));
        assertEquals(Activity.RUNS, before.doing("engine"));
        assertTrue(before.states().gaveWay().isEmpty());
    }

    @Test
    void aGuardThatHasActedIsShownToHaveGivenWay() throws UntoldStory {
        Study study = StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();
        Candidate candidate = study.candidate("split-batteries").orElseThrow();
        WatchedStory watched =
                Timeline.quick(study, candidate)
                        .watch(
                                single(candidate, "alternator: over-voltage"),
                                Setting.with(Pilot.NEVER));
        StoryEvent opens =
                watched.story().of(StoryEvent.Kind.PROTECTOR_OPENS).stream()
                        .filter(h -> h.part().equals("field-guard"))
                        .findFirst()
                        .orElseThrow();
        List<Snapshot> frames = watched.frames();
        for (Snapshot frame : List.of(frames.get(0), watched.at(opens.seconds()))) {
            assertEquals(
                    frame != frames.get(0),
                    frame.states().gaveWay().stream().anyMatch(n -> n.startsWith("field-guard/")));
        }
    }

    @Test
    void aFuseThatAShortBlowsIsOpenFromThatInstantOn() throws UntoldStory {
        Candidate candidate = STUDY.candidate("one-bus").orElseThrow();
        Timeline timeline = new Timeline(STUDY, candidate);
        Failure shorted = single(candidate, "main-bus: short to ground");
        WatchedStory watched = timeline.watch(shorted, Setting.with(Pilot.NEVER));
        StoryEvent blown =
                watched.story().of(StoryEvent.Kind.PROTECTOR_OPENS).stream()
                        .filter(h -> h.part().contains("battery-lead"))
                        .findFirst()
                        .orElseThrow();
        String fuse = blown.part() + "/fuse";
        List<Snapshot> at =
                watched.frames().stream().filter(f -> f.seconds() == blown.seconds()).toList();
        Snapshot first = at.get(0);
        Snapshot last = watched.at(blown.seconds());
        assertSame(at.get(at.size() - 1), last);
        assertFalse(first.states().gaveWay().contains(fuse), () -> first.states().toString());
        assertTrue(last.states().gaveWay().contains(fuse) && last.open(fuse));
        assertTrue(Math.abs(first.amps(fuse)) > 100, () -> first.amps(fuse) + " A");
        assertEquals(0, last.amps(fuse));
    }

    @Test
    void framesBetweenEventsShareTheirStates() throws UntoldStory {
        Candidate candidate = STUDY.candidate("one-bus").orElseThrow();
        Failure failure = single(candidate, "alternator: no output");
        List<Snapshot> frames =
                new Timeline(STUDY, candidate).watch(failure, Setting.with(Pilot.NEVER)).frames();
        long different = frames.stream().map(Snapshot::states).distinct().count();
        long made =
                frames.stream().map(f -> System.identityHashCode(f.states())).distinct().count();
        assertTrue(different < frames.size() / 2.0, different + " of " + frames.size());
        assertTrue(made < frames.size() / 2.0, made + " of " + frames.size());
    }

    @Test
    void aStoryThatNobodyWatchedHasNoFrames() throws UntoldStory {
        Candidate candidate = STUDY.candidate("one-bus").orElseThrow();
        Story story =
                new Timeline(STUDY, candidate)
                        .tell(single(candidate, "alternator: no output"), Pilot.PLANNED);
        assertThrows(IllegalArgumentException.class, () -> new WatchedStory(story, List.of()));
    }

    private static Failure single(Candidate candidate, String name) {
        return FailureCatalogue.singlesOf(candidate).stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
