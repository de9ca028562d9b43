package stillturning.files.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import stillturning.yaml.DocumentPlaces;

/** Where a candidate's file speaks of a part outside its runs. */
final class Mentions {

    private static final List<String> BY_PART = List.of("wires", "arms", "fails", "reach");
    private static final List<String> CUE_PARTS = List.of("at", "alternator", "load");

    /** What is said of the part there. */
    enum MentionKind {
        /** Something of its own; the part is the key. */
        NOTE,
        /** A lever's position; the part is the key. */
        POSITION,
        RETURN,
        SHARE,
        CUE,
        SHOWN,
        SHED,
        ACTOR,
        LEFT_OUT
    }

    /**
     * One place.
     *
     * @param name the part, perhaps with a terminal or a channel
     * @param owner name of the cue or procedure that it belongs to; empty elsewhere
     */
    record Mention(MentionKind kind, String path, String name, String owner) {

        boolean isKey() {
            return kind == MentionKind.NOTE || kind == MentionKind.POSITION;
        }
    }

    private final List<Mention> all = new ArrayList<>();

    Mentions(WrittenKeys file) {
        file.under("returns")
                .texts()
                .forEach((zone, g) -> add(MentionKind.RETURN, path("returns", zone), g));
        for (String section : BY_PART) {
            keys(MentionKind.NOTE, section, file.under(section));
        }
        shares(file.under("shares"));
        WrittenKeys positions = file.under("positions");
        for (String configuration : positions.fields().keySet()) {
            keys(
                    MentionKind.POSITION,
                    path("positions", configuration),
                    positions.under(configuration));
        }
        WrittenKeys cues = file.under("sees");
        cues.fields().keySet().forEach(cue -> cue(cue, cues.under(cue)));
        items(
                MentionKind.LEFT_OUT,
                CandidateOutline.LEAVES_OUT,
                file.under(CandidateOutline.LEAVES_OUT));
        WrittenKeys procedures = file.under("procedures");
        procedures.fields().keySet().forEach(p -> procedure(p, procedures.under(p)));
    }

    private static String path(String section, String key) {
        return DocumentPlaces.under(section, key);
    }

    private void add(MentionKind kind, String path, String name) {
        all.add(new Mention(kind, path, name, ""));
    }

    private void keys(MentionKind kind, String section, WrittenKeys written) {
        written.fields().keySet().forEach(key -> add(kind, path(section, key), key));
    }

    private void shares(WrittenKeys shares) {
        for (int i = 0; i < shares.items().size(); i++) {
            String list = path(DocumentPlaces.item("shares", i), "parts");
            items(MentionKind.SHARE, list, shares.items().get(i).under("parts"));
        }
    }

    private void items(MentionKind kind, String list, WrittenKeys written) {
        List<String> names = written.itemTexts();
        for (int i = 0; i < names.size(); i++) {
            add(kind, DocumentPlaces.item(list, i), names.get(i));
        }
    }

    private void cue(String cue, WrittenKeys written) {
        String at = path("sees", cue);
        for (String key : CUE_PARTS) {
            written.text(key)
                    .ifPresent(n -> all.add(new Mention(MentionKind.CUE, path(at, key), n, cue)));
        }
        written.text("shown-by").ifPresent(n -> add(MentionKind.SHOWN, path(at, "shown-by"), n));
    }

    private void procedure(String procedure, WrittenKeys written) {
        String at = path("procedures", procedure);
        keys(MentionKind.POSITION, path(at, "moves"), written.under("moves"));
        items(MentionKind.SHED, path(at, "sheds"), written.under("sheds"));
        written.text("by")
                .ifPresent(
                        by ->
                                all.add(
                                        new Mention(
                                                MentionKind.ACTOR, path(at, "by"), by, procedure)));
    }

    /** Those that speak of such parts. */
    List<Mention> of(Predicate<String> part) {
        return all.stream().filter(m -> part.test(Naming.part(m.name))).toList();
    }

    /** Writes other names in their places. */
    void rename(UnaryOperator<String> names, FileEdits edits) throws ChangeRefused {
        for (Mention mention : all) {
            String name = Naming.renamed(mention.name, names);
            if (name.equals(mention.name)) {
                continue;
            }
            if (mention.isKey()) {
                edits.rename(mention.path, name);
            } else {
                edits.set(mention.path, name);
            }
        }
    }
}
