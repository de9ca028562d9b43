package stillturning.desktop.viewmodel;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stillturning.desktop.draft.Conflict;
import stillturning.desktop.draft.Conflict.KeptText;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.FolderStamp;
import stillturning.desktop.draft.Outside;
import stillturning.desktop.draft.Recovered;
import stillturning.desktop.viewmodel.Notice.Reply;
import stillturning.desktop.viewmodel.Notice.Severity;
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
    private final Teller teller;
    private final ZoneId zone;
    private final Set<String> asked = new TreeSet<>();
    private FolderStamp stamp;

    /**
     * Tells the user what he should know.
     *
     * @param show shows a notice
     * @param clear takes the notice of a topic away
     * @param compare shows the two texts of a conflict place by place
     */
    public record Teller(
            Consumer<Notice> show, Consumer<String> clear, Consumer<Conflict> compare) {}

    /**
     * @param zone in which times of day are told
     */
    public FileUpkeep(Draft draft, Teller teller, ZoneId zone) {
        this.draft = draft;
        this.teller = teller;
        this.zone = zone;
        this.stamp = FolderStamp.of(draft.folder());
    }

    /** Whether somebody may have written a file since this was asked last; from any thread. */
    public synchronized boolean isTouched() {
        FolderStamp now = FolderStamp.of(draft.folder());
        boolean touched = !now.equals(stamp);
        stamp = now;
        return touched;
    }

    /** Takes notices away that do not hold any more. */
    public void tidy() {
        if (draft.state().isSaved()) {
            teller.clear.accept(SAVING);
        }
        Set<String> waiting =
                draft.state().conflicts().stream()
                        .map(FileUpkeep::topic)
                        .collect(Collectors.toSet());
        List<String> settled = asked.stream().filter(t -> !waiting.contains(t)).toList();
        settled.forEach(teller.clear);
        settled.forEach(asked::remove);
    }

    /** Ends a conflict, one choice for each of its places. */
    public void resolve(Conflict conflict, List<KeptText> choices) {
        draft.resolve(conflict, choices);
        // what was changed meanwhile is asked about again
        tell(
                draft.state().conflicts().stream()
                        .filter(c -> c.file().equals(conflict.file()))
                        .toList());
        tidy();
    }

    private static String topic(Conflict conflict) {
        return CONFLICT + conflict.file();
    }

    /** Saves what is unsaved; returns whether all of it is on disk. */
    public boolean save() {
        List<Problem> failed = draft.save();
        tell(draft.state().conflicts());
        tidy();
        if (!failed.isEmpty()) {
            teller.show.accept(
                    new Notice(
                            SAVING,
                            Severity.WRONG,
                            "Not saved: " + inWords(failed),
                            List.of(new Reply("Try again", this::save))));
        }
        return failed.isEmpty();
    }

    /** Takes over what others changed on disk, and asks where both changed the same. */
    public void look() {
        Outside found = draft.lookOutside();
        outside(
                Severity.NEWS,
                found.takenOver(),
                " changed outside this program and was read again.");
        outside(
                Severity.CARE,
                found.merged(),
                " changed outside as well; both changes are in it now. Look it over before you"
                        + " save.");
        tell(found.conflicts());
        tidy();
        if (!found.problems().isEmpty()) {
            teller.show.accept(Notice.of(OUTSIDE, Severity.WRONG, inWords(found.problems())));
        }
    }

    private void outside(Severity weight, List<String> files, String what) {
        if (!files.isEmpty()) {
            String words = String.join(", ", files) + what;
            Reply back = new Reply("Take back", draft::undo);
            teller.show.accept(new Notice(OUTSIDE, weight, words, List.of(back)));
        }
    }

    private void tell(List<Conflict> conflicts) {
        for (Conflict conflict : conflicts) {
            asked.add(topic(conflict));
            List<Reply> replies = new ArrayList<>();
            int places = conflict.disputes().size();
            if (places > 0) {
                replies.add(new Reply("Compare \u2026", () -> compare(conflict)));
            }
            replies.add(reply("Keep mine", conflict, KeptText.MINE));
            replies.add(reply("Take the other", conflict, KeptText.THEIRS));
            teller.show.accept(
                    new Notice(
                            topic(conflict),
                            Severity.CARE,
                            conflict.file()
                                    + " was changed both here and outside"
                                    + (places > 1 ? ", in " + places + " places" : "")
                                    + ". Which of the two is right? The other can be had back by"
                                    + " undo.",
                            replies));
        }
    }

    private void compare(Conflict conflict) {
        tell(List.of(conflict));
        teller.compare.accept(conflict);
    }

    private Reply reply(String words, Conflict conflict, KeptText choice) {
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
            teller.show.accept(
                    new Notice(
                            RECOVERED + number++,
                            Severity.CARE,
                            "Unsaved work of "
                                    + DateTimeFormatter.ofPattern("d MMMM HH:mm", Locale.ENGLISH)
                                            .format(recovered.when().atZone(zone))
                                    + " on "
                                    + files
                                    + " is still there.",
                            List.of(
                                    new Reply("Throw it away", () -> draft.drop(recovered)),
                                    new Reply("Take it up", () -> take(recovered)))));
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
