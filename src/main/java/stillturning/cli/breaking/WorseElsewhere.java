package stillturning.cli.breaking;

import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.Elsewhere;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.ElsewhereTable;

/** Every failure that does worse in another phase than the one that the study asks about. */
record WorseElsewhere(Assessment assessment, Elsewhere found, BreakOptions options)
        implements Answer {

    static Answer of(BreakRequest request) {
        Assessment assessment = StudyAssessment.of(request.study(), request.context());
        Elsewhere found = found(assessment, request.context());
        return new WorseElsewhere(assessment, found, request.options());
    }

    private static Elsewhere found(Assessment assessment, CommandContext context) {
        int moments = Assess.moments(assessment.study()).size() * assessment.appraisals().size();
        try (Progress progress = Progress.over(moments, "moments tried", context)) {
            return Assess.elsewhere(assessment, progress);
        }
    }

    @Override
    public String json() {
        return JsonReport.elsewhere(assessment.study(), found);
    }

    @Override
    public void print(Output out) {
        ElsewhereTable table = new ElsewhereTable(assessment, found.worse());
        StudyAssessment.heading(assessment, out);
        out.section("At every moment of the flight")
                .paragraph(table.method())
                .line("")
                .lines(table.lines(options.mildest(), out.paint()));
        found.untold()
                .forEach(why -> out.line("").paragraph(why + " (no failure can be tried there)"));
    }
}
