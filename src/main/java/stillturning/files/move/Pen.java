package stillturning.files.move;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileChange;
import stillturning.files.edit.FileEdits;
import stillturning.files.edit.WrittenKeys;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** Writes one move into a candidate's text, edit by edit. */
final class Pen {

    private static final String FLIGHT = "positions.flight";
    private static final String MASTER_OFF = "positions.master-off";

    private final Drawn before;
    private YamlDocument now;

    Pen(Drawn before) {
        this.before = before;
        this.now = before.text();
    }

    YamlDocument text() {
        return now;
    }

    private CandidateEdits edits() {
        return new CandidateEdits(now, before.studyText());
    }

    /** What the file says now. */
    WrittenKeys written() {
        return WrittenKeys.in(now);
    }

    private CandidateOutline outline() {
        return new CandidateOutline(now);
    }

    private String take(FileChange change) {
        now = change.after();
        return change.parts().isEmpty() ? "" : change.parts().get(0);
    }

    private FileEdits file() throws ChangeRefused {
        return new FileEdits(String.valueOf(now.file().getFileName()), now);
    }

    /** Adds a part of a kind's first class under a name like this one, which is returned. */
    String add(String kind, String name, String zone) throws ChangeRefused {
        return add(new NewPart(kind, Optional.empty(), zone, Map.of()), name);
    }

    String add(NewPart part, String name) throws ChangeRefused {
        return take(edits().add(part, name));
    }

    /** Adds a link under a name like this one, which is returned. */
    String link(String name, String line) throws ChangeRefused {
        String free = CandidateOutline.free(name, outline().taken());
        put(CandidateOutline.LINKS, free, line);
        return free;
    }

    void put(String mapping, String key, String text) throws ChangeRefused {
        FileEdits edits = file();
        edits.put(mapping, key, YamlValue.text(text));
        now = edits.document();
    }

    void put(String mapping, String key, YamlValue value) throws ChangeRefused {
        FileEdits edits = file();
        edits.put(mapping, key, value);
        now = edits.document();
    }

    /** Writes a run again. */
    void run(String path, String line) throws ChangeRefused {
        FileEdits edits = file();
        edits.set(path, line);
        now = edits.document();
    }

    void delete(String part) throws ChangeRefused {
        take(edits().delete(Set.of(part)));
    }

    void cut(String path) throws ChangeRefused {
        take(edits().cut(path));
    }

    /** Deletes parts that some run led to before, and to which none leads any more. */
    void sweep() throws ChangeRefused {
        Set<String> led = mentioned(before.outline());
        boolean more = true;
        while (more) {
            CandidateOutline outline = outline();
            Set<String> left = mentioned(outline);
            Optional<String> idle =
                    outline.parts().keySet().stream()
                            .filter(part -> led.contains(part) && !left.contains(part))
                            .findFirst();
            if (idle.isPresent()) {
                delete(idle.get());
            }
            more = idle.isPresent();
        }
    }

    private static Set<String> mentioned(CandidateOutline outline) {
        Set<String> parts = new LinkedHashSet<>(outline.all().under("returns").texts().values());
        outline.runs()
                .forEach(run -> run.line().anchors().forEach(anchor -> parts.add(anchor.part())));
        return parts;
    }

    void remove(String path) throws ChangeRefused {
        FileEdits edits = file();
        if (edits.has(path)) {
            edits.remove(path);
            now = edits.document();
        }
    }

    void removeItem(String list, int index) throws ChangeRefused {
        FileEdits edits = file();
        edits.removeItems(list, List.of(index));
        now = edits.document();
    }

    void addItem(String list, String text) throws ChangeRefused {
        FileEdits edits = file();
        edits.addItem(list, text);
        now = edits.document();
    }

    /** Says where a lever stands in flight. */
    void flight(String lever, String position) throws ChangeRefused {
        put(FLIGHT, lever, position);
    }

    /** Puts a move first in the drill that takes all power off, where there is one. */
    void firstWithMasterOff(String lever, String position) throws ChangeRefused {
        if (WrittenKeys.in(now).under("positions").fields().containsKey("master-off")) {
            first(MASTER_OFF, lever, position);
        }
    }

    private void first(String mapping, String key, String text) throws ChangeRefused {
        List<YamlValue.Field> fields = new ArrayList<>(List.of(YamlValue.field(key, text)));
        WrittenKeys written = WrittenKeys.in(now);
        for (String step : DocumentPlaces.keys(mapping)) {
            written = written.under(step);
        }
        written.fields().forEach((k, v) -> fields.add(new YamlValue.Field(k, v)));
        int last = mapping.lastIndexOf('.');
        put(mapping.substring(0, last), mapping.substring(last + 1), new YamlValue.Fields(fields));
    }

    /** Has the pilot move a lever when the engine stops, as one more move of what he does then. */
    void whenTheEngineStops(String lever, String position) throws ChangeRefused {
        WrittenKeys all = WrittenKeys.in(now);
        Optional<String> cue =
                all.under("sees").fields().keySet().stream()
                        .filter(c -> all.under("sees").under(c).text("watches").equals(ENGINE))
                        .findFirst();
        Optional<String> procedure =
                all.under("procedures").fields().keySet().stream()
                        .filter(p -> cue.isPresent() && starts(all, p, cue.get()))
                        .findFirst();
        if (procedure.isPresent()) {
            put("procedures." + procedure.get() + ".moves", lever, position);
            return;
        }
        Set<String> names = new LinkedHashSet<>(all.under("sees").fields().keySet());
        String name = cue.orElseGet(() -> CandidateOutline.free("engine-stops", names));
        if (cue.isEmpty()) {
            put("sees", name, YamlValue.fields(YamlValue.field("watches", "engine")));
        }
        String free =
                CandidateOutline.free("engine-stopped", all.under("procedures").fields().keySet());
        put(
                "procedures",
                free,
                YamlValue.fields(
                        new YamlValue.Field("when", YamlValue.texts(name)),
                        YamlValue.field("after", "5 s (guess)"),
                        new YamlValue.Field(
                                "moves", YamlValue.fields(YamlValue.field(lever, position)))));
    }

    private static final Optional<String> ENGINE = Optional.of("engine");

    private static boolean starts(WrittenKeys all, String procedure, String cue) {
        WrittenKeys written = all.under("procedures").under(procedure);
        return written.under("when").itemTexts().contains(cue) && written.text("by").isEmpty();
    }
}
