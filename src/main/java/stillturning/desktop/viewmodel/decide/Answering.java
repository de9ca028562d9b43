package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.InvalidationListener;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.MarkedValues;
import stillturning.dossier.MistakenFiles;
import stillturning.dossier.SizedCandidates;
import stillturning.files.ReadStudy;
import stillturning.report.answer.AnswerBlocks;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstQuestion;
import stillturning.report.page.Block;
import stillturning.report.pair.ValueMarks;
import stillturning.sizing.result.SizingReport;

/**
 * The first answer by the study's own weights, at once; what equal batteries change and which sizes
 * are wrong follows, since it takes longer. To be used on the screen's thread.
 */
public final class Answering {

    /** What the work is called while it lasts. */
    public static final String TRYING = "Trying equal batteries";

    /** What follows later, and the texts that it was found from. */
    private record Slow(
            String fingerprint, Optional<EqualBatteries> equal, Optional<SizingReport> sizes) {}

    private final Desk desk;
    private final BooleanProperty watched = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<Optional<FirstAnswer>> answer =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Block>> blocks =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper missing = new ReadOnlyBooleanWrapper();
    private final LongAnswers further;
    private Optional<Slow> slow = Optional.empty();
    private String refusal = "";

    Answering(Desk desk) {
        this.desk = desk;
        further = new LongAnswers(desk, this::tell);
        desk.results().addListener((value, from, to) -> renew());
        desk.read().addListener((value, from, to) -> tell());
        desk.work().running().addListener((InvalidationListener) changed -> tell());
        watched.addListener((value, from, to) -> begin());
        tell();
    }

    /** Whether somebody looks at it; what takes long is not begun before. */
    public BooleanProperty watched() {
        return watched;
    }

    /** The answer; empty until something is assessed. */
    public ReadOnlyObjectProperty<Optional<FirstAnswer>> answer() {
        return answer.getReadOnlyProperty();
    }

    /** It as running text. */
    public ReadOnlyObjectProperty<List<Block>> blocks() {
        return blocks.getReadOnlyProperty();
    }

    /** Whether what takes longer is under way. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Whether what takes longer is neither known nor under way, and can be asked. */
    public ReadOnlyBooleanProperty missing() {
        return missing.getReadOnlyProperty();
    }

    /** What takes minutes, and is begun only on wish. */
    public LongAnswers further() {
        return further;
    }

    /** Begins what takes longer. */
    public void ask() {
        stated().filter(assessment -> isOfNow()).ifPresent(this::start);
    }

    /** Calls it off. */
    public void cancel() {
        desk.work().cancel(TRYING);
    }

    private Optional<Assessment> stated() {
        return desk.results().get().assessment();
    }

    private boolean isOfNow() {
        return !desk.stale() && desk.results().get().refusal().isEmpty();
    }

    private void renew() {
        desk.work().cancel(TRYING);
        further.cancel();
        refusal = "";
        tell();
        begin();
    }

    private void begin() {
        if (watched.get() && known().isEmpty() && !desk.work().busy(TRYING)) {
            ask();
        }
    }

    private Optional<Slow> known() {
        return slow.filter(s -> s.fingerprint.equals(desk.results().get().fingerprint()));
    }

    private void start(Assessment assessment) {
        ReadStudy read = desk.read().get();
        String fingerprint = desk.results().get().fingerprint();
        refusal = "";
        desk.work()
                .start(
                        TRYING,
                        progress -> found(assessment, read, fingerprint, progress),
                        this::take,
                        this::refuse);
    }

    private static Slow found(
            Assessment assessment, ReadStudy read, String fingerprint, WorkHandle progress) {
        int most = EqualBatteries.mixes(assessment);
        AtomicInteger done = new AtomicInteger();
        progress.report(0, TRYING);
        Optional<SizingReport> sizes = SizedCandidates.ofFirst(assessment, read);
        Optional<EqualBatteries> equal =
                EqualBatteries.of(
                        assessment,
                        rival -> {
                            int so = done.incrementAndGet();
                            progress.report(
                                    (double) so / most,
                                    TRYING + ": mix " + so + " of at most " + most);
                        });
        return new Slow(fingerprint, equal, sizes);
    }

    private void take(Slow found) {
        slow = Optional.of(found);
        tell();
    }

    private void refuse(Exception reason) {
        refusal = "It could not be found out: " + reason.getMessage() + ".";
        tell();
    }

    private void tell() {
        working.set(desk.work().busy(TRYING));
        missing.set(stated().isPresent() && isOfNow() && known().isEmpty() && !working.get());
        further.tell();
        Optional<FirstAnswer> now = stated().map(this::first);
        String coming = now.isEmpty() || known().isPresent() ? "" : coming();
        answer.set(now);
        List<Block> said = new ArrayList<>();
        now.ifPresent(a -> said.addAll(AnswerBlocks.of(a, coming)));
        stated().ifPresent(assessment -> said.addAll(further.blocks(assessment)));
        // text that is set again for nothing loses its place under the reader's eyes
        if (!said.equals(blocks.get())) {
            blocks.set(List.copyOf(said));
        }
    }

    private FirstAnswer first(Assessment assessment) {
        return new FirstQuestion(
                        assessment,
                        known().flatMap(Slow::equal),
                        known().flatMap(Slow::sizes),
                        further.guesses(),
                        desk.study().isPresent()
                                ? MistakenFiles.of(desk.read().get().problems())
                                : List.of())
                .marked(marks(assessment))
                .checked(further.card())
                .answer();
    }

    /** How well the values are known that this was found from. */
    private Optional<ValueMarks> marks(Assessment assessment) {
        return desk.stale()
                ? Optional.empty()
                : MarkedValues.ofFirstTwo(assessment, desk.read().get());
    }

    private String coming() {
        if (working.get()) {
            return "What equal batteries change, and which size limits it breaks, is coming.";
        }
        return refusal.isEmpty()
                ? "What equal batteries change, and which size limits it breaks, is not known: it"
                        + " was not tried."
                : refusal;
    }
}
