package stillturning.desktop.view.picture;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import stillturning.bench.LargeStudy;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;

/**
 * Measures how long frames take in the real pipeline: a diagram of about 300 parts is moved, and
 * Sandpiper changes its looks. Writes pictures of both where a folder is given.
 */
public final class PictureSpeed {
    private static final int FRAMES = 120;

    private PictureSpeed() {}

    /** Run with the system properties of the tests, or on a display. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("large");
        LargeStudy.write(folder);
        Sheet large = OneLine.laidOut(Shown.candidate(folder, "large"));
        Diagram diagram = Shown.sandpiper("two-alternators");
        Sheet small = OneLine.laidOut(diagram);
        StackPane root = new StackPane();
        Stage stage = Shown.stage(root, 1280, 800);
        PictureView view = Shown.on(PictureView::new);
        Shown.run(() -> root.getChildren().add(view));
        Shown.run(() -> view.show(large, large.picture()));
        Shown.run(view::actualSize);
        measure("move 300 parts, scale 1", i -> wander(view, i));
        picture(arguments, stage, "large");
        Shown.run(() -> view.zoom(0.5, 600, 400));
        measure("move 300 parts, scale 0.5", i -> wander(view, i));
        measure("enlarge 300 parts", i -> view.zoom(i % 120 < 60 ? 1.02 : 1 / 1.02, 600, 400));
        Shown.run(
                () -> {
                    view.show(small, small.picture());
                    view.fit();
                });
        Picture[] states =
                IntStream.range(0, 6)
                        .mapToObj(i -> small.picture(looking(diagram, i)))
                        .toArray(Picture[]::new);
        measure("looks of Sandpiper", i -> view.show(small, states[i % states.length]));
        measure(
                "looks of Sandpiper, painted too",
                i -> view.show(small, small.picture(looking(diagram, i))));
        picture(arguments, stage, "sandpiper");
        Shown.run(() -> Shown.theme(true));
        picture(arguments, stage, "sandpiper-dark");
        Shown.run(() -> view.show(large, large.picture()));
        Shown.run(view::actualSize);
        picture(arguments, stage, "large-dark");
        System.exit(0);
    }

    private static void wander(PictureView view, int step) {
        view.move(view.viewport().movedBy(step % 120 < 60 ? -7 : 7, step % 80 < 40 ? -5 : 5));
    }

    private static void picture(String[] arguments, Stage stage, String name) throws Exception {
        if (arguments.length > 0) {
            Thread.sleep(500);
            Shown.write(stage.getScene(), Path.of(arguments[0], name + ".png"));
        }
    }

    /** A third of everything in another state from one to the next. */
    private static Diagram looking(Diagram diagram, int state) {
        MarkState[] looks = {MarkState.LIVE, MarkState.DARK, MarkState.ON_BACKUP};
        Map<String, MarkState> symbols = new HashMap<>();
        for (int i = 0; i < diagram.symbols().size(); i++) {
            symbols.put(diagram.symbols().get(i).id(), looks[i % 3 == 0 ? state % 3 : 0]);
        }
        Map<Integer, MarkState> lines = new HashMap<>();
        for (int i = 0; i < diagram.lines().size(); i++) {
            lines.put(i, looks[i % 3 == 0 ? state % 3 : 0]);
        }
        return diagram.looking(symbols, lines, Map.of());
    }

    private static void measure(String what, IntConsumer step) throws InterruptedException {
        List<Long> starts = new ArrayList<>();
        List<Long> costs = new ArrayList<>();
        CountDownLatch done = new CountDownLatch(1);
        AnimationTimer timer =
                new AnimationTimer() {
                    @Override
                    public void handle(long now) {
                        long begun = System.nanoTime();
                        starts.add(begun);
                        step.accept(starts.size());
                        costs.add(System.nanoTime() - begun);
                        if (starts.size() > FRAMES) {
                            stop();
                            done.countDown();
                        }
                    }
                };
        long processor = processorNanoseconds();
        Shown.run(timer::start);
        done.await();
        processor = processorNanoseconds() - processor;
        long[] gaps = new long[starts.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = starts.get(i + 1) - starts.get(i);
        }
        Arrays.sort(gaps);
        long[] own = costs.stream().mapToLong(c -> c).sorted().toArray();
        System.out.printf(
                "%-34s frame median %.1f ms, 95 %% %.1f ms, worst %.1f ms; step median %.2f ms;"
                        + " processor %.1f ms a frame%n",
                what,
                gaps[gaps.length / 2] / 1e6,
                gaps[gaps.length * 95 / 100] / 1e6,
                gaps[gaps.length - 1] / 1e6,
                own[own.length / 2] / 1e6,
                processor / 1e6 / gaps.length);
    }

    /** Of all threads, which tells frames apart on a busy machine too. */
    private static long processorNanoseconds() {
        return ProcessHandle.current().info().totalCpuDuration().map(Duration::toNanos).orElse(0L);
    }
}
