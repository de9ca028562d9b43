package stillturning.desktop.draft;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Runs what is scheduled when a test says so. */
final class ByHand extends ScheduledThreadPoolExecutor implements AutoCloseable {

    private final Queue<Runnable> waiting = new ArrayDeque<>();

    ByHand() {
        super(1);
    }

    @Override
    public ScheduledFuture<?> schedule(Runnable command, long delay, TimeUnit unit) {
        waiting.add(command);
        return super.schedule(() -> {}, 0, unit);
    }

    /** Lets the time pass after which all of it is due. */
    void runAll() {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    @Override
    public void close() {
        shutdownNow();
    }
}
