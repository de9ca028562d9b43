package stillturning.desktop.viewmodel.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;

/**
 * Something of a candidate that might be mended by drawing it otherwise.
 *
 * @param candidate its id
 * @param words what is wrong
 * @param failures names of single failures that do harm; none if a requirement is missed
 * @param requirement the missed requirement in words; empty if failures do harm
 */
public record Trouble(String candidate, String words, Set<String> failures, String requirement) {
    public Trouble {
        failures = Set.copyOf(failures);
    }

    /**
     * What comes first of all that is wrong with a candidate: requirements that it misses, and
     * single failures that lose the engine, together and one by one.
     */
    public static List<Trouble> of(Appraisal appraisal) {
        List<Trouble> all = new ArrayList<>();
        appraisal.met().stream()
                .filter(met -> !met.met())
                .map(met -> missed(appraisal, met))
                .forEach(all::add);
        List<Verdict> lost = appraisal.with(Outcome.ENGINE_LOST);
        if (lost.size() > 1) {
            all.add(
                    new Trouble(
                            appraisal.candidate().id(),
                            "Any of " + lost.size() + " single failures loses the engine",
                            lost.stream().map(v -> v.failure().name()).collect(Collectors.toSet()),
                            ""));
        }
        lost.forEach(verdict -> all.add(lost(appraisal, verdict)));
        return List.copyOf(all);
    }

    private static Trouble lost(Appraisal appraisal, Verdict verdict) {
        String name = verdict.failure().name();
        return new Trouble(
                appraisal.candidate().id(), name + " loses the engine", Set.of(name), "");
    }

    /** A requirement that a candidate misses. */
    public static Trouble missed(Appraisal appraisal, RequirementMet met) {
        return new Trouble(
                appraisal.candidate().id(),
                "Missed: " + met.requirement(),
                Set.of(),
                met.requirement());
    }

    /**
     * What is to be mended of the candidate as it is now.
     *
     * @return nothing if it is mended already
     */
    Wanted wanted(Appraisal now) {
        List<Verdict> harmful =
                now.singles().stream().filter(v -> failures.contains(v.failure().name())).toList();
        return now.met().stream()
                .filter(met -> !met.met() && met.requirement().equals(requirement))
                .map(Wanted::of)
                .findFirst()
                .orElseGet(() -> Wanted.of(harmful));
    }
}
