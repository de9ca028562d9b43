package stillturning.files.record;

import java.nio.file.Path;
import java.util.List;
import stillturning.files.record.Blank.Notation;
import stillturning.files.record.FilledForm.Filled;
import stillturning.fuzz.Promises;
import stillturning.reliability.asbuilt.DropFit;
import stillturning.reliability.asbuilt.DropFit.MeasuredDrop;
import stillturning.yaml.YamlDocument;

/** Any text as a form that was filled in. */
public final class FormFuzz {

    private static final Path FILE = Path.of("fuzzed", "form.yaml");
    private static final String STEP = "ground-test.engine-stopped.pull-a.";
    private static final String LEAD = "resistances.lead";

    private static final List<Blank> BLANKS =
            List.of(
                    new Blank("batteries.main.capacity", Notation.CAPACITY, ""),
                    new Blank("batteries.main.resistance", Notation.OHMS, ""),
                    new Blank("loads.radio", Notation.AMPS_AT_VOLTS, ""),
                    new Blank(LEAD, Notation.VOLTS_AT_AMPS, ""),
                    new Blank(STEP + "result", Notation.RESULT, ""),
                    new Blank(STEP + "volts.bus", Notation.VOLTS, ""),
                    new Blank(STEP + "amps.bus", Notation.AMPS, ""),
                    new Blank(STEP + "out.radio", Notation.SECONDS, ""));

    private FormFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        YamlDocument document = YamlDocument.of(FILE, Promises.text(input));
        FormReader.ReadForm read = FormReader.read(document, "one-bus", "abc", BLANKS);
        Promises.areSound(read.problems(), document.text());
        if (read.problems().isEmpty()) {
            Promises.isNumber(read.form(), "form");
            read.form().filled().stream()
                    .filter(filled -> filled.path().equals(LEAD))
                    .forEach(FormFuzz::conclude);
        }
    }

    private static void conclude(Filled filled) {
        List<MeasuredDrop> drops =
                filled.values().stream()
                        .map(v -> new MeasuredDrop(v.value(), v.at().orElseThrow()))
                        .toList();
        DropFit.Fitted fitted = DropFit.of(drops);
        Promises.isNumber(fitted, "fitted");
        Promises.hold(Double.isFinite(fitted.ohms()), "endless");
    }
}
