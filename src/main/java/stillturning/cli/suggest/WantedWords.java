package stillturning.cli.suggest;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.NamedFailures;
import stillturning.model.failure.Failure;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** What a person wants mended. */
final class WantedWords {

    private static final Outcome HARMLESS = Outcome.REDUNDANCY_LOST;

    private WantedWords() {}

    /**
     * What is wanted, or what comes first where nothing is said.
     *
     * @throws Refusal if the words name nothing, or nothing that is a trouble
     */
    static Wanted wanted(
            Appraisal appraisal, Optional<String> failure, Optional<String> requirement) {
        if (failure.isPresent()) {
            return Wanted.of(verdicts(appraisal, failure.get()));
        }
        return requirement
                .map(said -> Wanted.of(requirement(appraisal, said)))
                .orElseGet(() -> Wanted.first(appraisal));
    }

    private static List<Verdict> verdicts(Appraisal appraisal, String said) {
        NamedFailures names = new NamedFailures(List.of(appraisal.candidate()));
        Set<String> meant = names.all(said).stream().map(Failure::name).collect(Collectors.toSet());
        List<Verdict> verdicts =
                appraisal.singles().stream()
                        .filter(v -> meant.contains(v.failure().name()))
                        .toList();
        if (verdicts.isEmpty()) {
            throw new Refusal(
                    "no single failure of "
                            + appraisal.candidate().id()
                            + " is called \""
                            + said
                            + "\"; "
                            + listed(names.nearest(said)));
        }
        List<Verdict> harmful =
                verdicts.stream()
                        .filter(v -> v.outcome().compareTo(HARMLESS) < 0 && !v.engineOwn())
                        .toList();
        if (harmful.isEmpty()) {
            throw new Refusal(
                    "\""
                            + said
                            + "\" neither stops the engine nor asks anything of the pilot in "
                            + appraisal.candidate().id());
        }
        return harmful;
    }

    private static String listed(List<String> nearest) {
        return nearest.isEmpty()
                ? "break lists all of them"
                : "nearest: " + String.join(", ", nearest);
    }

    private static RequirementMet requirement(Appraisal appraisal, String said) {
        List<Named<RequirementMet>> names =
                appraisal.met().stream()
                        .map(met -> new Named<>(met, List.of(LooseName.of(met.requirement()))))
                        .toList();
        List<RequirementMet> best = LooseNames.best(said, names);
        if (best.size() != 1) {
            throw new Refusal(
                    "\""
                            + said
                            + "\" names "
                            + (best.isEmpty() ? "none" : "several")
                            + " of the requirements:"
                            + appraisal.met().stream()
                                    .map(met -> "\n  " + met.requirement())
                                    .collect(Collectors.joining()));
        }
        if (best.get(0).met()) {
            throw new Refusal("it is met already: " + best.get(0).requirement());
        }
        return best.get(0);
    }
}
