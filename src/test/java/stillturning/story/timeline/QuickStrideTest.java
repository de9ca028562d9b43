package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;

/**
 * The quick stride against the exact one: the same events in the same order, at nearly one time.
 */
class QuickStrideTest {

    /** What a time may be off (part of it). */
    private static final double NEAR = 1e-4;

    /**
     * A tenth of a millisecond: what begins just behind the failure may begin so much later (s).
     */
    private static final double FINER_THAN_PRINTED = 1e-4;

    private static final double FAR = 1e-3;

    private static final int AIRCRAFT = Effort.cases(80, 2000);

    private static final double HORIZON_SECONDS = 900;

    private record Case(Study study, Candidate candidate) {
        @Override
        public String toString() {
            return study.id() + ", " + candidate.id();
        }
    }

    static Stream<Case> cases() {
        Path kept = Path.of("src", "test", "resources", "stillturning", "cases", "isolator");
        return Stream.of(Path.of("architectures", "sandpiper"), kept)
                .map(folder -> StudyReader.read(folder).study().orElseThrow())
                .flatMap(
                        study ->
                                study.candidates().stream()
                                        .limit(Effort.cases(2, 100))
                                        .map(c -> new Case(study, c)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everySingleFailureIsToldAlike(Case the) throws UntoldStory {
        Timeline quick = Timeline.quick(the.study, the.candidate);
        Timeline exact = quick.exact();
        for (Failure failure : FailureCatalogue.singlesOf(the.candidate)) {
            for (Pilot pilot : List.of(Pilot.PLANNED, Pilot.NEVER)) {
                Setting setting = Setting.with(pilot);
                Told.assertSame(
                        Told.of(exact, failure, setting, Timeline.HORIZON_SECONDS),
                        Told.of(quick, failure, setting, Timeline.HORIZON_SECONDS),
                        NEAR,
                        failure.name());
            }
        }
    }

    /**
     * Where a voltage hardly falls when it crosses a limit, a last digit of charge moves the
     * crossing by much; so a few of the times are farther off. And where the last current of a
     * stopped engine is at the border of standing still, one story may be over and the other not.
     */
    @Test
    void aircraftDrawnByLotAreToldAlike() {
        long far =
                LongStream.range(0, AIRCRAFT).parallel().mapToInt(QuickStrideTest::farOnes).sum();
        assertTrue(far <= 0.001 * 2 * AIRCRAFT, far + " stories");
    }

    /** How many stories of an aircraft are off by more than usual. */
    private static int farOnes(long seed) {
        RandomAircraft aircraft = new RandomAircraft(1000 + seed);
        Timeline quick;
        try {
            quick = Timeline.quick(aircraft.study, aircraft.candidate, aircraft.moment);
        } catch (UntoldStory e) {
            throw new AssertionError("aircraft " + seed, e);
        }
        int far = 0;
        for (Failure failure : aircraft.failures) {
            Told exactly = Told.of(quick.exact(), failure, aircraft.setting, HORIZON_SECONDS);
            Told quickly = Told.of(quick, failure, aircraft.setting, HORIZON_SECONDS);
            if (exactly.endsOnlyLaterThan(quickly)) {
                far++;
                continue;
            }
            Told.assertSame(
                    exactly,
                    quickly,
                    FAR,
                    FINER_THAN_PRINTED,
                    "aircraft " + seed + ": " + failure.name());
            far += Told.farthest(exactly, quickly, FINER_THAN_PRINTED) > NEAR ? 1 : 0;
        }
        return far;
    }
}
