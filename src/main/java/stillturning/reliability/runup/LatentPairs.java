package stillturning.reliability.runup;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.EngineOwn;
import stillturning.reliability.combined.Event;
import stillturning.story.UntoldStory;

/**
 * Pairs of failures that end the engine and of which one is latent.
 *
 * @param joint failures and dead lamps alone and in pairs with a latent one
 * @param card latent failures, and what reveals those that end the engine with one more
 * @param latents those of them that do, what is the engine's own left out; those first that no
 *     check reveals, then those that most others end the engine with
 */
public record LatentPairs(CombinedResult joint, Card card, List<Latent> latents) {

    public LatentPairs {
        latents = List.copyOf(latents);
    }

    /**
     * Looks for them. Only pairs with a latent one are told, so it takes a part of what all pairs
     * take. The result does not depend on the number of threads.
     *
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static LatentPairs of(Study study, Candidate candidate) throws UntoldStory {
        List<Event> events =
                CombinedFailures.events(candidate, List.of()).stream()
                        .filter(e -> LatentFailureSearch.canHide(e.kind()))
                        .toList();
        List<Integer> unseen = new LatentFailureSearch(study, candidate).among(events);
        CombinedResult joint =
                CombinedFailures.withOneOf(study, candidate, events, Set.copyOf(unseen));
        Card card = RunUp.of(study, joint, unseen);
        EngineOwn own = new EngineOwn(study.aircraft().engine().logic(), events);
        List<Latent> latents =
                card.thatMatter().stream()
                        .map(latent -> withoutOwn(latent, own))
                        .filter(Latent::matters)
                        .sorted(
                                Comparator.comparing(
                                                (Latent l) -> card.check(l.event()).isPresent())
                                        .thenComparing(l -> -l.with().size()))
                        .toList();
        return new LatentPairs(joint, card, latents);
    }

    private static Latent withoutOwn(Latent latent, EngineOwn own) {
        return new Latent(
                latent.event(),
                latent.with().stream()
                        .filter(other -> !own.test(List.of(latent.event(), other)))
                        .toList());
    }

    /** Those that no check of the run-up reveals. */
    public List<Latent> unchecked() {
        return latents.stream().filter(l -> card.check(l.event()).isEmpty()).toList();
    }

    /** How many pairs some latent failures make; one of two latent failures counts once. */
    public static long pairs(List<Latent> some) {
        return some.stream()
                .flatMap(l -> l.with().stream().map(other -> Set.of(l.event(), other)))
                .distinct()
                .count();
    }
}
