package stillturning.assess;

import java.nio.file.Path;
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
import stillturning.model.Study;

/** How fast a whole study is assessed, on one core: no worker threads beside the caller. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0")
public class AssessBenchmark {

    private final Study sandpiper =
            StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();

    /** Every single failure of every candidate, told, judged and ranked. */
    @Benchmark
    public Assessment assessesSandpiper() {
        return Assess.of(sandpiper);
    }
}
