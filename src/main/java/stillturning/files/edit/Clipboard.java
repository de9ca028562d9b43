package stillturning.files.edit;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** Parts as a text that another candidate can take in. */
final class Clipboard {

    private static final String FILE = "clipboard.yaml";
    private static final String HEAD = "clipboard: parts of a candidate\n";
    private static final List<String> NOTES = List.of("wires", "arms", "fails", "reach");

    private Clipboard() {}

    /** Parts with their settings, the links among them, and where their levers stand. */
    static String copy(CandidateOutline outline, Set<String> parts) throws ChangeRefused {
        FileEdits edits = new FileEdits(FILE, YamlDocument.of(Path.of(FILE), HEAD));
        Set<String> copied = new LinkedHashSet<>();
        for (Map.Entry<String, YamlValue> part : outline.parts().entrySet()) {
            if (parts.contains(part.getKey())) {
                edits.put(CandidateOutline.PARTS, part.getKey(), part.getValue());
                copied.add(part.getKey());
            }
        }
        if (copied.isEmpty()) {
            throw new ChangeRefused("none of these is a part of its own; choose parts, not wires");
        }
        for (OutlineRun run : outline.runs()) {
            boolean inside =
                    run.section().equals(CandidateOutline.LINKS)
                            && run.line().anchors().stream()
                                    .allMatch(a -> parts.contains(a.part()));
            if (inside) {
                edits.put(CandidateOutline.LINKS, run.key(), YamlValue.text(run.line().text()));
                copied.addAll(run.makes());
            }
        }
        notes(outline, copied, UnaryOperator.identity(), edits);
        return edits.document().text();
    }

    /** What is said of single parts, and their levers, under other names. */
    private static void notes(
            CandidateOutline outline,
            Set<String> parts,
            UnaryOperator<String> names,
            FileEdits edits)
            throws ChangeRefused {
        for (String section : NOTES) {
            some(outline.all().under(section), section, parts, names, edits);
        }
        WrittenKeys positions = outline.all().under("positions");
        for (String configuration : positions.fields().keySet()) {
            some(
                    positions.under(configuration),
                    DocumentPlaces.under("positions", configuration),
                    parts,
                    names,
                    edits);
        }
    }

    private static void some(
            WrittenKeys all,
            String path,
            Set<String> parts,
            UnaryOperator<String> names,
            FileEdits edits)
            throws ChangeRefused {
        for (Map.Entry<String, YamlValue> field : all.fields().entrySet()) {
            if (parts.contains(Naming.part(field.getKey()))) {
                edits.put(path, Naming.renamed(field.getKey(), names), field.getValue());
            }
        }
    }

    /**
     * Takes in what was copied.
     *
     * @return names of the new parts
     */
    static List<String> paste(
            String text, CandidateOutline outline, StudyOutline loads, FileEdits edits)
            throws ChangeRefused {
        CandidateOutline copied = new CandidateOutline(YamlDocument.of(Path.of(FILE), text));
        if (copied.parts().isEmpty() || !copied.all().fields().containsKey("clipboard")) {
            throw new ChangeRefused("no parts were copied; choose some, copy them, then paste");
        }
        Set<String> taken = outline.taken();
        taken.addAll(loads.names());
        Map<String, String> names = new HashMap<>();
        Set<String> all = new LinkedHashSet<>(copied.parts().keySet());
        for (String part : copied.parts().keySet()) {
            take(part, taken, names);
        }
        for (OutlineRun run : copied.runs()) {
            String free = take(run.key(), taken, names);
            names.putAll(Renaming.madeBy(run, free));
            taken.addAll(names.values());
            all.addAll(run.makes());
        }
        UnaryOperator<String> renamed = name -> names.getOrDefault(name, name);
        List<String> pasted = copied.parts().keySet().stream().map(renamed).toList();
        for (Map.Entry<String, YamlValue> part : copied.parts().entrySet()) {
            edits.put(CandidateOutline.PARTS, renamed.apply(part.getKey()), part.getValue());
        }
        for (OutlineRun run : copied.runs()) {
            String line = run.line().renamed(renamed).text();
            edits.put(CandidateOutline.LINKS, renamed.apply(run.key()), YamlValue.text(line));
        }
        notes(copied, all, renamed, edits);
        return pasted;
    }

    private static String take(String name, Set<String> taken, Map<String, String> names) {
        String free = CandidateOutline.free(name, taken);
        taken.add(free);
        names.put(name, free);
        return free;
    }
}
