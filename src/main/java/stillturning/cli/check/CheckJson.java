package stillturning.cli.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import stillturning.cli.check.StudyCheck.Flying;
import stillturning.cli.terminal.JsonWriter;
import stillturning.files.Assumption;
import stillturning.files.Expanded;
import stillturning.files.Remark;
import stillturning.report.Cautions;
import stillturning.report.json.JsonReport;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.Rule;
import stillturning.sizing.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.yaml.Problem;

/** A check for other programs. */
record CheckJson(
        int schemaVersion,
        String caution,
        List<Message> problems,
        List<Message> remarks,
        List<InFlight> normalFlight,
        List<Oversight> sizes,
        List<Value> values,
        Map<String, List<Expanded>> expanded) {

    /** A problem or a remark at its place. */
    record Message(String file, int line, int column, String path, String wrong, String right) {}

    /** A candidate with nothing wrong; a reason if that cannot be computed. */
    record InFlight(
            String candidate,
            boolean engineRuns,
            Map<String, Double> busVolts,
            Map<String, Double> sourceAmps,
            List<String> cuesShowing,
            List<String> withNothingWrong,
            String reason) {}

    /** A limit that a size breaks with nothing wrong. */
    record Oversight(String candidate, String about, String wrong, String mend) {}

    /** A value and where it comes from. */
    record Value(String file, String path, String text, String origin, String note) {}

    static String of(StudyCheck check) {
        return JsonWriter.text(
                new CheckJson(
                        JsonReport.SCHEMA_VERSION,
                        Cautions.SHORT,
                        check.read().problems().stream().map(CheckJson::message).toList(),
                        check.read().remarks().stream().map(CheckJson::message).toList(),
                        check.flying().stream().map(CheckJson::inFlight).toList(),
                        check.sizes().stream().flatMap(CheckJson::oversights).toList(),
                        check.read().assumptions().stream().map(CheckJson::value).toList(),
                        check.read().expanded()));
    }

    private static Message message(Problem p) {
        return new Message(name(p.file()), p.line(), p.column(), p.path(), p.wrong(), p.right());
    }

    private static Message message(Remark r) {
        return new Message(name(r.file()), r.line(), r.column(), r.path(), r.words(), "");
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static InFlight inFlight(Flying flying) {
        return new InFlight(
                flying.candidate().id(),
                flying.engineRuns(),
                flying.normal()
                        .map(NormalFlight::busVolts)
                        .map(TreeMap::new)
                        .orElseGet(TreeMap::new),
                flying.normal()
                        .map(NormalFlight::sourceAmps)
                        .map(TreeMap::new)
                        .orElseGet(TreeMap::new),
                flying.normal().map(NormalFlight::cuesShowing).orElse(List.of()),
                flying.findings(),
                flying.reason());
    }

    private static Stream<Oversight> oversights(SizingReport report) {
        return report.findings().stream()
                .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                .map(
                        f ->
                                new Oversight(
                                        report.candidate().id(),
                                        FindingWords.about(report, f),
                                        FindingWords.wrong(f),
                                        FindingWords.mend(f)));
    }

    private static Value value(Assumption a) {
        return new Value(a.file(), a.path(), a.text(), a.origin().words(), a.note());
    }
}
