package stillturning.files.edit;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import stillturning.yaml.DocumentPlaces;

/** Gives parts other names, wherever a candidate's file speaks of them. */
final class Renaming {

    private Renaming() {}

    /** A part of another name. */
    static void part(CandidateOutline outline, String from, String to, FileEdits edits)
            throws ChangeRefused {
        refuse(to, outline);
        everywhere(outline, Map.of(from, to), edits);
        edits.rename(DocumentPlaces.under(CandidateOutline.PARTS, from), to);
    }

    /** The names that a run's name takes along with it. */
    static Map<String, String> madeBy(CandidateOutline.OutlineRun run, String to) {
        Map<String, String> names = new HashMap<>();
        String before = Naming.prefix(run.key());
        names.put(before, to);
        for (String made : run.line().makes(before)) {
            names.put(made, Naming.prefix(to) + made.substring(before.length()));
        }
        return names;
    }

    private static void refuse(String name, CandidateOutline outline) throws ChangeRefused {
        Naming.refuseUnlessPlain(name);
        if (outline.taken().contains(name)) {
            throw new ChangeRefused("\"" + name + "\" is there already; take another name");
        }
    }

    /** Other names wherever the file speaks of these. */
    static void everywhere(CandidateOutline outline, Map<String, String> names, FileEdits edits)
            throws ChangeRefused {
        UnaryOperator<String> renamed = name -> names.getOrDefault(name, name);
        for (CandidateOutline.OutlineRun run : outline.runs()) {
            RunLine line = run.line().renamed(renamed);
            if (!line.equals(run.line())) {
                edits.set(run.path(), line.text());
            }
        }
        new Mentions(outline.all()).rename(renamed, edits);
    }
}
