package stillturning.files.edit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.files.edit.CandidateOutline.OutlineRun;
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
    public enum LeverConfiguration {
        FLIGHT("in flight"),
        MASTER_OFF("with the master off"),
        STARTING("for starting");

        private final String words;

        LeverConfiguration(String words) {
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
    private final CandidateOutline outline;
    private final StudyOutline loads;

    /**
     * @param candidate the candidate's file as it is now
     * @param study the study's file as it is now
     */
    public CandidateEdits(YamlDocument candidate, YamlDocument study) {
        this.file = String.valueOf(candidate.file().getFileName());
        this.document = candidate;
        this.outline = new CandidateOutline(candidate);
        this.loads = new StudyOutline(study);
    }

    private FileEdits edits() throws ChangeRefused {
        return new FileEdits(file, document);
    }

    /** Adds a part under a free name, which stands in the change; nothing is joined to it. */
    public FileChange add(NewPart part) throws ChangeRefused {
        return add(part, part.kind);
    }

    /** Adds a part under this name, or one like it that is free. */
    public FileChange add(NewPart part, String name) throws ChangeRefused {
        FileEdits edits = edits();
        String id = add(part, name, edits);
        return edits.change("Add " + id, id);
    }

    private String add(NewPart part, String name, FileEdits edits) throws ChangeRefused {
        Set<String> taken = outline.taken();
        taken.addAll(loads.names());
        String id = CandidateOutline.free(name, taken);
        Map<String, String> settings = new TreeMap<>(part.settings);
        if (part.kind.equals("ground")) {
            settings.putIfAbsent("on-structure", onStructure(outline));
        }
        edits.put(
                CandidateOutline.PARTS,
                id,
                PartDefaults.fields(
                        part.kind, part.ofClass, part.zone, settings, loads.isTwiceTheVoltage()));
        Optional<String> position = PartDefaults.position(part.kind, part.ofClass);
        if (position.isPresent()) {
            edits.put(LeverConfiguration.FLIGHT.path(), id, YamlValue.text(position.get()));
        }
        return id;
    }

    /** How a new ground is bolted: one on no metal leads nowhere, unless all of them do so. */
    private static String onStructure(CandidateOutline outline) {
        return outline.usesStructure().orElse(true) ? "yes" : "no";
    }

    /**
     * Deletes parts and everything that speaks of them: runs that end at them, notes, positions,
     * cues and procedures that cannot be without them. A wire goes with its run, a run's own
     * protector out of it.
     */
    public FileChange delete(Set<String> parts) throws ChangeRefused {
        Set<OutlineRun> runs = new LinkedHashSet<>();
        for (String part : parts) {
            Optional<OutlineRun> run = outline.maker(part);
            if (!outline.parts().containsKey(part)) {
                OutlineRun made = run.orElseThrow(() -> notHere(part));
                if (!isProtector(part, made)) {
                    runs.add(made);
                }
            }
        }
        FileEdits edits = edits();
        List<String> also = new Deletion(outline, parts, runs, edits).write();
        // later names first, since those behind a protector that goes move up
        for (String part : new TreeSet<>(parts).descendingSet()) {
            takeOutOfRun(part, runs, edits);
        }
        return edits.change("Delete " + named(parts), List.of(), also);
    }

    private static boolean isProtector(String part, OutlineRun run) {
        String prefix = Naming.prefix(run.key());
        return run.line().withoutMade(part, prefix).isPresent()
                && !part.substring(prefix.length()).startsWith("-wire");
    }

    private void takeOutOfRun(String part, Set<OutlineRun> cut, FileEdits edits)
            throws ChangeRefused {
        Optional<OutlineRun> before = outline.maker(part);
        if (before.isEmpty() || outline.parts().containsKey(part) || cut.contains(before.get())) {
            return;
        }
        Optional<OutlineRun> run = new CandidateOutline(edits.document()).maker(part);
        Optional<RunLine> left =
                run.flatMap(r -> r.line().withoutMade(part, Naming.prefix(r.key())));
        if (left.isPresent()) {
            edits.set(run.orElseThrow().path(), left.get().text());
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
    public FileChange duplicate(Set<String> parts) throws ChangeRefused {
        FileChange pasted = paste(copy(parts));
        return pasted.named("Duplicate " + named(parts));
    }

    /** Parts with their settings and the links among them, as a text for {@link #paste}. */
    public String copy(Set<String> parts) throws ChangeRefused {
        edits(); // refuses what cannot be read
        return Clipboard.copy(outline, parts);
    }

    /** Adds parts that were copied here or in another candidate, under free names. */
    public FileChange paste(String clipboard) throws ChangeRefused {
        FileEdits edits = edits();
        List<String> pasted = Clipboard.paste(clipboard, outline, loads, edits);
        return edits.change("Paste " + named(new LinkedHashSet<>(pasted)), pasted, List.of());
    }

    /** Gives a part another name wherever the file speaks of it. */
    public FileChange rename(String part, String to) throws ChangeRefused {
        if (!outline.parts().containsKey(part)) {
            throw notHere(part);
        }
        refuseLoad(to);
        FileEdits edits = edits();
        Renaming.part(outline, part, to, edits);
        return edits.change("Rename " + part + " " + to, to);
    }

    private void refuseLoad(String name) throws ChangeRefused {
        if (loads.names().contains(name)) {
            throw new ChangeRefused("\"" + name + "\" is a load of the study; take another name");
        }
    }

    private OutlineRun run(String path) throws ChangeRefused {
        return outline.run(path)
                .orElseThrow(() -> new ChangeRefused("there is no run " + path + " here"));
    }

    /** Writes a value of a part: {@code set("battery", "capacity", "20 Ah")}. */
    public FileChange set(String part, String key, String text) throws ChangeRefused {
        if (!outline.parts().containsKey(part)) {
            throw notHere(part);
        }
        FileEdits edits = edits();
        edits.put(DocumentPlaces.under(CandidateOutline.PARTS, part), key, YamlValue.text(text));
        return edits.change("Set " + key + " of " + part, part);
    }

    /** Takes a value of a part out, so that its class says it. */
    public FileChange clear(String part, String key) throws ChangeRefused {
        FileEdits edits = edits();
        edits.remove(DocumentPlaces.under(DocumentPlaces.under(CandidateOutline.PARTS, part), key));
        return edits.change("Clear " + key + " of " + part, part);
    }

    /** Writes a text anywhere in the file; what leads to it is made if it is not there. */
    public FileChange setAt(String mapping, String key, String text) throws ChangeRefused {
        return setAt(mapping, key, YamlValue.text(text));
    }

    /** Writes a value anywhere in the file; what leads to it is made if it is not there. */
    public FileChange setAt(String mapping, String key, YamlValue value) throws ChangeRefused {
        FileEdits edits = edits();
        edits.put(mapping, key, value);
        return edits.change("Set " + key);
    }

    /** Takes whatever stands at a path out. */
    public FileChange clearAt(String path) throws ChangeRefused {
        FileEdits edits = edits();
        edits.remove(path);
        return edits.change("Clear " + path);
    }

    /** Says where a lever stands. */
    public FileChange position(LeverConfiguration when, String lever, String position)
            throws ChangeRefused {
        FileEdits edits = edits();
        edits.put(when.path(), lever, YamlValue.text(position));
        return edits.change(
                "Put " + lever + " to " + position + " " + when.words, Naming.part(lever));
    }

    /**
     * Joins two terminals: by a feed where one is a load's input, by a link elsewhere.
     *
     * @param items what lies in the run, such as {@code breaker 5 A, wire AWG 20}; a usual first
     *     guess if empty
     */
    public FileChange join(Terminal one, Terminal other, Optional<String> items)
            throws ChangeRefused {
        FileEdits edits = edits();
        new Joining(outline, loads, edits).join(one, other, items);
        return edits.change("Join " + one.part() + " to " + other.part(), one.part(), other.part());
    }

    /** Cuts a link or a feed, by its path in the file: {@code links.battery-lead}. */
    public FileChange cut(String run) throws ChangeRefused {
        FileEdits edits = edits();
        OutlineRun found = run(run);
        List<String> also = new Deletion(outline, Set.of(), Set.of(found), edits).write();
        return edits.change("Cut " + found.key(), List.of(), also);
    }

    /** Leads a run through a part that is there, entering it at a terminal. */
    public FileChange insert(String run, Terminal near, OptionalInt at) throws ChangeRefused {
        FileEdits edits = edits();
        insert(run(run), near, at, outline, edits);
        return edits.change("Insert " + near.part(), near.part());
    }

    /** Leads a run through a new part. */
    public FileChange insert(String run, NewPart part, OptionalInt at) throws ChangeRefused {
        FileEdits edits = edits();
        OutlineRun found = run(run);
        String id = add(part, part.kind, edits);
        CandidateOutline after = new CandidateOutline(edits.document());
        insert(found, new Terminal(id, "in"), at, after, edits);
        return edits.change("Insert " + id, id);
    }

    private void insert(
            OutlineRun run, Terminal near, OptionalInt at, CandidateOutline now, FileEdits edits)
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
        String item = new Joining(now, loads, edits).through(near);
        int index = at.orElse(run.line().placeInLine());
        edits.set(run.path(), run.line().with(index, item).text());
    }

    /** Leaves a load of the study out of this candidate, with its feeds and what speaks of it. */
    public FileChange leaveOut(String load) throws ChangeRefused {
        if (!loads.names().contains(load) || outline.leavesOut().contains(load)) {
            throw new ChangeRefused("there is no load \"" + load + "\" here to be left out");
        }
        FileEdits edits = edits();
        List<String> also = Deletion.ofLoad(outline, load, edits).write();
        edits.addItem(CandidateOutline.LEAVES_OUT, load);
        return edits.change("Leave " + load + " out", List.of(), also);
    }

    /** Gives the candidate another title. */
    public FileChange title(String title) throws ChangeRefused {
        FileEdits edits = edits();
        edits.put("", "candidate", YamlValue.text(title));
        return edits.change("Call it " + title);
    }
}
