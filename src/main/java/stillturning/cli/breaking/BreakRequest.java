package stillturning.cli.breaking;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.model.Candidate;
import stillturning.model.Chances.Odds;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.CommonCauses;
import stillturning.model.failure.Failure;

/** What is asked about the failures of a study, and where. */
record BreakRequest(BreakOptions options, FoundStudy found, CommandContext context) {

    Study study() {
        return found.study();
    }

    /**
     * The failures asked about, all at once where several are named, by candidate.
     *
     * @throws Refusal if there are none, or it is not clear which
     */
    Map<String, List<Failure>> failures() {
        Map<String, List<Failure>> causes =
                study().candidates().stream()
                        .collect(Collectors.toMap(Candidate::id, this::causes));
        FailureNames names = new FailureNames(study().candidates(), causes);
        return AtOnce.of(options.failures.stream().map(names::find).toList());
    }

    /** How often each of a candidate's failures happens. */
    Odds odds(Candidate candidate) {
        return found.chances().odds(candidate.id());
    }

    private List<Failure> causes(Candidate candidate) {
        return CommonCauses.of(study().aircraft(), candidate, found.chances()).stream()
                .map(Cause::failure)
                .toList();
    }
}
