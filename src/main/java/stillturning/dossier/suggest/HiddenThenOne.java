package stillturning.dossier.suggest;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Scrutiny;
import stillturning.assess.verdict.Outcome;
import stillturning.dossier.NamedFailures;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;
import stillturning.reliability.runup.Sight;
import stillturning.story.UntoldStory;

/**
 * A failure that nobody sees, and one more that then ends the engine. Mended where the pair no
 * longer ends it, or the first one shows. Where a part of the pair is gone the pair cannot be asked
 * about, and counts as left.
 *
 * @param hidden the one that nobody sees
 * @param then the one more, or an event that takes several parts
 */
public record HiddenThenOne(Failure hidden, Failure then) implements Aim {

    @Override
    public String words() {
        return hidden.name() + ", seen by nobody, and then " + then.name() + " (engine lost)";
    }

    @Override
    public List<String> parts() {
        return Stream.of(hidden, then)
                .flatMap(
                        f ->
                                Stream.concat(
                                        f.hits().stream().map(Candidate.Hit::part),
                                        f.levers().keySet().stream()))
                .distinct()
                .toList();
    }

    @Override
    public boolean isLeft(Drawn after, Scrutiny look) throws UntoldStory {
        Optional<Failure> first = in(after, hidden);
        Optional<Failure> second = in(after, then);
        if (first.isEmpty() || second.isEmpty()) {
            return true;
        }
        boolean ends =
                look.verdictOn(first.get().and(second.get())).outcome() == Outcome.ENGINE_LOST;
        return ends && Sight.hides(after.study(), after.candidate(), first.get());
    }

    private static Optional<Failure> in(Drawn drawn, Failure failure) {
        return Stream.concat(
                        NamedFailures.everything(drawn.candidate()).stream(),
                        drawn.causes().stream().map(Cause::failure))
                .filter(f -> f.name().equals(failure.name()))
                .findFirst();
    }
}
