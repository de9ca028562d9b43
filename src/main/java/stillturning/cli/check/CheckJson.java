package stillturning.cli.check;

import static stillturning.report.json.JsonTypes.WHOLE;
import static stillturning.report.json.JsonTypes.list;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import stillturning.cli.check.StudyCheck.Flying;
import stillturning.files.candidate.Expanded;
import stillturning.files.finding.FileRemark;
import stillturning.files.value.Assumption;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;
import stillturning.report.json.JsonTypes;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.yaml.Problem;

/** A check for other programs. */
public final class CheckJson {

    /** A finding of a candidate's sizes. */
    private record Oversight(SizingReport report, SizeFinding finding) {}

    private static final JsonShape<Problem> PROBLEM =
            JsonShape.<Problem>named("problem")
                    .text("file", p -> name(p.file()))
                    .field("line", WHOLE.with("minimum", 1), Problem::line)
                    .field("column", WHOLE.with("minimum", 1), Problem::column)
                    .text("path", Problem::path)
                    .says("Place inside the document, such as parts.bus-feed.gauge.")
                    .text("wrong", Problem::wrong)
                    .says("What is wrong.")
                    .text("right", Problem::right)
                    .says("What would be right.");

    private static final JsonShape<FileRemark> REMARK =
            JsonShape.<FileRemark>named("remark")
                    .text("file", r -> name(r.file()))
                    .field("line", WHOLE.with("minimum", 1), FileRemark::line)
                    .field("column", WHOLE.with("minimum", 1), FileRemark::column)
                    .text("path", FileRemark::path)
                    .says("Place inside the document, such as parts.bus-feed.gauge.")
                    .text("wrong", FileRemark::words)
                    .says("What the remark says.")
                    .text("right", r -> "")
                    .says("Empty.");

    private static final JsonShape<Flying> NORMAL_FLIGHT =
            JsonShape.<Flying>named("normalFlight")
                    .text("candidate", f -> f.candidate().id())
                    .flag("engineRuns", Flying::engineRuns)
                    .map("busVolts", JsonTypes.EXACT, f -> sorted(f, NormalFlight::busVolts))
                    .says("Voltage by bus (V).")
                    .map("sourceAmps", JsonTypes.EXACT, f -> sorted(f, NormalFlight::sourceAmps))
                    .says("Current that each source delivers (A); negative while it takes in.")
                    .texts(
                            "cuesShowing",
                            f -> f.normal().map(NormalFlight::cuesShowing).orElse(List.of()))
                    .says("Cues that show although nothing is wrong.")
                    .texts("withNothingWrong", Flying::findings)
                    .says("What happens although nothing is wrong.")
                    .texts("nearTheLimit", Flying::nearLimit)
                    .says(
                            "What opens, usually or at the earliest, in a flight with nothing wrong"
                                    + " beside that; empty where nothing does.")
                    .text("reason", Flying::reason)
                    .says("Why it could not be computed; empty if it was.");

    private static final JsonShape<Oversight> SIZE =
            JsonShape.<Oversight>named("size")
                    .text("candidate", o -> o.report.candidate().id())
                    .text("about", o -> FindingWords.about(o.report, o.finding))
                    .text("wrong", o -> FindingWords.wrong(o.finding))
                    .text("mend", o -> FindingWords.mend(o.finding));

    private static final JsonShape<Assumption> VALUE =
            JsonShape.<Assumption>named("value")
                    .text("file", Assumption::file)
                    .text("path", Assumption::path)
                    .text("text", Assumption::text)
                    .text("origin", a -> a.origin().words())
                    .says("Where it comes from; empty where nobody said.")
                    .text("note", Assumption::note);

    private static final JsonShape<Expanded.ExpandedPart> MADE =
            JsonShape.<Expanded.ExpandedPart>named("made")
                    .text("id", Expanded.ExpandedPart::id)
                    .text("kind", Expanded.ExpandedPart::kind)
                    .texts("values", Expanded.ExpandedPart::values);

    private static final JsonShape<Expanded> EXPANDED =
            JsonShape.<Expanded>named("expanded")
                    .text("path", Expanded::path)
                    .list("parts", MADE, Expanded::parts);

    /** The document. */
    public static final JsonDocument<StudyCheck> CHECK =
            new JsonDocument<>(
                    "A study checked",
                    "Problems and remarks, normal flight, and where every value comes from.",
                    JsonDocument.<StudyCheck>start()
                            .list("problems", PROBLEM, c -> c.read().problems())
                            .list("remarks", REMARK, c -> c.read().remarks())
                            .list("normalFlight", NORMAL_FLIGHT, StudyCheck::flying)
                            .list("sizes", SIZE, CheckJson::oversights)
                            .says("Limits that a size breaks with nothing wrong.")
                            .list("values", VALUE, c -> c.read().assumptions())
                            .map("expanded", list(EXPANDED), c -> c.read().expanded())
                            .says("What each line of a sketch became, by candidate."));

    private CheckJson() {}

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static Map<String, Double> sorted(
            Flying flying, Function<NormalFlight, Map<String, Double>> values) {
        return flying.normal().map(values).map(TreeMap::new).orElseGet(TreeMap::new);
    }

    private static List<Oversight> oversights(StudyCheck check) {
        return check.sizes().stream()
                .flatMap(
                        report ->
                                report.findings().stream()
                                        .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                                        .map(f -> new Oversight(report, f)))
                .toList();
    }
}
