package stillturning.desktop.viewmodel.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.dossier.record.AskedFor;
import stillturning.dossier.record.Entered;
import stillturning.files.record.Blank;
import stillturning.files.record.Blank.Notation;
import stillturning.files.record.BlankForm;
import stillturning.files.record.BlankForm.FilledIn;
import stillturning.files.record.FilledForm;
import stillturning.files.record.FilledForm.Former;
import stillturning.files.record.MeasuredFile;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.disk.WholeFile;

/**
 * What is typed, as a form in a file of its own beside the record, until it is added to it.
 *
 * @param made fingerprint of the study that the form was made of
 * @param former what it holds that is no longer asked for
 */
record TypedForm(AskedFor asked, Path file, String made, List<Former> former) {

    private static final String FOLDER = "entered";

    /** What was found beside the record: the form, what was written, and what is wrong there. */
    record FoundRecord(TypedForm form, FilledIn written, List<String> problems) {

        /** What to do with it, in sentences. */
        String invitation() {
            String kept =
                    written.values().isEmpty()
                            ? ""
                            : " What was entered before and is in no record yet is there again.";
            List<String> former = new ArrayList<>();
            form.former.forEach(f -> former.add(f.path() + ": " + f.text()));
            String gone =
                    former.isEmpty()
                            ? ""
                            : " No longer asked for, kept all the same: "
                                    + String.join("; ", former)
                                    + ".";
            return "Enter what was measured, each value with its unit; what stays empty was not"
                    + " measured."
                    + kept
                    + gone;
        }
    }

    TypedForm {
        former = List.copyOf(former);
    }

    /**
     * The form of a candidate with what was typed into it before.
     *
     * @throws IOException if it is there and cannot be read
     */
    static FoundRecord of(AskedFor asked, Path study) throws IOException {
        Path file =
                study.resolve(MeasuredFile.FOLDER)
                        .resolve(FOLDER)
                        .resolve(asked.candidate().id() + ".yaml");
        String now = asked.read().fingerprint();
        if (!Files.exists(file)) {
            return new FoundRecord(
                    new TypedForm(asked, file, now, List.of()), FilledIn.NOTHING, List.of());
        }
        YamlDocument document = YamlDocument.read(file);
        Entered entered = Entered.of(asked, document);
        FilledForm filled = entered.form();
        Map<String, String> values = new LinkedHashMap<>();
        for (Blank blank : asked.blanks()) {
            document.textAt(blank.path())
                    .filter(text -> !text.isBlank())
                    .ifPresent(text -> values.put(blank.path(), text));
        }
        return new FoundRecord(
                new TypedForm(
                        asked,
                        file,
                        filled.former().isEmpty() ? now : filled.study(),
                        filled.former()),
                new FilledIn(filled.date(), filled.by(), values),
                entered.problems().stream().map(String::valueOf).toList());
    }

    /** As it is read. */
    YamlDocument document(FilledIn written) throws UntoldStory {
        return YamlDocument.of(file, text(written));
    }

    private String text(FilledIn written) throws UntoldStory {
        BlankForm form = asked.form();
        List<Blank> blanks = new ArrayList<>(asked.blanks());
        Map<String, String> values = new LinkedHashMap<>(written.values());
        for (Former one : former) {
            blanks.add(
                    place(blanks, one.path()),
                    new Blank(one.path(), Notation.RESULT, "no longer asked for"));
            values.put(one.path(), one.text());
        }
        return new BlankForm(form.head(), form.candidate(), made, blanks, form.above())
                .text(new FilledIn(written.date(), written.by(), values));
    }

    /** Behind the last blank that shares most of the way to it, so that no group comes twice. */
    private static int place(List<Blank> blanks, String path) {
        int best = 0;
        int at = blanks.size();
        for (int i = 0; i < blanks.size(); i++) {
            int shared = shared(blanks.get(i).path(), path);
            if (shared > 0 && shared >= best) {
                best = shared;
                at = i + 1;
            }
        }
        return at;
    }

    private static int shared(String one, String other) {
        String[] a = one.split("\\.", -1);
        String[] b = other.split("\\.", -1);
        int same = 0;
        while (same < Math.min(a.length, b.length) - 1 && a[same].equals(b[same])) {
            same++;
        }
        return same;
    }

    /**
     * Keeps what is typed; a form into which nothing is written is not kept.
     *
     * @throws IOException if it cannot be written
     * @throws UntoldStory if the form cannot be made
     */
    void keep(FilledIn written) throws IOException, UntoldStory {
        if (written.values().isEmpty() && former.isEmpty()) {
            Files.deleteIfExists(file);
            return;
        }
        Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
        if (folder.isPresent()) {
            Files.createDirectories(folder.get());
        }
        WholeFile.replace(file, text(written).getBytes(StandardCharsets.UTF_8));
    }

    /** It has gone into the record. */
    TypedForm recorded() throws IOException {
        Files.deleteIfExists(file);
        return new TypedForm(asked, file, asked.read().fingerprint(), List.of());
    }
}
