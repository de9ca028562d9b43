package stillturning.cli.breaking;

import stillturning.cli.joint.JointSheets;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.dossier.JointWork;
import stillturning.model.Study;
import stillturning.report.joint.PairSheet;
import stillturning.report.json.JsonReport;

/** Which events together end the engine, and how likely that is. */
record PairAnswers(Study study, JointWork work, boolean all) implements Answer {

    static Answer of(BreakRequest request) {
        BreakOptions options = request.options();
        JointWork work =
                ResumedSearch.of(
                        request.found(), options.largestSets(), options.resume, request.context());
        return new PairAnswers(request.study(), work, options.all);
    }

    @Override
    public String json() {
        return JsonReport.pairs(study, work.found(), work.reasons());
    }

    @Override
    public void print(Output out) {
        JointSheets.heading(study, PairSheet.MEANING, out);
        JointSheets.print(work, found -> PairSheet.of(found, all), out);
    }
}
