package stillturning.cli.breaking;

import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.report.RankingOrder;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.OtherFindings;
import stillturning.report.terminal.TerminalTables;

/** What every failure does to every candidate. */
record FailureMatrix(Assessment assessment, BreakOptions options) implements Answer {

    static Answer of(BreakRequest request) {
        Assessment assessment = StudyAssessment.of(request.study(), request.context());
        return new FailureMatrix(assessment, request.options());
    }

    @Override
    public String json() {
        return JsonReport.matrix(assessment);
    }

    @Override
    public void print(Output out) {
        StudyAssessment.heading(assessment, out);
        out.section("What every failure does, the pilot as planned")
                .lines(TerminalTables.matrix(assessment, options.mildest(), out.paint()));
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        section(
                "Switches left wrong before flight",
                OtherFindings.leftSwitches(appraisals, options.all, out.paint()),
                out);
        section(
                "Starting the engine on the ground",
                OtherFindings.starts(appraisals, out.paint()),
                out);
    }

    private static void section(String heading, List<String> lines, Output out) {
        if (!lines.isEmpty()) {
            out.section(heading).lines(lines);
        }
    }
}
