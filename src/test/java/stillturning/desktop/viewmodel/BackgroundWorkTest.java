package stillturning.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class BackgroundWorkTest {

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final BackgroundWork work = new BackgroundWork(screen::add);
    private final List<String> heard = new ArrayList<>();

    @AfterEach
    void end() {
        work.close();
    }

    private void work(String name, BackgroundWork.Work<String> task) {
        work.start(name, task, heard::add, e -> heard.add("failed: " + e.getMessage()));
    }

    private void untilDone() throws InterruptedException {
        while (!work.running().isEmpty()) {
            next();
        }
    }

    private void next() throws InterruptedException {
        Runnable told = screen.poll(20, TimeUnit.SECONDS);
        assertTrue(told != null, "nothing was heard");
        told.run();
    }

    @Test
    void theAnswerArrivesOnTheScreensThread() throws InterruptedException {
        work("count", progress -> "done");
        assertTrue(work.busy("count"));

        untilDone();

        assertEquals(List.of("done"), heard);
        assertFalse(work.busy("count"));
    }

    @Test
    void whatFailsIsTold() throws InterruptedException {
        work(
                "count",
                progress -> {
                    throw new IllegalStateException("net 3 has no part");
                });

        untilDone();

        assertEquals(List.of("failed: net 3 has no part"), heard);
    }

    @Test
    void theNewerOneOfANameIsHeardAlone() throws InterruptedException {
        CountDownLatch held = new CountDownLatch(1);
        work(
                "count",
                progress -> {
                    held.await();
                    return "old";
                });
        work("count", progress -> "new");
        held.countDown();

        // each of them brings its answer to the screen, in whichever order they end
        next();
        next();

        assertEquals(List.of("new"), heard);
        assertEquals(List.of(), List.copyOf(work.running()));
    }

    @Test
    void progressIsShownAndWhatIsCalledOffStopsAtIt() throws InterruptedException {
        CountDownLatch said = new CountDownLatch(1);
        CountDownLatch held = new CountDownLatch(1);
        BlockingQueue<Boolean> went = new LinkedBlockingQueue<>();
        work(
                "count",
                progress -> {
                    progress.report(0.5, "half");
                    said.countDown();
                    held.await();
                    try {
                        progress.report(1, "all");
                        went.add(true);
                    } catch (java.util.concurrent.CancellationException e) {
                        went.add(false);
                    }
                    return "done";
                });
        said.await();
        next();
        assertEquals(
                List.of(new BackgroundWork.Running("count", 0.5, "half")),
                List.copyOf(work.running()));

        work.cancel("count");
        held.countDown();

        assertFalse(went.take());
        assertEquals(List.of(), List.copyOf(work.running()));
        assertEquals(List.of(), heard);
    }
}
