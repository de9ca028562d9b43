package stillturning.cli.breaking;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assess;
import stillturning.assess.CandidateCases;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.NamedFailures;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.CaseTexts;

/** What the cases that the study names do to each candidate. */
record CaseAnswers(Study study, List<CandidateCases> told) implements Answer {

    static Answer of(BreakRequest request) {
        Study study = request.study();
        if (study.goals().cases().isEmpty()) {
            throw new Refusal(
                    "the study names no cases; write them into its study.yaml, such as"
                            + " cases: [charging lost, main bus short]");
        }
        List<CandidateCases> told = new ArrayList<>();
        int total = study.candidates().size();
        try (Progress progress = Progress.over(total, "candidates told", request.context())) {
            for (Candidate candidate : study.candidates()) {
                told.add(Assess.cases(study, candidate, NamedFailures.cases(study, candidate)));
                progress.accept(candidate.id());
            }
        }
        return new CaseAnswers(study, told);
    }

    @Override
    public String json() {
        return JsonReport.cases(study, told);
    }

    @Override
    public void print(Output out) {
        told.forEach(
                of -> out.section(of.candidate().title()).lines(CaseTexts.table(of, out.paint())));
        out.section("What each case means");
        CaseTexts.meanings(told).forEach(line -> out.paragraph("  ", line));
    }
}
