package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import stillturning.desktop.viewmodel.BackgroundWork.Running;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.dossier.Kept;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.Spoken;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.LatentSheet;
import stillturning.report.joint.PairSheet;
import stillturning.report.joint.RunUpSheet;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.story.UntoldStory;

/**
 * What two failures do together in the open candidate, what hides, and what a run-up would find.
 * Asked on wish, since it takes minutes. To be used on the screen's thread.
 */
public final class JointFailures {

    private static final String ASKING = "Asking what two failures do together";
    private static final String INVITATION =
            "Every two failures of the open candidate are played together: which pairs stop the"
                    + " engine, which failures nothing shows, and which checks before take-off find"
                    + " them. It takes a minute or several, and can be called off.";

    private final Desk desk;
    private final ReadOnlyObjectWrapper<List<Block>> blocks =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper(INVITATION);
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private Optional<Asked> held = Optional.empty();
    private String refusal = "";

    /** Of which candidate, and of which texts, something was asked. */
    private record Asked(Candidate candidate, String fingerprint) {}

    public JointFailures(Desk desk) {
        this.desk = desk;
        desk.read().addListener((of, before, now) -> tell());
        desk.candidate().addListener((of, before, now) -> tell());
        desk.work().running().addListener((InvalidationListener) changed -> tell());
        tell();
    }

    /** What was found; empty before it was asked. */
    public ReadOnlyObjectProperty<List<Block>> blocks() {
        return blocks.getReadOnlyProperty();
    }

    /** What to do, how far it is, or why nothing was found. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Whether it is under way. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** A text of what was found, with the names that a person calls its parts by. */
    public String spoken(String text) {
        return held.map(asked -> new Spoken(asked.candidate).sentence(text)).orElse(text);
    }

    /** Begins. */
    public void start() {
        Optional<Study> study = desk.study();
        Optional<Candidate> candidate = desk.openCandidate();
        if (study.isEmpty() || candidate.isEmpty()) {
            refusal = "The candidate's files hold a mistake. Mend it in Draw first.";
            tell();
            return;
        }
        refusal = "";
        Asked asked = new Asked(candidate.get(), desk.read().get().fingerprint());
        Study alone = alone(study.get(), candidate.get());
        Chances chances = desk.read().get().chances();
        desk.work()
                .start(
                        ASKING,
                        progress -> found(alone, chances, progress),
                        now -> take(asked, now),
                        this::refuse);
    }

    private static Study alone(Study study, Candidate candidate) {
        return new Study(
                study.id(), study.heading(), study.aircraft(), study.goals(), List.of(candidate));
    }

    private static List<Block> found(Study study, Chances chances, WorkHandle progress)
            throws UntoldStory {
        JointSearch search = new JointSearch(study, chances, JointSearch.PAIRS);
        int all = search.blocks();
        AtomicInteger done = new AtomicInteger();
        Consumer<String> told =
                block -> {
                    int now = done.incrementAndGet();
                    progress.report((double) now / all, ASKING + ": " + now + " of " + all);
                };
        JointWork work = search.work(Kept.NOTHING, told);
        return work.found().stream().flatMap(one -> blocks(one).stream()).toList();
    }

    private static List<Block> blocks(CombinedFindings one) {
        List<Block> all = new ArrayList<>();
        all.add(new Heading("Failures together, and how likely"));
        all.add(new Note(PairSheet.MEANING));
        all.addAll(PairSheet.of(one, false));
        all.add(new Heading("Latent failures"));
        all.add(new Note(LatentSheet.MEANING));
        all.addAll(LatentSheet.of(one, false));
        all.add(new Heading("Run-up card"));
        all.add(new Words(Cautions.SHORT));
        all.addAll(RunUpSheet.of(one));
        return List.copyOf(all);
    }

    /** Calls it off. */
    public void cancel() {
        desk.work().cancel(ASKING);
    }

    private void take(Asked asked, List<Block> now) {
        held = Optional.of(asked);
        blocks.set(now);
        tell();
    }

    private void refuse(Exception reason) {
        refusal = "It could not be found out: " + reason.getMessage() + ".";
        tell();
    }

    private void tell() {
        working.set(desk.work().busy(ASKING));
        List<String> said = new ArrayList<>();
        held.ifPresent(asked -> said.add(origin(asked)));
        desk.work().running().stream()
                .filter(r -> r.name().equals(ASKING))
                .findFirst()
                .map(Running::words)
                .or(() -> Optional.of(refusal).filter(r -> !r.isEmpty()))
                .or(() -> held.isEmpty() ? Optional.of(INVITATION) : Optional.empty())
                .ifPresent(said::add);
        words.set(String.join(" ", said));
    }

    /** Of what the shown is true. */
    private String origin(Asked asked) {
        String of = "What stands here is of \u201C" + asked.candidate.title() + "\u201D";
        boolean old = !asked.fingerprint.equals(desk.read().get().fingerprint());
        return old ? of + ", from before the last changes." : of + ".";
    }
}
