package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.quantity.UnitSystem;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.YamlEdit;
import stillturning.yaml.notation.Checked;
import stillturning.yaml.notation.FieldInput;
import stillturning.yaml.shape.Form;
import stillturning.yaml.shape.FormField;

class StudyFormsTest {

    private static final YamlDocument STUDY =
            YamlDocument.of(Path.of("study.yaml"), SampleStudy.STUDY);
    private static final YamlDocument ONE = YamlDocument.of(Path.of("one.yaml"), SampleStudy.ONE);
    private static final StudyForms FORMS = new StudyForms(STUDY);

    @Test
    void aPartShowsWhatIsWrittenAndWhatItsClassGives() {
        Form battery = FORMS.candidate(ONE, "parts", "battery").orElseThrow();
        assertEquals("battery", battery.kind().orElseThrow().word());
        assertEquals("tail", field(battery, "zone").text().orElseThrow());
        assertEquals(Optional.empty(), field(battery, "capacity").text());
        assertEquals("18 Ah (guess)", field(battery, "capacity").otherwise().orElseThrow());
        assertEquals("agm", field(battery, "class").otherwise().orElseThrow());
        assertEquals(
                new FieldInput.Name("battery class", List.of("agm", "flooded", "lifepo4")),
                field(battery, "class").input());
    }

    @Test
    void whatTheClassGivesFollowsTheClass() {
        YamlDocument other = with(ONE, "zone: tail}\n  alt", "zone: tail, class: lifepo4}\n  alt");
        Form battery = FORMS.candidate(other, "parts", "battery").orElseThrow();
        assertEquals("20 Ah (guess)", field(battery, "capacity").otherwise().orElseThrow());
        Form management = FORMS.candidate(other, "parts", "battery", "management").orElseThrow();
        assertEquals("300 A (guess)", field(management, "over-current").otherwise().orElseThrow());
        Form times =
                FORMS.candidate(other, "parts", "battery", "management", "times").orElseThrow();
        assertEquals("10 s (guess)", field(times, "temperature").otherwise().orElseThrow());
    }

    @Test
    void everyKindHasAFormWithTheFieldsThatItsReaderKnows() {
        for (PartCatalogue.CatalogueKind kind : PartCatalogue.shipped().kinds()) {
            String text = "parts: {x: {is: " + kind.word() + "}}\n";
            YamlDocument document = YamlDocument.of(Path.of("x.yaml"), text);
            Form form = FORMS.candidate(document, "parts", "x").orElseThrow();
            PartEntry usual = Catalogue.shipped().classesOf(kind.word()).values().iterator().next();
            List<String> keys = form.fields().stream().map(FormField::key).toList();
            assertTrue(keys.containsAll(usual.open()), kind.word());
            assertTrue(!kind.words().isBlank(), kind.word());
            assertTrue(form.fields().stream().noneMatch(FormField::isRequired), kind.word());
            for (PartCatalogue.CatalogueValue value : kind.classes().get(0).values()) {
                assertTrue(keys.contains(value.key()), kind.word() + "." + value.key());
            }
        }
    }

