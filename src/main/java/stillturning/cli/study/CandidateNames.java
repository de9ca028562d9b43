package stillturning.cli.study;

import java.util.List;
import java.util.stream.Collectors;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** Which candidate is meant, by its id or its title, loosely. */
public final class CandidateNames {

    private CandidateNames() {}

    /**
     * The candidate meant.
     *
     * @throws Refusal if none or more than one fits
     */
    public static Candidate find(Study study, String said) {
        List<Named<Candidate>> names =
                study.candidates().stream()
                        .map(
                                c ->
                                        new Named<>(
                                                c,
                                                List.of(
                                                        LooseName.of(c.id()),
                                                        LooseName.of(c.title()))))
                        .toList();
        List<Candidate> best = LooseNames.best(said, names);
        if (best.size() == 1) {
            return best.get(0);
        }
        throw new Refusal(
                best.isEmpty()
                        ? "there is no candidate \""
                                + said
                                + "\"; there are:"
                                + listed(study.candidates())
                        : "\"" + said + "\" may mean any of these; say more:" + listed(best));
    }

    private static String listed(List<Candidate> candidates) {
        return candidates.stream()
                .map(c -> "\n  " + c.id() + " (" + c.title() + ")")
                .collect(Collectors.joining());
    }
}
