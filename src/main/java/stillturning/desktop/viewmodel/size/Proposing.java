package stillturning.desktop.viewmodel.size;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.Desk;
import stillturning.dossier.proposal.Proposal;
import stillturning.dossier.proposal.Resize;
import stillturning.files.StudyReader;
import stillturning.quantity.Formats;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizingReport;

/** Sizes that would be better, for the open candidate. To be used on the screen's thread. */
public final class Proposing {

    /** What the work is called while it lasts. */
    public static final String PROPOSING = "Looking for the lightest sizes that meet every rule";

    private final Desk desk;
    private final Sizes sizes;
    private final ReadOnlyObjectWrapper<Optional<Proposal>> proposal =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();

    /**
     * @param sizes sizes as they are
     */
    public Proposing(Desk desk, Sizes sizes) {
        this.desk = desk;
        this.sizes = sizes;
        desk.read().addListener((value, from, to) -> forget());
        desk.candidate().addListener((value, from, to) -> forget());
        sizes.report().addListener((value, from, to) -> invite());
        desk.settings().addListener((value, from, to) -> tell());
        invite();
    }

    /** What is proposed, if anything was looked for. */
    public ReadOnlyObjectProperty<Optional<Proposal>> proposal() {
        return proposal.getReadOnlyProperty();
    }

    /** What would change; empty before anything was looked for. */
    public List<Resize> resizes() {
        return proposal.get().map(Proposal::resizes).orElse(List.of());
    }

    /** What came of it, or what to do, in sentences. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Whether it is being looked for. */
    public ReadOnlyBooleanProperty working() {
        return working.getReadOnlyProperty();
    }

    /** Looks for better sizes in the background. */
    public void propose() {
        Optional<Sizes.MadeReport> current = sizes.current();
        if (current.isEmpty()) {
            words.set("Sizes are proposed from those of now. Let the candidate be sized first.");
            return;
        }
        SizingReport now = current.get().report();
        StudyReader reader = desk.draft().reader();
        proposal.set(Optional.empty());
        words.set("Each round sizes the candidate anew; it takes a few.");
        working.set(true);
        desk.work()
                .start(
                        PROPOSING,
                        progress ->
                                Proposal.of(
                                        reader,
                                        now.candidate().id(),
                                        now,
                                        round ->
                                                progress.report(
                                                        -1, "Trying thinner wires: " + round)),
                        this::take,
                        this::refuse);
    }

    /** Calls it off. */
    public void cancel() {
        desk.work().cancel(PROPOSING);
        working.set(false);
        invite();
    }

    /**
     * Writes what is proposed into the candidate's file.
     *
     * @return why it was not done, and what to do; empty if it was
     */
    public Optional<String> apply() {
        if (proposal.get().isEmpty()) {
            return Optional.of("Nothing has been proposed yet.");
        }
        Proposal now = proposal.get().get();
        String file = String.valueOf(now.before().file().getFileName());
        boolean same =
                desk.draft()
                        .document(file)
                        .filter(d -> d.text().equals(now.before().text()))
                        .isPresent();
        if (!same) {
            return Optional.of(file + " has changed since; propose again.");
        }
        String name = "Take the proposed sizes of " + now.now().candidate().title();
        return desk.attempt(
                new Change(name, List.of(new DraftStep.Replace(file, now.after().text()))));
    }

    private void take(Proposal found) {
        working.set(false);
        proposal.set(Optional.of(found));
        tell();
    }

    private void refuse(Exception reason) {
        working.set(false);
        words.set(String.valueOf(reason.getMessage()));
    }

    private void forget() {
        desk.work().cancel(PROPOSING);
        working.set(false);
        proposal.set(Optional.empty());
        invite();
    }

    private void invite() {
        if (proposal.get().isEmpty() && !working.get()) {
            words.set(
                    "Propose looks for the lightest wires, and the protectors, that meet every"
                            + " rule. It lists what would change before anything does.");
        }
    }

    private void tell() {
        proposal.get().ifPresent(p -> words.set(words(p)));
    }

    private String words(Proposal p) {
        if (!p.changes()) {
            return "Nothing to change. " + left(p);
        }
        double lighter =
                p.now().purchase().weight().kilograms() - p.then().purchase().weight().kilograms();
        String mass = Formats.mass(Math.abs(lighter), desk.settings().get().units());
        return p.resizes().size()
                + " sizes would change; the candidate becomes "
                + mass
                + (lighter >= 0 ? " lighter. " : " heavier. ")
                + left(p);
    }

    private static String left(Proposal p) {
        long left = p.left().stream().filter(f -> f.rule().gravity() == Rule.Gravity.WRONG).count();
        return left == 0
                ? "Then no limit is broken."
                : left + " broken limits are left, which no size mends.";
    }
}
