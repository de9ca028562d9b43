package stillturning.cli.breaking;

import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.report.RankingOrder;
import stillturning.report.joint.SameEnding;
import stillturning.report.json.JsonReport;
import stillturning.report.table.TextTable;
import stillturning.report.terminal.OtherFindings;
import stillturning.report.terminal.TerminalTables;

/** What every failure does to every candidate. */
record MatrixAnswer(Assessment assessment, List<SameEnding> endings, BreakOptions options)
        implements Answer {

    static Answer of(BreakRequest request) {
        Assessment assessment = StudyAssessment.of(request.study(), request.context());
        List<SameEnding> endings =
                RankingOrder.of(assessment).stream()
                        .flatMap(a -> SameEnding.of(a, request.odds(a.candidate())).stream())
                        .toList();
        return new MatrixAnswer(assessment, endings, request.options());
    }

    @Override
    public String json() {
        return JsonReport.matrix(assessment, endings);
    }

    @Override
    public void print(Output out) {
        StudyAssessment.heading(assessment, out);
        if (!endings.isEmpty()) {
            out.section("What alone stops the engine, by what mends it")
                    .lines(TextTable.lines(SameEnding.table(endings), out.paint()))
                    .lines(SameEnding.NOTES);
        }
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
