package stillturning.cli.terminal;

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
public final class Progress implements AutoCloseable, Consumer<String> {

    private static final Duration PATIENCE = Duration.ofMillis(300);
    private static final Duration BETWEEN = Duration.ofMillis(200);

    private final PrintWriter err;
    private final String ofAll;
    private final Optional<ScheduledExecutorService> ticking;
    private int done;
    private int widest;
    private String told = "";

    private Progress(PrintWriter err, String ofAll, Optional<ScheduledExecutorService> ticking) {
        this.err = err;
        this.ofAll = ofAll;
        this.ticking = ticking;
    }

    /** For work on so many things; silent where nobody sits in front. */
    public static Progress over(int total, String things, CommandContext context) {
        return over(total, things, context, PATIENCE);
    }

    public static Progress over(
            int total, String things, CommandContext context, Duration patience) {
        Progress progress =
                new Progress(
                        context.err(),
                        " of " + total + " " + things,
                        context.terminal() ? Optional.of(timer()) : Optional.empty());
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

    /** For work of which nobody knows how much there is; silent where nobody sits in front. */
    public static Progress telling(CommandContext context) {
        Progress progress = over(0, "", context);
        progress.tell("begun");
        return progress;
    }

    /** How far it is, in words. */
    public synchronized void tell(String words) {
        told = words;
    }

    private static ScheduledExecutorService timer() {
        return Executors.newSingleThreadScheduledExecutor(
                work -> {
                    Thread thread = new Thread(work, "progress");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /** One thing is done; may be called from any thread. */
    @Override
    public synchronized void accept(String thing) {
        done++;
    }

    private synchronized void show() {
        String line = told.isEmpty() ? done + ofAll : told;
        widest = Math.max(widest, line.length());
        err.print("\r" + line + " ".repeat(widest - line.length()));
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
