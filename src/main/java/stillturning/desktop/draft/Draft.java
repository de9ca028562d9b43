package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import stillturning.desktop.draft.OutsideChanges.Pending;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/**
 * A study's folder opened for editing: texts, named changes that can be taken back, and what became
 * of the files meanwhile. May be used from any thread; listeners hear of each change on the thread
 * that made it.
 */
public final class Draft implements AutoCloseable {

    private final Path folder;
    private final Clock clock;
    private final StudyReader opened;
    private final List<Problem> unread = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final History history = new History();
    private final Map<String, Pending> pending = new TreeMap<>();
    private final List<Consumer<DraftState>> listeners = new CopyOnWriteArrayList<>();
    private final Saving saving;
    private final Optional<Autosave> autosave;
    private final Recovery recovery;
    private final Object lock = new Object();
    private EditedFiles files;
    private StudyReader reader;
    private EditedFiles readBy;
    private long revision;
    private DraftState state;

    private Draft(Path folder, Optional<JournalPolicy> policy) throws IOException {
        this.folder = folder;
        this.clock = policy.map(JournalPolicy::clock).orElse(Clock.systemUTC());
        Listing listing = Listing.of(folder);
        listing.clearWhatWasLeft();
        this.unread.addAll(listing.problems());
        TreeMap<String, EditedFile> read = new TreeMap<>();
        listing.documents().forEach((name, document) -> read.put(name, EditedFile.read(document)));
        this.files = new EditedFiles(folder, read);
        this.opened = StudyReader.open(folder);
        this.reader = opened.holding(listing.documents().values(), unread);
        this.readBy = files;
        this.saving = new Saving(folder);
        this.state = stateNow();
        this.autosave = policy.map(k -> new Autosave(k, folder, this::filesNow, this::warn));
        this.recovery =
                policy.map(k -> Recovery.find(k.folder(), folder, files, this::warn))
                        .orElseGet(Recovery::none);
    }

    /**
     * Opens a study's folder, and keeps no unsaved work.
     *
     * @throws IOException if the folder cannot be read; what is wrong with single files is told by
     *     the state and by reading
     */
    public static Draft open(Path folder) throws IOException {
        return new Draft(folder, Optional.empty());
    }

    /**
     * Opens a study's folder, and keeps unsaved work where nothing can touch it.
     *
     * @throws IOException if the folder cannot be read
     */
    public static Draft open(Path folder, JournalPolicy policy) throws IOException {
        return new Draft(folder, Optional.of(policy));
    }

    /** The study's folder. */
    public Path folder() {
        return folder;
    }

    /** The texts as they are now, and what can be done with them. */
    public DraftState state() {
        synchronized (lock) {
            return state;
        }
    }