    @Test
    void aWrongTextIsRefusedInTheWordsOfTheReader(@TempDir Path folder) throws IOException {
        FormField rating =
                field(FORMS.candidate(ONE, "parts", "alternator").orElseThrow(), "rating");
        assertEquals("40 A", rating.text().orElseThrow());
        for (String text : List.of("40", "40 V", "-3 A", "40 A (wild)", "forty", "40 A ±200 %")) {
            Checked.TextFault fault = rating.check(text).fault().orElseThrow();
            String one = SampleStudy.ONE.replace("rating: 40 A", "rating: " + text);
            ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, one);
            assertEquals(
                    List.of(fault.toString()),
                    read.problems().stream().map(p -> p.wrong() + "; " + p.right()).toList());
        }
        assertEquals(3, rating.check("40 V").fault().orElseThrow().offset());
        assertEquals(5, rating.check("  40 V").fault().orElseThrow().offset());
        assertEquals(Optional.empty(), rating.check("40.5 A ±2 % (measured)").fault());
    }

    @Test
    void aBlankTextLeavesAFieldOutUnlessItMustBeThere() {
        Form radio = FORMS.study("loads", "radio").orElseThrow();
        assertEquals(
                new Checked(Optional.empty(), Optional.empty()), field(radio, "boot").check(" "));
        assertTrue(field(radio, "zone").check("").fault().isPresent());
        assertEquals("0 s", field(radio, "boot").otherwise().orElseThrow());
    }

    @Test
    void namesMustBeThere() {
        Form radio = FORMS.study("loads", "radio").orElseThrow();
        assertEquals(
                "there is no zone \"pannel\"; did you mean \"panel\"? write one of panel, engine,"
                        + " tail, attic",
                field(radio, "zone").check("pannel").fault().orElseThrow().toString());
        FormField phases = field(radio, "phases");
        assertEquals(Optional.empty(), phases.check("cruise").fault());
        assertEquals(8, phases.check("cruise, crvise").fault().orElseThrow().offset());
        Form shed = FORMS.candidate(ONE, "procedures", "shed").orElseThrow();
        assertEquals("lamp", field(shed, "when").text().orElseThrow());
        assertTrue(field(shed, "when").check("lamb").fault().isPresent());
        assertTrue(field(shed, "sheds").check("radio, pump").fault().isEmpty());
    }

    @Test
    void cuesPhasesAndGroupsHaveForms() {
        Form lamp = FORMS.candidate(ONE, "sees", "lamp").orElseThrow();
        assertEquals("low-voltage", lamp.kind().orElseThrow().word());
        assertEquals(5, lamp.kind().orElseThrow().choices().size());
        Form phases = FORMS.study("phases").orElseThrow();
        assertEquals("phases[0]", phases.fields().get(0).path());
        assertEquals("phases[1]", phases.further().orElseThrow().path());
        Form cruise = FORMS.study("phases", "0").orElseThrow();
        assertEquals("60 min", field(cruise, "lasts").text().orElseThrow());
        Form moves = FORMS.candidate(ONE, "procedures", "shed", "moves").orElseThrow();
        assertEquals("pulled", field(moves, "pump-breaker").text().orElseThrow());
        assertEquals(
                "2", field(FORMS.study("weights").orElseThrow(), "endurance").text().orElseThrow());
        assertEquals(Optional.empty(), FORMS.study("loads", "radio", "draws"));
        assertEquals(Optional.empty(), FORMS.study("nonsense", "deeper"));
    }

    @Test
    void aBrokenFileStillHasForms() {
        YamlDocument broken = with(ONE, "rating: 40 A", "rating: [");
        assertTrue(!broken.problems().isEmpty());
        Form battery = FORMS.candidate(broken, "parts", "battery").orElseThrow();
        assertEquals("tail", field(battery, "zone").text().orElseThrow());
    }

    @Test
    void unitsAreShownAsASystemHasThem() {
        FormField length = field(FORMS.study("distances", "1").orElseThrow(), "length");
        assertEquals("3 m (measured)", length.text().orElseThrow());
        assertEquals("9.843 ft (measured)", length.shown("3 m (measured)", UnitSystem.US));
        assertEquals("3 m (measured)", length.shown("3 m (measured)", UnitSystem.METRIC));
        assertEquals("10 ft", length.shown("10 ft", UnitSystem.US));
        assertEquals("3.048 m ±5 %", length.shown("10 ft ±5 %", UnitSystem.METRIC));
        assertEquals("nonsense", length.shown("nonsense", UnitSystem.US));
        FormField mass = field(FORMS.candidate(ONE, "parts", "battery").orElseThrow(), "mass");
        assertEquals("13.23 lb (guess)", mass.shown(mass.otherwise().orElseThrow(), UnitSystem.US));
        FormField hot = field(FORMS.study("zones", "engine").orElseThrow(), "temperature");
        assertEquals("77 °F", hot.shown(hot.otherwise().orElseThrow(), UnitSystem.US));
        assertEquals(Optional.empty(), hot.check("77 °F").fault());
    }

    /** What a field takes, the file takes, and shows again. */
    @Test
    void whatIsWrittenByWayOfAFormIsReadBack() throws Exception {
        Set<String> tried = new HashSet<>();
        for (YamlDocument document : documents()) {
            boolean study = String.valueOf(document.file().getFileName()).equals("study.yaml");
            StudyForms forms = new StudyForms(study ? document : studyBeside(document));
            for (Form form : allForms(document, forms, study)) {
                String kind = form.kind().map(Form.KindChoice::word).orElse("");
                for (FormField field : form.fields()) {
                    boolean group = field.input() instanceof FieldInput.NestedForm;
                    String place = DocumentPlaces.keys(form.path()).size() + kind + field.key();
                    if (!group && field.text().isPresent() && tried.add(place)) {
                        rewritten(document, forms, study, field);
                    }
                }
            }
        }
        assertTrue(tried.size() > 150, "only " + tried.size());
    }

    private static void rewritten(
            YamlDocument document, StudyForms forms, boolean study, FormField field)
            throws Exception {
        Checked checked = field.check(field.text().orElseThrow());
        assertEquals(Optional.empty(), checked.fault(), document.file() + " " + field.path());
        YamlDocument after =
                new YamlEdit.Set(field.path(), checked.value().orElseThrow())
                        .on(document)
                        .document();
        Form again = formOf(after, forms, study, field.path());
        assertEquals(
                field.text(),
                again.fields().stream()
                        .filter(f -> f.path().equals(field.path()))
                        .findFirst()
                        .orElseThrow()
                        .text());
        Class<?> type = study ? StudyEntry.class : CandidateEntry.class;
        assertEquals(List.of(), FileNotations.binder().bind(after, type).problems(), field.path());
    }

    private static Form formOf(
            YamlDocument document, StudyForms forms, boolean study, String path) {
        List<String> keys = DocumentPlaces.keys(path);
        String[] parent = keys.subList(0, keys.size() - 1).toArray(String[]::new);
        StudyForms now = study ? new StudyForms(document) : forms;
        return (study ? now.study(parent) : now.candidate(document, parent)).orElseThrow();
    }

    private static List<Form> allForms(YamlDocument document, StudyForms forms, boolean study) {
        List<Form> all = new ArrayList<>();
        collect(document, forms, study, List.of(), all);
        return all;
    }

    private static void collect(
            YamlDocument document,
            StudyForms forms,
            boolean study,
            List<String> keys,
            List<Form> all) {
        String[] at = keys.toArray(String[]::new);
        Optional<Form> form = study ? forms.study(at) : forms.candidate(document, at);
        form.ifPresent(all::add);
        for (FormField field : form.map(Form::fields).orElse(List.of())) {
            if (field.input() instanceof FieldInput.NestedForm && field.text().isPresent()) {
                collect(document, forms, study, DocumentPlaces.keys(field.path()), all);
            }
        }
    }

    private static List<YamlDocument> documents() throws IOException {
        List<YamlDocument> documents = new ArrayList<>();
        for (String study : List.of("sandpiper", "first-steps")) {
            try (var files = Files.list(Path.of("architectures", study))) {
                for (Path file : new TreeSet<>(files.toList())) {
                    if (file.toString().endsWith(".yaml")) {
                        documents.add(YamlDocument.read(file));
                    }
                }
            }
        }
        return documents;
    }

    private static YamlDocument studyBeside(YamlDocument candidate) throws IOException {
        return YamlDocument.read(candidate.file().resolveSibling("study.yaml"));
    }

    private static FormField field(Form form, String key) {
        return form.field(key).orElseThrow(() -> new AssertionError(key));
    }

    private static YamlDocument with(YamlDocument document, String old, String by) {
        assertTrue(document.text().contains(old), old);
        return YamlDocument.of(document.file(), document.text().replace(old, by));
    }
}
