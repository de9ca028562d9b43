package stillturning.files.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stillturning.files.record.Blank.Notation;
import stillturning.files.record.FilledForm.Filled;
import stillturning.files.record.FilledForm.FilledValue;
import stillturning.files.record.FilledForm.Former;
import stillturning.yaml.YamlDocument;

/** A form is written, filled in and read. */
class MeasuredFormTest {

    private static final List<Blank> BLANKS =
            List.of(
                    new Blank("batteries.main.capacity", Notation.CAPACITY, "predicted 16 Ah"),
                    new Blank("loads.radio", Notation.AMPS_AT_VOLTS, "predicted 1.5 A"),
                    new Blank("resistances.lead", Notation.VOLTS_AT_AMPS, "predicted 2 mohm"),
                    new Blank("ground-test.engine-stopped.pull-a.result", Notation.RESULT, ""),
                    new Blank("ground-test.engine-stopped.pull-a.volts.bus", Notation.VOLTS, ""));

    private static final BlankForm FORM =
            new BlankForm(
                    List.of("A form", "second line"),
                    "one-bus",
                    "abc",
                    BLANKS,
                    Map.of("ground-test.engine-stopped.pull-a", List.of("1: pull a")));

    private static FormReader.ReadForm read(String text) {
        return FormReader.read(YamlDocument.of(Path.of("f.yaml"), text), "one-bus", "abc", BLANKS);
    }

    private static List<String> faults(String text) {
        return read(text).problems().stream().map(String::valueOf).toList();
    }

    @Test
    void anEmptyFormReadsAsNothingMeasured() {
        assertEquals(List.of(), faults(FORM.text()));
        assertEquals(new FilledForm("abc", "", "", List.of(), List.of()), read(FORM.text()).form());
    }

    @Test
    void whatIsFilledInIsReadBack() {
        String text =
                FORM.text()
                        .replace("date:  ", "date: 2026-05-17")
                        .replace("capacity:  ", "capacity: 15.5 Ah  ")
                        .replace("radio:  ", "radio: 1.3 A at 12.6 V  ")
                        .replace("lead:  ", "lead: 20 mV at 10 A, 0.05 V at 20 A  ")
                        .replace("result:  ", "result: failed  ")
                        .replace("bus:  ", "bus: -0.1 V  ");
        FilledForm form = read(text).form();
        assertEquals(List.of(), faults(text));
        assertEquals("2026-05-17", form.date());
        assertEquals(
                List.of(
                        new Filled(
                                "batteries.main.capacity",
                                List.of(new FilledValue(15.5 * 3600, OptionalDouble.empty())),
                                "15.5 Ah"),
                        new Filled(
                                "loads.radio",
                                List.of(new FilledValue(1.3, OptionalDouble.of(12.6))),
                                "1.3 A at 12.6 V"),
                        new Filled(
                                "resistances.lead",
                                List.of(
                                        new FilledValue(0.02, OptionalDouble.of(10)),
                                        new FilledValue(0.05, OptionalDouble.of(20))),
                                "20 mV at 10 A, 0.05 V at 20 A"),
                        new Filled(
                                "ground-test.engine-stopped.pull-a.result",
                                List.of(new FilledValue(0, OptionalDouble.empty())),
                                "failed"),
                        new Filled(
                                "ground-test.engine-stopped.pull-a.volts.bus",
                                List.of(new FilledValue(-0.1, OptionalDouble.empty())),
                                "-0.1 V")),
                form.filled());
    }

    /** A study that has changed asks for other readings than the form that was printed before. */
    @Test
    void emptyBlanksOfAnOlderFormAreNotMissed() {
        String older = FORM.text().replace("pull-a:", "pull-b:").replace("radio:", "horn:");
        assertEquals(List.of(), faults(older));
        assertEquals(1, faults(older.replace("horn: ", "horn: 1 A at 12 V")).size());
    }

    @Test
    void whatIsNoLongerAskedForIsKeptFromAnOlderFormAndAMistakeInOneOfToday() {
        String filled =
                FORM.text()
                        .replace("radio:  ", "horn: 1 A at 12 V  ")
                        .replace("pull-a:", "pull-b:")
                        .replace("result:  ", "result: passed  ")
                        .replace("bus:  ", "bus: 12.4 V  ")
                        .replace("capacity:  ", "capacity: 15.5 Ah  ");
        assertEquals(2, faults(filled).size(), faults(filled).toString());
        String older = filled.replace("abc", "of last year");
        assertEquals(List.of(), faults(older));
        assertEquals(1, read(older).form().filled().size());
        assertEquals(
                List.of(
                        new Former("loads.horn", "1 A at 12 V"),
                        new Former("ground-test.engine-stopped.pull-b.result", "passed"),
                        new Former("ground-test.engine-stopped.pull-b.volts.bus", "12.4 V")),
                read(older).form().former());
        assertEquals(1, faults(older.replace("loads:", "lods:")).size());
        assertEquals(1, faults(older.replace("horn: 1 A at 12 V", "horn: [1, 2]")).size());
    }

    @Test
    void everyMistakeIsToldAtOnceWithItsPlace() {
        String text =
                "record: two-bus\n"
                        + "date: 17.5.2026\n"
                        + "batteries: {main: {capacity: 15}}\n"
                        + "loads: {radoi: 1 A, radio: [1 A]}\n"
                        + "resistances: {lead: 0.1 V at 0 A}\n"
                        + "ground-test: {engine-stopped: {pull-a: {result: ok, volts: {bus: NaN"
                        + " V}}}}\n";
        List<String> told = faults(text);
        List<String> places = told.stream().map(t -> t.split(": ", 2)[0]).toList();
        assertEquals(
                List.of(
                        "f.yaml:1:9",
                        "f.yaml:2:7",
                        "f.yaml:3:32",
                        "f.yaml:4:9",
                        "f.yaml:4:28",
                        "f.yaml:5:30",
                        "f.yaml:6:49",
                        "f.yaml:6:66"),
                places,
                told.toString());
    }
}