    /**
     * Calls somebody after every change.
     *
     * @return ends it
     */
    public Runnable listen(Consumer<DraftState> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** A file as it is now, by its name with ending. */
    public Optional<YamlDocument> document(String file) {
        return filesNow().document(file);
    }

    /** A reader over the texts as they are now; what has not changed is not bound again. */
    public StudyReader reader() {
        EditedFiles now;
        StudyReader before;
        List<Problem> unreadNow;
        synchronized (lock) {
            if (readBy == files) {
                return reader;
            }
            now = files;
            before = reader;
            unreadNow = List.copyOf(unread);
        }
        List<YamlDocument> documents = now.all().stream().flatMap(s -> s.now().stream()).toList();
        StudyReader made = before.holding(documents, unreadNow);
        synchronized (lock) {
            if (now == files) {
                reader = made;
                readBy = now;
            }
        }
        return made;
    }

    /**
     * Makes a change, as a whole or not at all.
     *
     * @return the texts after it
     * @throws ChangeRefused if one of its steps cannot be made
     */
    public DraftState make(Change change) throws ChangeRefused {
        synchronized (lock) {
            EditedFiles after = files;
            for (DraftStep step : change.steps()) {
                after = step.on(after);
            }
            UndoEntry entry = entry(change.name(), after);
            move(after, change.typedIn().map(entry::typedIn).orElse(entry));
        }
        return tell();
    }

    private UndoEntry entry(String name, EditedFiles after) {
        return UndoEntry.between(name, files, after, clock.instant());
    }

    private void move(EditedFiles after, UndoEntry entry) {
        if (!entry.isNothing()) {
            history.add(entry, files, after);
        }
        put(after);
    }

    private void put(EditedFiles after) {
        if (after != files) {
            files = after;
            revision++;
            pending.replaceAll((name, p) -> new Pending(after.at(name), p.theirs()));
        }
        state = stateNow();
    }

    /** Takes the last change back; does nothing if there is none. */
    public DraftState undo() {
        synchronized (lock) {
            put(history.undo(files));
        }
        return tell();
    }

    /** Makes the change again that was taken back last; does nothing if there is none. */
    public DraftState redo() {
        synchronized (lock) {
            put(history.redo(files));
        }
        return tell();
    }

    /**
     * Compares with the files on disk. What was only changed there is taken over, as a change that
     * can be taken back; what was changed on both sides is merged if no two changed lines touch.
     */
    public Outside lookOutside() {
        try {
            Outside outside = bringIn(UnaryOperator.identity(), Optional.empty());
            if (!outside.isQuiet()) {
                tell();
            }
            return outside;
        } catch (IOException gone) {
            return gone(gone);
        }
    }

    /** Brings the files on disk together with some work, as a change of this name. */
    private Outside bringIn(UnaryOperator<EditedFiles> work, Optional<String> name)
            throws IOException {
        Listing listing = Listing.of(folder);
        synchronized (lock) {
            return reconcile(new OutsideChanges(work.apply(files), listing), listing, name);
        }
    }

    private Outside gone(IOException why) {
        String right = "bring it back; the texts are kept here until then";
        Problem problem = problem("the folder cannot be read: " + why, right);
        told(List.of(problem));
        tell();
        return new Outside(List.of(), List.of(), List.of(), List.of(problem));
    }

    private Problem problem(String wrong, String right) {
        return new Problem(folder, 1, 1, "", wrong, right);
    }

    /** Brings in what was found, and says what of it is new. */
    private Outside reconcile(OutsideChanges found, Listing listing, Optional<String> name) {
        List<Conflict> known = pending.values().stream().map(Pending::conflict).toList();
        List<Problem> news = new ArrayList<>(found.problems());
        listing.problems().stream().filter(p -> !unread.contains(p)).forEach(news::add);
        pending.clear();
        pending.putAll(found.conflicts());
        unread.clear();
        unread.addAll(listing.problems());
        problems.addAll(found.problems());
        EditedFiles after = found.files();
        move(after, entry(name.orElseGet(found::name), after));
        return new Outside(
                found.takenOver(),
                found.merged(),
                pending.values().stream()
                        .map(Pending::conflict)
                        .filter(c -> !known.contains(c))
                        .toList(),
                news);
    }

    /**
     * Ends a conflict by one choice for all of its places; what only one of the two changed is kept
     * from both. The text that is not kept can be had back by undo, or is on disk.
     */
    public DraftState resolve(Conflict conflict, Conflict.KeptText choice) {
        return resolve(conflict, now -> Optional.of(now.kept(choice)));
    }

    /**
     * Ends a conflict place by place. If other lines are disputed by now it goes on waiting.
     *
     * @param choices one for each of its places, from top to bottom
     */
    public DraftState resolve(Conflict conflict, List<Conflict.KeptText> choices) {
        return resolve(conflict, now -> now.kept(conflict, choices));
    }

    private DraftState resolve(
            Conflict conflict, Function<Pending, Optional<EditedFile>> choosing) {
        String file = conflict.file();
        synchronized (lock) {
            Optional<EditedFile> kept = Optional.ofNullable(pending.get(file)).flatMap(choosing);
            if (kept.isPresent()) {
                pending.remove(file);
                EditedFiles after = files.with(file, kept.get());
                move(after, entry("Choose between the two in " + file, after));
            }
        }
        return tell();
    }

    /**
     * Writes what is unsaved, each file whole or not at all; its content before stays beside it as
     * a file with {@code ~} behind its name. What was changed outside is brought in first.
     *
     * @return why files could not be saved; empty if all is on disk
     */
    public List<Problem> save() {
        Outside outside = lookOutside();
        List<Problem> failed = new ArrayList<>(outside.problems());
        synchronized (saving) {
            autosave.ifPresent(Autosave::write);
            EditedFiles now = filesNow();
            List<String> waiting = state().conflicts().stream().map(Conflict::file).toList();
            for (String name : saving.inOrder(now)) {
                if (waiting.contains(name)) {
                    failed.add(saving.waits(name));
                } else {
                    saving.write(now.at(name), failed).ifPresent(disk -> saved(name, disk));
                }
            }
        }
        told(failed);
        autosave.ifPresent(Autosave::write);
        tell();
        return List.copyOf(failed);
    }

    private void saved(String name, Optional<YamlDocument> disk) {
        synchronized (lock) {
            history.close();
            files = files.with(name, files.at(name).onDisk(disk));
        }
    }

    private void told(List<Problem> failed) {
        synchronized (lock) {
            problems.clear();
            problems.addAll(failed);
            state = stateNow();
        }
    }

    /** Unsaved work that programs left which ended without saving it. */
    public List<Recovered> recovered() {
        return recovery.all();
    }

    /** Brings unsaved work in, as a change that can be taken back, merged with what is on disk. */
    public Outside take(Recovered recovered) {
        try {
            Outside outside =
                    bringIn(
                            now -> recovery.onto(now, recovered),
                            Optional.of("Take up unsaved work"));
            if (autosave.map(Autosave::write).orElse(true)) {
                drop(recovered);
            }
            tell();
            return outside;
        } catch (IOException gone) {
            return gone(gone);
        }
    }

    /** Throws unsaved work of an ended program away. */
    public void drop(Recovered recovered) {
        recovery.end(recovered);
    }

    /**
     * Ends the editing; what is unsaved is kept, and offered to the next program that opens the
     * study.
     */
    public void leave() {
        autosave.ifPresent(Autosave::leave);
        close();
    }

    /** Ends the editing; what is unsaved is given up. */
    @Override
    public void close() {
        autosave.ifPresent(Autosave::close);
        recovery.letGo();
        listeners.clear();
    }

    private EditedFiles filesNow() {
        synchronized (lock) {
            return files;
        }
    }

    private void warn(String why) {
        synchronized (lock) {
            Problem problem = problem(why, "save often until that is mended");
            if (!problems.contains(problem)) {
                problems.add(problem);
                state = stateNow();
            }
        }
        announce();
    }

    private DraftState stateNow() {
        List<Problem> all = new ArrayList<>(unread);
        all.addAll(problems);
        List<Conflict> waiting = pending.values().stream().map(Pending::conflict).toList();
        return DraftState.of(revision, files, history, waiting, all);
    }

    private DraftState tell() {
        autosave.ifPresent(Autosave::changed);
        return announce();
    }

    private DraftState announce() {
        DraftState now = state();
        listeners.forEach(listener -> listener.accept(now));
        return now;
    }
}
