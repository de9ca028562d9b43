package stillturning.desktop.draft.edits;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.ChangeRefused;
import stillturning.desktop.draft.edits.CandidateOutline.Run;
import stillturning.model.Terminal;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/**
 * What can be done to one candidate, each as a change to be made. Nothing is written here. Every
 * method refuses what the file as it is forbids, with a sentence that says what to do.
 */
public final class CandidateEdits {

    /** When a lever stands where. */
    public enum Configuration {
        FLIGHT("in flight"),
        MASTER_OFF("with the master off"),
        STARTING("for starting");

        private final String words;

        Configuration(String words) {
            this.words = words;
        }

        private String path() {
            return DocumentPlaces.under(
                    "positions", name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    /**
     * A part to be added.
     *
     * @param kind in the word of the files
     * @param ofClass class in the catalogue; the kind's first if empty
     * @param settings values by key, as texts
     */
    public record NewPart(
            String kind, Optional<String> ofClass, String zone, Map<String, String> settings) {
        public NewPart {
            settings = Map.copyOf(settings);
        }

        /** One of the kind's first class, with nothing else said of it. */
        public static NewPart of(String kind, String zone) {
            return new NewPart(kind, Optional.empty(), zone, Map.of());
        }
    }

    private final String file;
    private final YamlDocument document;
    private final CandidateOutline layout;
    private final StudyOutline loads;

    /**
     * @param candidate the candidate's file as it is now
     * @param study the study's file as it is now
     */
    public CandidateEdits(YamlDocument candidate, YamlDocument study) {
        this.file = String.valueOf(candidate.file().getFileName());
        this.document = candidate;
        this.layout = new CandidateOutline(candidate);
        this.loads = new StudyOutline(study);
    }

    private FileEdits pen() throws ChangeRefused {
        return new FileEdits(file, document);
    }

    /** Adds a part under a free name, which stands in the change; nothing is joined to it. */
    public Change add(NewPart part) throws ChangeRefused {
        FileEdits pen = pen();
        String id = add(part, pen);
        return pen.change("Add " + id, List.of(id), List.of());
    }

    private String add(NewPart part, FileEdits pen) throws ChangeRefused {
        Set<String> taken = layout.taken();
        taken.addAll(loads.names());
        String id = CandidateOutline.free(part.kind, taken);
        Map<String, String> settings = new TreeMap<>(part.settings);
        if (part.kind.equals("ground")) {
            settings.putIfAbsent("on-structure", "yes"); // one that leads nowhere cannot be read
        }
        pen.put(
                CandidateOutline.PARTS,
                id,
                PartDefaults.fields(
                        part.kind, part.ofClass, part.zone, settings, loads.isTwiceTheVoltage()));
        Optional<String> position = PartDefaults.position(part.kind, part.ofClass);
        if (position.isPresent()) {
            pen.put(Configuration.FLIGHT.path(), id, YamlValue.text(position.get()));
        }
        return id;
    }

    /**
     * Deletes parts and everything that speaks of them: runs that end at them, notes, positions,
     * cues and procedures that cannot be without them. A wire goes with its run, a run's own
     * protector out of it.
     */
    public Change delete(Set<String> parts) throws ChangeRefused {
        Set<Run> runs = new LinkedHashSet<>();
        for (String part : parts) {
            Optional<Run> run = layout.maker(part);
            if (!layout.parts().containsKey(part)) {
                Run made = run.orElseThrow(() -> notHere(part));
                if (!isProtector(part, made)) {
                    runs.add(made);
                }
            }
        }
        FileEdits pen = pen();
        List<String> also = new Deletion(layout, parts, runs, pen).write();
        // later names first, since those behind a protector that goes move up
        for (String part : new TreeSet<>(parts).descendingSet()) {
            takeOutOfRun(part, runs, pen);
        }
        return pen.change("Delete " + named(parts), List.of(), also);
    }

    private static boolean isProtector(String part, Run run) {
        String prefix = Naming.prefix(run.key());
        return run.line().withoutMade(part, prefix).isPresent()
                && !part.substring(prefix.length()).startsWith("-wire");
    }

    private void takeOutOfRun(String part, Set<Run> cut, FileEdits pen) throws ChangeRefused {
        Optional<Run> before = layout.maker(part);
        if (before.isEmpty() || layout.parts().containsKey(part) || cut.contains(before.get())) {
            return;
        }
        Optional<Run> run = new CandidateOutline(pen.document()).maker(part);
        Optional<RunLine> left =
                run.flatMap(r -> r.line().withoutMade(part, Naming.prefix(r.key())));
        if (left.isPresent()) {
            pen.set(run.orElseThrow().path(), left.get().text());
        }
    }

    private ChangeRefused notHere(String part) {
        return new ChangeRefused(
                loads.names().contains(part)
                        ? "\"" + part + "\" is the study's; leave it out of this candidate instead"
                        : "there is no part \"" + part + "\" in this candidate");
    }

    private static String named(Set<String> parts) {
        return parts.size() == 1 ? parts.iterator().next() : parts.size() + " parts";
    }

    /** Doubles parts with their settings, and the links among them. */
    public Change duplicate(Set<String> parts) throws ChangeRefused {
        Change pasted = paste(copy(parts));
        return pasted.named("Duplicate " + named(parts));
    }

    /** Parts with their settings and the links among them, as a text for {@link #paste}. */
    public String copy(Set<String> parts) throws ChangeRefused {
        pen(); // refuses what cannot be read
        return Clipboard.copy(layout, parts);
    }

    /** Adds parts that were copied here or in another candidate, under free names. */
    public Change paste(String clipboard) throws ChangeRefused {
        FileEdits pen = pen();
        List<String> pasted = Clipboard.paste(clipboard, layout, loads, pen);
        return pen.change("Paste " + named(new LinkedHashSet<>(pasted)), pasted, List.of());
    }

    /** Gives a part another name wherever the file speaks of it. */
    public Change rename(String part, String to) throws ChangeRefused {
        if (!layout.parts().containsKey(part)) {
            throw notHere(part);
        }
        refuseLoad(to);
        FileEdits pen = pen();
        Renaming.part(layout, part, to, pen);
        return pen.change("Rename " + part + " " + to, List.of(to), List.of());
    }

    /** Gives a link another name; what it makes is named after it. */
    public Change renameLink(String link, String to) throws ChangeRefused {
        refuseLoad(to);
        FileEdits pen = pen();
        Renaming.link(layout, run(DocumentPlaces.under(CandidateOutline.LINKS, link)), to, pen);
        return pen.change("Rename link " + link + " " + to, List.of(), List.of());
    }

    private void refuseLoad(String name) throws ChangeRefused {
        if (loads.names().contains(name)) {
            throw new ChangeRefused("\"" + name + "\" is a load of the study; take another name");
        }
    }

    private Run run(String path) throws ChangeRefused {
        return layout.run(path)
                .orElseThrow(() -> new ChangeRefused("there is no run " + path + " here"));
    }

    /** Writes a value of a part: {@code set("battery", "capacity", "20 Ah")}. */
    public Change set(String part, String key, String text) throws ChangeRefused {
        if (!layout.parts().containsKey(part)) {
            throw notHere(part);
        }
        FileEdits pen = pen();
        pen.put(DocumentPlaces.under(CandidateOutline.PARTS, part), key, YamlValue.text(text));
        return pen.change("Set " + key + " of " + part, List.of(part), List.of());
    }

    /** Takes a value of a part out, so that its class says it. */
    public Change clear(String part, String key) throws ChangeRefused {
        FileEdits pen = pen();
        pen.remove(DocumentPlaces.under(DocumentPlaces.under(CandidateOutline.PARTS, part), key));
        return pen.change("Clear " + key + " of " + part, List.of(part), List.of());
    }

    /** Writes a text anywhere in the file; what leads to it is made if it is not there. */
    public Change setAt(String mapping, String key, String text) throws ChangeRefused {
        return setAt(mapping, key, YamlValue.text(text));
    }

    /** Writes a value anywhere in the file; what leads to it is made if it is not there. */
    public Change setAt(String mapping, String key, YamlValue value) throws ChangeRefused {
        FileEdits pen = pen();
        pen.put(mapping, key, value);
        return pen.change("Set " + key, List.of(), List.of());
    }

    /** Takes whatever stands at a path out. */
    public Change clearAt(String path) throws ChangeRefused {
        FileEdits pen = pen();
        pen.remove(path);
        return pen.change("Clear " + path, List.of(), List.of());
    }

    /** Says where a lever stands. */
    public Change position(Configuration when, String lever, String position) throws ChangeRefused {
        FileEdits pen = pen();
        pen.put(when.path(), lever, YamlValue.text(position));
        return pen.change(
                "Put " + lever + " to " + position + " " + when.words,
                List.of(Naming.part(lever)),
                List.of());
    }

    /** Leaves a lever where it stands otherwise. */
    public Change noPosition(Configuration when, String lever) throws ChangeRefused {
        FileEdits pen = pen();
        pen.remove(DocumentPlaces.under(when.path(), lever));
        return pen.change(
                "Leave " + lever + " " + when.words, List.of(Naming.part(lever)), List.of());
    }

    /**
     * Joins two terminals: by a feed where one is a load's input, by a link elsewhere.
     *
     * @param items what lies in the run, such as {@code breaker 5 A, wire AWG 20}; a usual first
     *     guess if empty
     */
    public Change join(Terminal one, Terminal other, Optional<String> items) throws ChangeRefused {
        FileEdits pen = pen();
        new Joining(layout, loads, pen).join(one, other, items);
        return pen.change(
                "Join " + one.part() + " to " + other.part(),
                List.of(one.part(), other.part()),
                List.of());
    }

    /** Cuts a link or a feed, by its path in the file: {@code links.battery-lead}. */
    public Change cut(String run) throws ChangeRefused {
        FileEdits pen = pen();
        Run found = run(run);
        List<String> also = new Deletion(layout, Set.of(), Set.of(found), pen).write();
        return pen.change("Cut " + found.key(), List.of(), also);
    }

    /** Leads a run through a part that is there, entering it at a terminal. */
    public Change insert(String run, Terminal near, OptionalInt at) throws ChangeRefused {
        FileEdits pen = pen();
        insert(run(run), near, at, layout, pen);
        return pen.change("Insert " + near.part(), List.of(near.part()), List.of());
    }

    /** Leads a run through a new part. */
    public Change insert(String run, NewPart part, OptionalInt at) throws ChangeRefused {
        FileEdits pen = pen();
        Run found = run(run);
        String id = add(part, pen);
        CandidateOutline after = new CandidateOutline(pen.document());
        insert(found, new Terminal(id, "in"), at, after, pen);
        return pen.change("Insert " + id, List.of(id), List.of());
    }

    private void insert(Run run, Terminal near, OptionalInt at, CandidateOutline now, FileEdits pen)
            throws ChangeRefused {
        boolean there =
                run.line().anchors().stream()
                        .anyMatch(
                                a ->
                                        a.part().equals(near.part())
                                                && a.terminal().isEmpty()
                                                && !near.name().matches("[0-9]+[ab]"));
        if (there) {
            throw new ChangeRefused(run.key() + " leads through " + near.part() + " already");
        }
        String item = new Joining(now, loads, pen).through(near);
        int index = at.orElse(run.line().placeInLine());
        pen.set(run.path(), run.line().with(index, item).text());
    }

    /** Writes a run anew, as text. */
    public Change setRun(String run, String text) throws ChangeRefused {
        FileEdits pen = pen();
        Run found = run(run);
        pen.set(run, text);
        return pen.change("Change " + found.key(), List.of(), List.of());
    }

    /** Leaves a load of the study out of this candidate, with its feeds and what speaks of it. */
    public Change leaveOut(String load) throws ChangeRefused {
        if (!loads.names().contains(load) || layout.leavesOut().contains(load)) {
            throw new ChangeRefused("there is no load \"" + load + "\" here to be left out");
        }
        FileEdits pen = pen();
        Set<Run> feeds = new LinkedHashSet<>();
        for (Run run : layout.runs()) {
            if (run.section().equals(CandidateOutline.FEEDS)
                    && Naming.part(run.key()).equals(load)) {
                feeds.add(run);
            }
        }
        List<String> also = new Deletion(layout, Set.of(load), feeds, pen).write();
        pen.addItem(CandidateOutline.LEAVES_OUT, load);
        return pen.change("Leave " + load + " out", List.of(), also);
    }

    /** Gives the candidate another title. */
    public Change title(String title) throws ChangeRefused {
        FileEdits pen = pen();
        pen.put("", "candidate", YamlValue.text(title));
        return pen.change("Call it " + title, List.of(), List.of());
    }
}
