package stillturning.cli.suggest;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.suggest.Aim;
import stillturning.dossier.suggest.HiddenThenOne;
import stillturning.dossier.suggest.Suggest;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.story.UntoldStory;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** What a person wants mended that is neither one failure nor a requirement. */
final class AimWords {

    private AimWords() {}

    /**
     * A pair of failures or a finding.
     *
     * @throws Refusal if the words name nothing, several things, or a pair that ends nothing
     */
    static Optional<Aim> aim(Suggest suggest, List<String> failures, Optional<String> finding)
            throws UntoldStory {
        if (failures.size() == 2) {
            return Optional.of(pair(suggest, failures.get(0), failures.get(1)));
        }
        return finding.map(said -> finding(suggest, said));
    }

    private static Aim pair(Suggest suggest, String first, String second) throws UntoldStory {
        HiddenThenOne pair = new HiddenThenOne(one(suggest, first), one(suggest, second));
        if (!suggest.isLeft(pair)) {
            throw new Refusal(
                    "\""
                            + pair.hidden().name()
                            + "\" and then \""
                            + pair.then().name()
                            + "\" do not end the engine in "
                            + suggest.before().candidate().id()
                            + ", or the pilot sees the first; break --latent lists those that"
                            + " hide");
        }
        return pair;
    }

    /** A failure, or else an event that takes several parts. */
    private static Failure one(Suggest suggest, String said) {
        Candidate candidate = suggest.before().candidate();
        NamedFailures names = new NamedFailures(List.of(candidate));
        List<Failure> failures = names.all(said);
        List<Failure> meant = failures.isEmpty() ? causes(suggest, said) : failures;
        if (meant.size() != 1) {
            throw new Refusal(
                    "\""
                            + said
                            + "\" names "
                            + (meant.isEmpty() ? "no failure" : "several failures")
                            + " of "
                            + candidate.id()
                            + (meant.isEmpty() ? "; nearest: " : ": ")
                            + (meant.isEmpty()
                                    ? String.join(", ", names.nearest(said))
                                    : meant.stream()
                                            .map(Failure::name)
                                            .collect(Collectors.joining(", "))));
        }
        return meant.get(0);
    }

    private static List<Failure> causes(Suggest suggest, String said) {
        return LooseNames.best(
                said,
                suggest.causes().stream()
                        .map(cause -> new Named<>(cause, List.of(LooseName.of(cause.name()))))
                        .toList());
    }

    private static Aim finding(Suggest suggest, String said) {
        List<Aim> all = suggest.findings();
        List<Named<Aim>> names =
                all.stream()
                        .map(aim -> new Named<>(aim, List.of(LooseName.of(aim.words()))))
                        .toList();
        List<Aim> best = LooseNames.best(said, names);
        if (best.size() != 1) {
            throw new Refusal(
                    "\""
                            + said
                            + "\" names "
                            + (best.isEmpty() ? "none" : "several")
                            + " of the findings"
                            + (all.isEmpty() ? ": there are none" : ":")
                            + all.stream()
                                    .map(aim -> "\n  " + aim.words())
                                    .collect(Collectors.joining()));
        }
        return best.get(0);
    }
}
