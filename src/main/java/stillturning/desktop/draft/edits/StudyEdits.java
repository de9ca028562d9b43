package stillturning.desktop.draft.edits;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileChange;
import stillturning.files.edit.FileEdits;
import stillturning.files.edit.LoadEdits;
import stillturning.files.edit.Naming;
import stillturning.files.edit.StudyMentions;
import stillturning.files.edit.StudyOutline;
import stillturning.files.edit.WrittenKeys;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** What can be done to a study: to its own file, and to its candidates as a whole. */
public final class StudyEdits {

    private static final String ENDING = ".yaml";
    private static final String STUDY = "study" + ENDING;
    private static final String LOADS = "loads";

    private final YamlDocument study;
    private final SortedMap<String, YamlDocument> candidates;

    /**
     * @param study the study's file as it is now
     * @param candidates the candidates' files as they are now
     */
    public StudyEdits(YamlDocument study, List<YamlDocument> candidates) {
        this.study = study;
        this.candidates = new TreeMap<>();
        candidates.forEach(c -> this.candidates.put(nameOf(c), c));
    }

    private static String nameOf(YamlDocument document) {
        return String.valueOf(document.file().getFileName());
    }

    private FileEdits edits() throws ChangeRefused {
        return new FileEdits(STUDY, study);
    }

    /** A new candidate with one battery and one bus, which every load hangs on. */
    public Change empty(String id, String title) throws ChangeRefused {
        refuseTaken(id);
        edits(); // refuses what cannot be read
        YamlDocument start = YamlDocument.of(Path.of(id + ENDING), EmptyCandidate.START);
        FileEdits edits = new FileEdits(id + ENDING, start);
        new EmptyCandidate(new StudyOutline(study), usesStructure()).fill(title, edits);
        return new Change(
                "New candidate " + id,
                List.of(new DraftStep.Create(id + ENDING, edits.document().text())));
    }

    /** Whether the aircraft's metal leads the returns of some candidate, or none says so. */
    private boolean usesStructure() {
        List<Boolean> said =
                candidates.values().stream()
                        .flatMap(c -> new CandidateOutline(c).usesStructure().stream())
                        .toList();
        return said.isEmpty() || said.contains(true);
    }

    /** A new candidate that is like another one, comments and all. */
    public Change copy(String from, String id, String title) throws ChangeRefused {
        refuseTaken(id);
        FileEdits edits = new FileEdits(from + ENDING, candidate(from));
        edits.put("", "candidate", YamlValue.text(title));
        return new Change(
                "New candidate " + id + " from " + from,
                List.of(new DraftStep.Create(id + ENDING, edits.document().text())));
    }

    /** Deletes a candidate; its file stays beside the others with {@code ~} behind its name. */
    public Change delete(String id) throws ChangeRefused {
        candidate(id);
        if (candidates.size() == 1) {
            throw new ChangeRefused("a study needs a candidate; make another one first");
        }
        List<DraftStep> steps = new ArrayList<>(List.of(new DraftStep.Delete(id + ENDING)));
        List<String> also = new ArrayList<>();
        if (isBaseline(id)) {
            FileEdits edits = edits();
            edits.remove("baseline");
            steps.addAll(Change.of(edits.change("")).steps());
            also.add("leaves the study without a baseline");
        }
        return new Change("Delete candidate " + id, steps, List.of(), also);
    }

    /** Gives a candidate's file another name, and the study's baseline with it. */
    public Change rename(String id, String to) throws ChangeRefused {
        candidate(id);
        refuseTaken(to);
        List<DraftStep> steps =
                new ArrayList<>(List.of(new DraftStep.RenameFile(id + ENDING, to + ENDING)));
        if (isBaseline(id)) {
            FileEdits edits = edits();
            edits.set("baseline", to);
            steps.addAll(Change.of(edits.change("")).steps());
        }
        return new Change("Rename candidate " + id + " " + to, steps);
    }

    private boolean isBaseline(String id) {
        return WrittenKeys.in(study).text("baseline").filter(id::equals).isPresent();
    }

    private YamlDocument candidate(String id) throws ChangeRefused {
        return Optional.ofNullable(candidates.get(id + ENDING))
                .orElseThrow(() -> new ChangeRefused("there is no candidate \"" + id + "\" here"));
    }

    private void refuseTaken(String id) throws ChangeRefused {
        Naming.refuseUnlessPlain(id);
        if (id.equals("study") || candidates.containsKey(id + ENDING)) {
            throw new ChangeRefused("\"" + id + "\" is there already; take another name");
        }
    }

