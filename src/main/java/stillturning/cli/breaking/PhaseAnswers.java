package stillturning.cli.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.assess.Assess;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.PhaseTexts;

/** Failures of some candidates at every moment of the flight, in the order of the candidates. */
record PhaseAnswers(Study study, List<PhaseVerdicts> told, List<String> untold) implements Answer {

    PhaseAnswers {
        told = List.copyOf(told);
        untold = List.copyOf(untold);
    }

    static Answer of(BreakRequest request) {
        Study study = request.study();
        Map<String, List<Failure>> failures = request.failures();
        List<PhaseVerdicts> told = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        int total = failures.values().stream().mapToInt(List::size).sum();
        try (Progress progress = Progress.over(total, "failures flown", request.context())) {
            for (Candidate candidate : study.candidates()) {
                for (Failure failure : failures.getOrDefault(candidate.id(), List.of())) {
                    PhaseVerdicts one = Assess.byPhase(study, candidate, failure);
                    told.add(one);
                    one.untold().forEach(why -> untold.add(candidate.id() + " can tell " + why));
                    progress.accept(failure.name());
                }
            }
        }
        return new PhaseAnswers(study, told, untold);
    }

    @Override
    public String json() {
        return JsonReport.phases(study, told, untold);
    }

    @Override
    public void print(Output out) {
        out.paragraph(PhaseTexts.READING);
        for (PhaseVerdicts one : told) {
            out.section(one.candidate().title() + ": " + one.failure().name())
                    .lines(PhaseTexts.table(study, one, out.paint()));
        }
        untold.forEach(words -> out.line("").paragraph(words + " (cannot be computed)"));
    }
}
