package stillturning.cli.breaking;

import java.util.List;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.WorseInPhase;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.ElsewhereTable;
import stillturning.story.UntoldStory;

/** Every failure that does worse in another phase than the one that the study asks about. */
record WorseElsewhere(Assessment assessment, List<WorseInPhase> worse, BreakOptions options)
        implements Answer {

    static Answer of(BreakRequest request) {
        Assessment assessment = StudyAssessment.of(request.study(), request.context());
        List<WorseInPhase> worse = worse(assessment, request.context());
        return new WorseElsewhere(assessment, worse, request.options());
    }

    private static List<WorseInPhase> worse(Assessment assessment, CommandContext context) {
        int moments = Assess.moments(assessment.study()).size() * assessment.appraisals().size();
        try (Progress progress = Progress.over(moments, "moments tried", context)) {
            return Assess.elsewhere(assessment, progress);
        } catch (UntoldStory e) {
            throw new Refusal("not every moment can be computed: " + e.getMessage());
        }
    }

    @Override
    public String json() {
        return JsonReport.elsewhere(assessment.study(), worse);
    }

    @Override
    public void print(Output out) {
        ElsewhereTable table = new ElsewhereTable(assessment, worse);
        StudyAssessment.heading(assessment, out);
        out.section("At every moment of the flight")
                .paragraph(table.method())
                .line("")
                .lines(table.lines(options.mildest(), out.paint()));
    }
}
