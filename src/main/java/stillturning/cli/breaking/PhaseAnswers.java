package stillturning.cli.breaking;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.cli.terminal.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.assess.Assess;
import stillturning.assess.PhaseVerdicts;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.report.PhaseTexts;
import stillturning.story.UntoldStory;

/** Failures of some candidates at every moment of the flight, in the order of the candidates. */
record PhaseAnswers(Study study, List<PhaseVerdicts> told, List<String> untold) {

    PhaseAnswers {
        told = List.copyOf(told);
        untold = List.copyOf(untold);
    }

    /** Tells failures, by candidate. */
    static PhaseAnswers of(
            Study study, Map<String, List<Failure>> failures, CommandContext context) {
        List<PhaseVerdicts> told = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        int total = failures.values().stream().mapToInt(List::size).sum();
        try (Progress progress = Progress.over(total, "failures flown", context)) {
            for (Candidate candidate : study.candidates()) {
                for (Failure failure : failures.getOrDefault(candidate.id(), List.of())) {
                    try {
                        told.add(
                                new PhaseVerdicts(
                                        candidate,
                                        failure,
                                        Assess.byPhase(study, candidate, failure)));
                    } catch (UntoldStory e) {
                        untold.add(candidate.id() + ", " + failure.name() + ": " + e.getMessage());
                    }
                    progress.accept(failure.name());
                }
            }
        }
        return new PhaseAnswers(study, told, untold);
    }

    void tell(Output out) {
        out.line(Paragraph.of("", PhaseTexts.READING));
        for (PhaseVerdicts one : told) {
            out.section(one.candidate().title() + ": " + one.failure().name())
                    .lines(PhaseTexts.table(study, one, out.paint()));
        }
        untold.forEach(
                words -> out.line("").line(Paragraph.of("", words + " (cannot be computed)")));
        out.caution();
    }
}
