package stillturning.files.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;

/** What becomes of one candidate's file when a load of the study gets another name, or goes. */
public final class LoadEdits {

    private final String file;
    private final YamlDocument document;
    private final CandidateOutline outline;

    /**
     * @param candidate the candidate's file as it is now
     */
    public LoadEdits(YamlDocument candidate) {
        this.file = String.valueOf(candidate.file().getFileName());
        this.document = candidate;
        this.outline = new CandidateOutline(candidate);
    }

    /** Gives the load, its feeds and what they make another name wherever the file has them. */
    public FileChange rename(String load, String to) throws ChangeRefused {
        FileEdits edits = new FileEdits(file, document);
        Map<String, String> names =
                new HashMap<>(Map.of(load, to, load + "-return", to + "-return"));
        List<OutlineRun> feeds = outline.feedsOf(load);
        for (OutlineRun feed : feeds) {
            String key = renamed(feed, load, to);
            names.putAll(Renaming.madeBy(feed, key));
            names.put(Naming.prefix(feed.key()) + "-return", Naming.prefix(key) + "-return");
        }
        refuseTaken(names);
        Renaming.everywhere(outline, names, edits);
        for (OutlineRun feed : feeds) {
            edits.rename(feed.path(), renamed(feed, load, to));
        }
        return edits.change("Rename " + load + " " + to, to);
    }

    private static String renamed(OutlineRun feed, String load, String to) {
        return to + feed.key().substring(load.length());
    }

    private void refuseTaken(Map<String, String> names) throws ChangeRefused {
        Set<String> others = new LinkedHashSet<>(outline.taken());
        others.removeAll(names.keySet());
        for (String name : names.values()) {
            if (others.contains(name)) {
                throw new ChangeRefused(
                        "\"%s\" is there already in %s; take another name".formatted(name, file));
            }
        }
    }

    /** Takes the load's feeds out, with everything that speaks of it. */
    public FileChange delete(String load) throws ChangeRefused {
        FileEdits edits = new FileEdits(file, document);
        List<String> also = new ArrayList<>(Deletion.ofLoad(outline, load, edits).write());
        List<String> left = outline.all().under(CandidateOutline.LEAVES_OUT).itemTexts();
        if (left.contains(load)) {
            edits.remove(DocumentPlaces.item(CandidateOutline.LEAVES_OUT, left.indexOf(load)));
        }
        return edits.change("Delete " + load, List.of(), also);
    }
}
