package stillturning.cli.breaking;

import java.util.List;
import stillturning.cli.joint.JointSheets;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.model.Study;
import stillturning.report.joint.CauseSheet;
import stillturning.report.joint.SharedFindings;
import stillturning.report.json.JsonReport;

/** What fails several parts at once, and what the shape of each candidate says. */
record CauseAnswers(Study study, List<SharedFindings> shared, boolean all) implements Answer {

    static Answer of(BreakRequest request) {
        List<SharedFindings> shared = ResumedSearch.shared(request.found(), request.context());
        return new CauseAnswers(request.study(), shared, request.options().all);
    }

    @Override
    public String json() {
        return JsonReport.causes(study, shared);
    }

    @Override
    public void print(Output out) {
        JointSheets.heading(study, CauseSheet.MEANING, out);
        shared.forEach(of -> JointSheets.print(of.candidate(), CauseSheet.of(of, all), out));
    }
}
