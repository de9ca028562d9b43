package stillturning.assess.ranges;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import stillturning.assess.Assess;
import stillturning.assess.ranges.EnduranceRange.Contributor;
import stillturning.assess.ranges.EnduranceRange.Quantiles;
import stillturning.assess.ranges.StudyVariant.VariedStudy;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Endurance;
import stillturning.story.UntoldStory;

/**
 * Tells one failure with every input somewhere in its range, each place equally likely and no input
 * in step with another.
 */
public final class Sampling {

    /** As many as make the share of a twentieth a dozen samples. */
    public static final int SAMPLES = 256;

    private final List<RangedInput> inputs;
    private final StudyVariant making;
    private final Function<Candidate, Optional<Failure>> failing;

    /**
     * A sampling to be.
     *
     * @param inputs those that are likely to matter first, where they are spread best
     * @param failing the failure as it is in a candidate that was made again
     */
    public Sampling(
            List<RangedInput> inputs,
            StudyVariant making,
            Function<Candidate, Optional<Failure>> failing) {
        this.inputs = List.copyOf(inputs);
        this.making = making;
        this.failing = failing;
    }

    /** One sample: where the inputs were, and what came of it. */
    private record Sample(List<Double> places, Optional<Verdict> verdict, String untold) {}

    /**
     * The endurance over many samples; the same whatever the number of threads.
     *
     * @param failure its name
     * @param count number of samples, at best a power of two
     * @param progress told after each sample, from any thread
     * @throws UntoldStory if no sample at all can be computed
     */
    public EnduranceRange of(String failure, int count, long seed, Consumer<String> progress)
            throws UntoldStory {
        double[][] points = QuasiRandomPoints.points(count, inputs.size(), seed);
        List<Sample> samples =
                IntStream.range(0, count)
                        .parallel()
                        .mapToObj(
                                n -> {
                                    Sample sample = sample(points[n]);
                                    progress.accept(failure);
                                    return sample;
                                })
                        .toList();
        List<String> untold = new ArrayList<>();
        List<Sample> told = new ArrayList<>();
        for (Sample sample : samples) {
            if (sample.verdict.isPresent()) {
                told.add(sample);
            } else {
                untold.add(sample.untold);
            }
        }
        if (told.isEmpty()) {
            throw new UntoldStory(untold.get(0));
        }
        return range(failure, told, untold);
    }

    private Sample sample(double[] places) {
        VariedStudy made = making.at(places);
        if (made.study().isEmpty()) {
            return new Sample(made.places(), Optional.empty(), made.refusal());
        }
        Study study = made.study().get();
        Candidate candidate = study.candidates().get(0);
        try {
            Failure failure =
                    failing.apply(candidate)
                            .orElseThrow(() -> new UntoldStory("the failure is no longer there"));
            return new Sample(
                    made.places(), Optional.of(Assess.one(study, candidate, failure)), "");
        } catch (UntoldStory e) {
            return new Sample(made.places(), Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private EnduranceRange range(String failure, List<Sample> told, List<String> untold) {
        List<Verdict> verdicts = told.stream().flatMap(s -> s.verdict.stream()).toList();
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        verdicts.forEach(v -> outcomes.merge(v.outcome(), 1, Integer::sum));
        List<Endurance> sorted =
                verdicts.stream()
                        .map(Sampling::endurance)
                        .sorted(Comparator.comparingDouble(Endurance::seconds))
                        .toList();
        double[][] places =
                told.stream()
                        .map(s -> s.places.stream().mapToDouble(Double::doubleValue).toArray())
                        .toArray(double[][]::new);
        double[] seconds = verdicts.stream().mapToDouble(v -> endurance(v).seconds()).toArray();
        List<Contributor> contributors =
                new Contributions(places, seconds)
                        .parts().stream()
                                .map(
                                        p ->
                                                new Contributor(
                                                        inputs.get(p.input()),
                                                        p.share(),
                                                        p.rises()))
                                .toList();
        long notLimited = sorted.stream().filter(Endurance.NotLimited.class::isInstance).count();
        return new EnduranceRange(
                failure,
                inputs.size(),
                Quantiles.of(sorted),
                outcomes,
                (int) notLimited,
                contributors,
                untold,
                verdicts.stream().flatMap(v -> v.untold().stream()).toList());
    }

    private static Endurance endurance(Verdict verdict) {
        return verdict.planned().engine().endurance();
    }
}
