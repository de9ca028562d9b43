package stillturning.cli.breaking;

import stillturning.cli.joint.JointSheets;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.model.Study;
import stillturning.report.joint.LatentSheet;
import stillturning.report.json.JsonReport;

/** Failures of which nobody sees anything, and what reveals them. */
record LatentAnswers(Study study, JointWork work, boolean all) implements Answer {

    static Answer of(BreakRequest request) {
        BreakOptions options = request.options();
        JointWork work =
                ResumedSearch.of(
                        request.found(), JointSearch.PAIRS, options.resume, request.context());
        return new LatentAnswers(request.study(), work, options.all);
    }

    @Override
    public String json() {
        return JsonReport.latent(study, work.found(), work.reasons());
    }

    @Override
    public void print(Output out) {
        JointSheets.heading(study, LatentSheet.MEANING, out);
        JointSheets.print(work, found -> LatentSheet.of(found, all), out);
    }
}
