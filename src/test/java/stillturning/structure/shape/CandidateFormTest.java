package stillturning.structure.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.yaml.YamlDocument;

/** Which candidates are one once their names are forgotten. */
class CandidateFormTest {

    private static final Path FOLDER = Path.of("architectures/first-steps");
    private static final Path FILE = FOLDER.resolve("bus-and-battery.yaml");

    private static final StudyReader READER = StudyReader.open(FOLDER);

    private static Study with(String text) {
        ReadStudy read = READER.with(YamlDocument.of(FILE, text)).study(Variation.NONE);
        assertEquals(List.of(), read.problems());
        return read.study().orElseThrow();
    }

    private static Candidate candidate(Study study) {
        return study.candidate("bus-and-battery").orElseThrow();
    }

    private static Candidate changed(String from, String to) throws IOException {
        String text = Files.readString(FILE);
        String other = text.replace(from, to);
        assertNotEquals(text, other, from + " does not stand there");
        return candidate(with(other));
    }

    private static Candidate asItIs() throws IOException {
        return candidate(with(Files.readString(FILE)));
    }

    @ParameterizedTest
    @CsvSource({
        "panel-ground, dash-stud",
        "main-bus, rail",
        "battery-lead, lead",
        "low-voltage: {watches, low-bar: {watches",
        "'when: [low-voltage]', 'when: [ low-voltage ]'"
    })
    void otherNamesAreTheSameForm(String from, String to) throws IOException {
        CanonicalGraph form = CandidateForm.of(asItIs());
        String when = to.startsWith("low-bar") ? "low-bar" : "low-voltage";
        String text =
                Files.readString(FILE).replace(from, to).replace("[low-voltage]", "[" + when + "]");
        assertEquals(form, CandidateForm.of(candidate(with(text))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "capacity: 18 Ah | capacity: 19 Ah",
                "rating: 30 A | rating: 31 A",
                "main-bus:     {is: bus, zone | main-bus: {is: bus, mass: 0.5 kg, zone",
                "main-bus:     {is: bus, zone | main-bus: {is: bus, price: 50 EUR, zone",
                "{is: bus, zone: panel | {is: bus, zone: engine",
                "class: agm | class: lifepo4",
                "battery to main-bus, fuse 40 A | battery to main-bus, fuse 50 A",
                "battery to main-bus, fuse 40 A | battery to main-bus, breaker 40 A",
                "computer.b: from battery, fuse 10 A | computer.b: from main-bus, fuse 10 A",
                "radio:      from main-bus | radio: from battery",
                "from main-bus to alternator | from battery to alternator",
                "below: 13 V | below: 12.5 V",
                "at: main-bus.bar | at: battery.plus",
                "after: 60 s | after: 61 s",
                "sheds: [lights] | sheds: [lights, radio]"
            })
    void whateverMayMatterIsAnotherForm(String from, String to) throws IOException {
        assertNotEquals(CandidateForm.of(asItIs()), CandidateForm.of(changed(from, to)));
    }

    /** What is watched, where, for what: no two signs of these are one. */
    @Test
    void everySignIsAnotherForm() throws IOException {
        String sign = "{watches: low-voltage, at: main-bus.bar, below: 13 V}";
        List<CanonicalGraph> forms = new ArrayList<>();
        for (String other :
                List.of(
                        sign,
                        "{watches: low-voltage, at: main-bus.bar, below: 13 V, for: 3 s}",
                        "{watches: low-voltage, at: battery.plus, below: 13 V}",
                        "{watches: high-voltage, at: main-bus.bar, above: 15 V}",
                        "{watches: high-voltage, at: battery.plus, above: 15 V}",
                        "{watches: high-voltage, at: main-bus.bar, above: 16 V}",
                        "{watches: alternator, alternator: alternator}",
                        "{watches: load, load: radio}",
                        "{watches: load, load: lights}",
                        "{watches: engine}")) {
            forms.add(CandidateForm.of(other.equals(sign) ? asItIs() : changed(sign, other)));
        }
        for (int n = 0; n < forms.size(); n++) {
            assertEquals(n, forms.indexOf(forms.get(n)), "sign " + n);
        }
    }

    @Test
    void theOrderOfPartsAndJoinsIsForgotten() throws IOException {
        Candidate one = asItIs();
        List<Part> parts = new ArrayList<>(one.parts());
        List<Join> joins = new ArrayList<>(one.joins());
        Collections.shuffle(parts, new Random(4));
        Collections.shuffle(joins, new Random(5));
        Candidate other =
                new Candidate(one.id(), one.title(), one.about(), parts, joins, one.cockpit());
        assertEquals(CandidateForm.of(one), CandidateForm.of(other));
    }

    @Test
    void feedsOfTwoInputsThatChangePlacesAreTheSameFormAndComeToTheSame() throws IOException {
        Study before = with(Files.readString(FILE));
        String swapped =
                Files.readString(FILE)
                        .replace(
                                "pump.a:     from main-bus, breaker",
                                "pump.b: from main-bus, breaker")
                        .replace("pump.b:     from battery, fuse", "pump.a: from battery, fuse");
        Study after = with(swapped);
        assertNotEquals(candidate(before), candidate(after));
        assertEquals(CandidateForm.of(candidate(before)), CandidateForm.of(candidate(after)));
        assertEquals(values(before), values(after));
    }

    private static Object values(Study study) {
        Assessment assessed =
                Assess.of(
                        new Study(
                                study.id(),
                                study.heading(),
                                study.aircraft(),
                                study.goals(),
                                List.of(candidate(study))));
        return assessed.appraisals().get(0).measures().values();
    }

    @Test
    void everyCandidateOfTheDemoIsOneFormEveryTimeAndNoTwoAreAlike() {
        Path demo = Path.of("architectures/sandpiper");
        List<Candidate> all = StudyReader.read(demo).study().orElseThrow().candidates();
        List<Candidate> again = StudyReader.read(demo).study().orElseThrow().candidates();
        for (Candidate one : all) {
            for (Candidate other : again) {
                assertEquals(
                        one.id().equals(other.id()),
                        CandidateForm.of(one).equals(CandidateForm.of(other)),
                        one.id() + " and " + other.id());
            }
        }
    }
}
