package stillturning.reliability.combined;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.story.UntoldStory;

/** How fast all pairs of one candidate are searched, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 10)
@Measurement(iterations = 3, time = 10)
@Fork(value = 1, jvmArgsAppend = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0")
public class PairsBenchmark {

    private final Study sandpiper =
            StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();
    private final Candidate candidate = sandpiper.candidates().get(0);
    private final List<Event> events = CombinedFailures.events(candidate, List.of());

    /** Every pair of failures, switches left wrong and needless drills of the first candidate. */
    @Benchmark
    public CombinedResult searchesPairs() throws UntoldStory {
        return CombinedFailures.of(sandpiper, candidate, events, 2, SetSearchWatch.NOBODY);
    }
}
