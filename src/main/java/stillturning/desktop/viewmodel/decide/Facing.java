package stillturning.desktop.viewmodel.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.PairWork;
import stillturning.model.Study;
import stillturning.report.page.Block;
import stillturning.report.pair.PairBlocks;
import stillturning.report.pair.PairQuestion;

/**
 * The two that face each other, like for like: every mix of them assessed. Asked on wish, since it
 * takes up to minutes. To be used on the screen's thread.
 */
public final class Facing {

    /** What the work is called while it lasts. */
    public static final String HOLDING = "Assessing every mix of two candidates";

    private record Pair(String one, String other) {}

    /** What was found, and the texts that it was found from. */
    private record Held(String fingerprint, List<Block> blocks) {}

    private final Desk desk;
    private final SideBySide facing;
    private final Map<Pair, Held> held = new HashMap<>();
    private final Map<Pair, String> refused = new HashMap<>();
    private final ReadOnlyObjectWrapper<List<Block>> blocks =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper askable = new ReadOnlyBooleanWrapper();

    Facing(Desk desk, SideBySide facing) {
        this.desk = desk;
        this.facing = facing;
        facing.one().addListener((value, from, to) -> tell());
        facing.other().addListener((value, from, to) -> tell());
        desk.read()
                .addListener(
                        (value, from, to) -> {
                            refused.clear();
                            tell();
                        });
        desk.work().running().addListener((InvalidationListener) changed -> tell());
        tell();
    }

    /** What was found of the two; empty before it was asked. */
    public ReadOnlyObjectProperty<List<Block>> blocks() {
        return blocks.getReadOnlyProperty();
    }

    /** Of which moment that is, how far the work is, or what to do; else empty. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Whether two candidates are at work. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Whether the two can be asked, and nothing of now is known of them. */
    public ReadOnlyBooleanProperty askable() {
        return askable.getReadOnlyProperty();
    }

    /** Holds the two against each other. */
    public void ask() {
        Pair pair = pair();
        work(pair).ifPresent(asked -> start(pair, asked));
    }

    /** Calls it off. */
    public void cancel() {
        desk.work().cancel(HOLDING);
    }

    private Pair pair() {
        return new Pair(facing.one().get(), facing.other().get());
    }

    private Optional<PairWork> work(Pair pair) {
        Optional<Study> study = desk.study();
        return pair.one.equals(pair.other)
                ? Optional.empty()
                : study.flatMap(
                        s ->
                                s.candidate(pair.one)
                                        .flatMap(
                                                one ->
                                                        s.candidate(pair.other)
                                                                .map(
                                                                        other ->
                                                                                new PairWork(
                                                                                        s, one,
                                                                                        other))));
    }

    private void start(Pair pair, PairWork work) {
        PairWork asked = work.marked(desk.read().get());
        String fingerprint = desk.read().get().fingerprint();
        String of = asked.one().title() + " against " + asked.other().title();
        int most = asked.steps();
        AtomicInteger done = new AtomicInteger();
        refused.remove(pair);
        desk.work()
                .start(
                        HOLDING,
                        progress -> {
                            progress.report(0, of);
                            PairQuestion found =
                                    asked.done(
                                            step -> {
                                                int so = done.incrementAndGet();
                                                progress.report(
                                                        Math.min(1, (double) so / most),
                                                        of + ": " + so + " of about " + most);
                                            });
                            return new Held(fingerprint, new PairBlocks(found).all());
                        },
                        found -> {
                            held.put(pair, found);
                            tell();
                        },
                        reason -> {
                            refused.put(pair, String.valueOf(reason.getMessage()));
                            tell();
                        });
    }

    private void tell() {
        Pair pair = pair();
        Optional<PairWork> asked = work(pair);
        Optional<Held> found = Optional.ofNullable(held.get(pair));
        boolean ofNow =
                found.filter(f -> f.fingerprint.equals(desk.read().get().fingerprint()))
                        .isPresent();
        working.set(desk.work().busy(HOLDING));
        askable.set(asked.isPresent() && !ofNow && !working.get());
        List<Block> now = found.map(Held::blocks).orElse(List.of());
        // text that is set again for nothing loses its place under the reader's eyes
        if (!now.equals(blocks.get())) {
            blocks.set(now);
        }
        words.set(words(asked, found.isPresent() && !ofNow, ofNow));
    }

    private String words(Optional<PairWork> asked, boolean old, boolean ofNow) {
        String age = old ? "What stands below is from before the last changes. " : "";
        Optional<String> at =
                desk.work().running().stream()
                        .filter(r -> r.name().equals(HOLDING))
                        .findFirst()
                        .map(Running::words);
        if (at.isPresent()) {
            return age + "Coming: " + at.get() + ".";
        }
        if (refused.containsKey(pair())) {
            return age + "It could not be found out: " + refused.get(pair()) + ".";
        }
        if (ofNow) {
            return "";
        }
        return age
                + asked.map(
                                work ->
                                        "About "
                                                + work.steps()
                                                + " assessments say which group of differences"
                                                + " makes how much of it, what an electronic"
                                                + " controller does for which load, and what would"
                                                + " have to be true for the other answer.")
                        .orElse("Choose two different candidates without mistakes.");
    }
}
