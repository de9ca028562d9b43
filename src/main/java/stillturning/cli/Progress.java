package stillturning.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * One line that says how far the work is, rewritten in place, and gone when the work is done. Quick
 * work never shows it.
 */
final class Progress implements AutoCloseable, Consumer<String> {

    private static final Duration PATIENCE = Duration.ofMillis(300);
    private static final Duration BETWEEN = Duration.ofMillis(200);

    private final PrintWriter err;
    private final int total;
    private final Optional<ScheduledExecutorService> ticking;
    private int done;
    private int widest;

    private Progress(PrintWriter err, int total, Optional<ScheduledExecutorService> ticking) {
        this.err = err;
        this.total = total;
        this.ticking = ticking;
    }

    /** For work on so many candidates; silent where nobody sits in front. */
    static Progress over(int total, Surroundings around) {
        return over(total, around, PATIENCE);
    }

    static Progress over(int total, Surroundings around, Duration patience) {
        Progress progress =
                new Progress(
                        around.err(),
                        total,
                        around.terminal() ? Optional.of(timer()) : Optional.empty());
        progress.ticking.ifPresent(
                timer -> {
                    var unused =
                            timer.scheduleAtFixedRate(
                                    progress::show,
                                    patience.toMillis(),
                                    BETWEEN.toMillis(),
                                    TimeUnit.MILLISECONDS);
                });
        return progress;
    }

    private static ScheduledExecutorService timer() {
        return Executors.newSingleThreadScheduledExecutor(
                work -> {
                    Thread thread = new Thread(work, "progress");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /** One candidate is done; may be called from any thread. */
    @Override
    public synchronized void accept(String candidate) {
        done++;
    }

    private synchronized void show() {
        String line = "assessing: " + done + " of " + total + " candidates done";
        widest = Math.max(widest, line.length());
        err.print("\r" + line);
        err.flush();
    }

    @Override
    public synchronized void close() {
        ticking.ifPresent(ScheduledExecutorService::shutdownNow);
        if (widest > 0) {
            err.print("\r" + " ".repeat(widest) + "\r");
            err.flush();
            widest = 0;
        }
    }
}
