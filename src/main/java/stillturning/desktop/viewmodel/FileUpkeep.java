package stillturning.desktop.viewmodel;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stillturning.desktop.draft.Conflict;
import stillturning.desktop.draft.Conflict.Choice;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.Outside;
import stillturning.desktop.draft.Recovered;
import stillturning.desktop.viewmodel.Notice.Reply;
import stillturning.desktop.viewmodel.Notice.Weight;
import stillturning.yaml.Problem;

/**
 * Looks after an open study's files: saves them, notices what others change, finds what a program
 * left that was killed; and tells the user in words what became of it.
 */
public final class FileUpkeep {

    private static final String SAVING = "saving";
    private static final String OUTSIDE = "outside";
    private static final String RECOVERED = "recovered ";
    private static final String CONFLICT = "conflict ";

    private final Draft draft;
    private final Consumer<Notice> teller;
    private final ZoneId zone;

    /**
     * @param teller shows notices
     * @param zone in which times of day are told
     */
    public FileUpkeep(Draft draft, Consumer<Notice> teller, ZoneId zone) {
        this.draft = draft;
        this.teller = teller;
        this.zone = zone;
    }

    /** Saves what is unsaved; returns whether all of it is on disk. */
    public boolean save() {
        List<Problem> failed = draft.save();
        tell(draft.state().conflicts());
        if (!failed.isEmpty()) {
            teller.accept(
                    new Notice(
                            SAVING,
                            Weight.WRONG,
                            "Not saved: " + inWords(failed),
                            List.of(new Reply("Try again", this::save))));
        }
        return failed.isEmpty();
    }

    /** Takes over what others changed on disk, and asks where both changed the same. */
    public void look() {
        Outside found = draft.lookOutside();
        outside(
                Weight.NEWS,
                found.takenOver(),
                " changed outside this program and was read again.");
        outside(
                Weight.CARE,
                found.merged(),
                " changed outside as well; both changes are in it now. Look it over before you"
                        + " save.");
        tell(found.conflicts());
        if (!found.problems().isEmpty()) {
            teller.accept(Notice.of(OUTSIDE, Weight.WRONG, inWords(found.problems())));
        }
    }

    private void outside(Weight weight, List<String> files, String what) {
        if (!files.isEmpty()) {
            String words = String.join(", ", files) + what;
            Reply back = new Reply("Take back", draft::undo);
            teller.accept(new Notice(OUTSIDE, weight, words, List.of(back)));
        }
    }

    private void tell(List<Conflict> conflicts) {
        for (Conflict conflict : conflicts) {
            teller.accept(
                    new Notice(
                            CONFLICT + conflict.file(),
                            Weight.CARE,
                            conflict.file()
                                    + " was changed here and outside in the same place. Which one"
                                    + " is right? The other can be had back by undo.",
                            List.of(
                                    reply("Keep mine", conflict, Choice.MINE),
                                    reply("Take the other", conflict, Choice.THEIRS))));
        }
    }

    private Reply reply(String words, Conflict conflict, Choice choice) {
        return new Reply(words, () -> draft.resolve(conflict, choice));
    }

    /** Tells of work that a program left unsaved when it ended. */
    public void offerRecovered() {
        int number = 0;
        for (Recovered recovered : draft.recovered()) {
            String files =
                    recovered.files().stream()
                            .map(Recovered.UnsavedFile::file)
                            .collect(Collectors.joining(", "));
            teller.accept(
                    new Notice(
                            RECOVERED + number++,
                            Weight.CARE,
                            "Unsaved work of "
                                    + DateTimeFormatter.ofPattern("d MMMM HH:mm", Locale.ENGLISH)
                                            .format(recovered.when().atZone(zone))
                                    + " on "
                                    + files
                                    + " is still there.",
                            List.of(
                                    new Reply("Take it up", () -> take(recovered)),
                                    new Reply("Throw it away", () -> draft.drop(recovered)))));
        }
    }

    private void take(Recovered recovered) {
        Outside found = draft.take(recovered);
        tell(found.conflicts());
    }

    private static String inWords(List<Problem> problems) {
        return problems.stream()
                .map(p -> p.file().getFileName() + ": " + p.wrong() + "; " + p.right())
                .collect(Collectors.joining(". "));
    }
}