    /**
     * Adds a load to the study; every candidate leaves it out until it is fed there.
     *
     * @param settings values by key, as texts: {@code zone}, {@code draws}, ...
     */
    public Change addLoad(String load, Map<String, String> settings) throws ChangeRefused {
        Naming.refuseUnlessPlain(load);
        refuseUsed(load);
        List<YamlValue.Field> fields = new ArrayList<>();
        new LinkedHashMap<>(settings).forEach((k, text) -> fields.add(YamlValue.field(k, text)));
        FileEdits edits = edits();
        edits.put(LOADS, load, new YamlValue.Fields(fields));
        List<DraftStep> steps = new ArrayList<>(Change.of(edits.change("")).steps());
        for (Map.Entry<String, YamlDocument> candidate : candidates.entrySet()) {
            FileEdits other = new FileEdits(candidate.getKey(), candidate.getValue());
            other.addItem(CandidateOutline.LEAVES_OUT, load);
            steps.addAll(Change.of(other.change("")).steps());
        }
        return new Change(
                "Add load " + load,
                steps,
                List.of(load),
                List.of("every candidate leaves it out until it is fed there"));
    }

    /** Gives a load another name, in the study and in every candidate. */
    public Change renameLoad(String load, String to) throws ChangeRefused {
        refuseUnlessLoad(load);
        Naming.refuseUnlessPlain(to);
        refuseUsed(to);
        FileEdits edits = edits();
        List<String> also = new StudyMentions(new StudyOutline(study), load).rename(to, edits);
        edits.rename(DocumentPlaces.under(LOADS, load), to);
        String name = "Rename load " + load + " " + to;
        Change change = Change.of(edits.change(name, List.of(to), also));
        for (YamlDocument candidate : candidates.values()) {
            change = with(change, new LoadEdits(candidate).rename(load, to));
        }
        return new Change(change.name(), change.steps(), List.of(to), change.also());
    }

    /**
     * Deletes a load from the study, with its feeds and all that speaks of it in every candidate.
     */
    public Change deleteLoad(String load) throws ChangeRefused {
        refuseUnlessLoad(load);
        StudyMentions mentions = new StudyMentions(new StudyOutline(study), load);
        if (mentions.isNeeded()) {
            throw new ChangeRefused(
                    "the engine needs \"%s\"; take it out of what the engine needs first"
                            .formatted(load));
        }
        FileEdits edits = edits();
        List<String> also = mentions.remove(edits);
        edits.remove(DocumentPlaces.under(LOADS, load));
        Change change = Change.of(edits.change("Delete load " + load, List.of(), also));
        for (YamlDocument candidate : candidates.values()) {
            change = with(change, new LoadEdits(candidate).delete(load));
        }
        return change;
    }

    private static Change with(Change change, FileChange more) {
        return more.edits().isEmpty() ? change : change.then(Change.of(more));
    }

    private void refuseUnlessLoad(String load) throws ChangeRefused {
        if (!new StudyOutline(study).names().contains(load)) {
            throw new ChangeRefused("there is no load \"" + load + "\" in the study");
        }
    }

    private void refuseUsed(String load) throws ChangeRefused {
        if (new StudyOutline(study).names().contains(load)) {
            throw new ChangeRefused(
                    "the load \"" + load + "\" is there already; take another name");
        }
        for (Map.Entry<String, YamlDocument> candidate : candidates.entrySet()) {
            if (new CandidateOutline(candidate.getValue()).taken().contains(load)) {
                throw new ChangeRefused(
                        "\""
                                + load
                                + "\" is a part or a link in "
                                + candidate.getKey()
                                + "; take another name");
            }
        }
    }

    /** Writes a text in the study's file: {@code set("loads.radio", "draws", "2 A")}. */
    public Change set(String mapping, String key, String text) throws ChangeRefused {
        FileEdits edits = edits();
        edits.put(mapping, key, YamlValue.text(text));
        String where = mapping.isEmpty() ? "of the study" : "of " + last(mapping);
        return Change.of(edits.change("Set " + key + " " + where));
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Writes a whole value in the study's file. */
    public Change set(String mapping, String key, YamlValue value) throws ChangeRefused {
        FileEdits edits = edits();
        edits.put(mapping, key, value);
        return Change.of(edits.change("Set " + key));
    }

    /** Takes whatever stands at a path of the study's file out. */
    public Change clear(String path) throws ChangeRefused {
        FileEdits edits = edits();
        edits.remove(path);
        return Change.of(edits.change("Clear " + last(path)));
    }
}
