package stillturning.cli.breaking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assess;
import stillturning.assess.SheddingEndurances;
import stillturning.assess.verdict.Verdict;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.quantity.Formats;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;

/**
 * Failures of some candidates told and judged, in the order of the candidates, the worst of each
 * first.
 *
 * @param moment when in the flight they happen
 * @param pilot whose stories are told in full
 * @param compared whether several candidates were asked for
 */
record Stories(
        Study study,
        Moment moment,
        Pilot pilot,
        boolean compared,
        List<ToldFailure> told,
        List<UntoldFailure> untold) {

    /** A failure of a candidate, and what came of it. */
    record ToldFailure(Candidate candidate, Verdict verdict) {}

    /** A failure of a candidate that could not be computed. */
    record UntoldFailure(String candidate, String failure, String reason) {
        private static UntoldFailure of(Candidate candidate, Failure failure, UntoldStory why) {
            return new UntoldFailure(
                    candidate.id(), failure.name(), String.valueOf(why.getMessage()));
        }
    }

    private static Comparator<ToldFailure> worstFirst(Pilot pilot) {
        return Comparator.comparing((ToldFailure t) -> t.verdict.outcome(pilot))
                .thenComparing(
                        t ->
                                Formats.lastingSeconds(
                                        t.verdict.with(pilot).engine().endurance().seconds()));
    }

    Stories {
        told = List.copyOf(told);
        untold = List.copyOf(untold);
    }

    /**
     * Tells the failures asked about.
     *
     * @throws Refusal if none of them can be computed
     */
    static Stories of(BreakRequest request) {
        Study study = request.study();
        Map<String, List<Failure>> failures = request.failures();
        Pilot pilot = request.options().pilot.orElse(Pilot.PLANNED);
        Moment moment =
                request.options()
                        .phase
                        .map(named -> PhaseNames.find(study, named))
                        .orElse(Moment.heldIn(study.goals().failurePhase().name()));
        List<ToldFailure> told = new ArrayList<>();
        List<UntoldFailure> untold = new ArrayList<>();
        int total = failures.values().stream().mapToInt(List::size).sum();
        try (Progress progress = Progress.over(total, "stories told", request.context())) {
            for (Candidate candidate : study.candidates()) {
                List<ToldFailure> own = new ArrayList<>();
                for (Failure failure : failures.getOrDefault(candidate.id(), List.of())) {
                    try {
                        own.add(
                                new ToldFailure(
                                        candidate, Assess.one(study, candidate, failure, moment)));
                    } catch (UntoldStory e) {
                        untold.add(UntoldFailure.of(candidate, failure, e));
                    }
                    progress.accept(failure.name());
                }
                own.sort(worstFirst(pilot));
                told.addAll(own);
            }
        }
        if (told.isEmpty()) {
            throw new Refusal(
                    untold.get(0).candidate + " cannot be computed: " + untold.get(0).reason);
        }
        return new Stories(study, moment, pilot, study.candidates().size() > 1, told, untold);
    }

    /** What switching loads off is worth, where electricity ends the engine after this failure. */
    Optional<SheddingEndurances> lasting(ToldFailure of) {
        boolean ends = of.verdict.planned().engine().endurance() instanceof Endurance.Lasts;
        if (!ends || moment.span() == FlightSpan.FLOWN) {
            return Optional.empty();
        }
        try {
            return Optional.of(Assess.lasting(study, of.candidate, of.verdict.failure()));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    /** Candidates that have none of the failures. */
    List<Candidate> without() {
        return study.candidates().stream()
                .filter(c -> told.stream().noneMatch(t -> t.candidate.id().equals(c.id())))
                .filter(c -> untold.stream().noneMatch(u -> u.candidate.equals(c.id())))
                .toList();
    }
}
