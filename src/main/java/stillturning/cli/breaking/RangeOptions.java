package stillturning.cli.breaking;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.Verdict;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.ranges.RangedInput;
import stillturning.assess.ranges.Sampling;
import stillturning.assess.ranges.StudyVariant;
import stillturning.dossier.NamedFailures;
import stillturning.files.DrawnStudy;
import stillturning.files.Range;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.quantity.Dimension;
import stillturning.story.UntoldStory;

/** Whether to say how sure an endurance is. */
final class RangeOptions {

    /** Any number does, but it must be the same tomorrow. */
    private static final long SEED = 1;

    /** What endurance usually hangs on, first. */
    private static final List<Dimension> WEIGHTY =
            List.of(
                    Dimension.CHARGE,
                    Dimension.CURRENT,
                    Dimension.RATIO,
                    Dimension.POWER,
                    Dimension.TEMPERATURE,
                    Dimension.TIME,
                    Dimension.VOLTAGE,
                    Dimension.RESISTANCE);

    @Option(
            names = "--ranges",
            description =
                    "With --failure: also say how sure the endurance is, every"
                            + " value being anywhere in its range, and which values it hangs on.")
    private boolean asked;

    boolean asked() {
        return asked;
    }

    /**
     * How sure the endurance is that a verdict gives.
     *
     * @throws Refusal if not one sample can be computed
     */
    EnduranceRange of(
            StudyReader reader, Candidate candidate, Verdict verdict, CommandContext context) {
        String failure = verdict.failure().name();
        Map<Dimension, Integer> order = new EnumMap<>(Dimension.class);
        WEIGHTY.forEach(d -> order.put(d, order.size()));
        List<Range> ranges =
                reader.rangesOf(candidate.id()).stream()
                        .sorted(
                                Comparator.comparingInt(
                                        r -> order.getOrDefault(r.dimension(), WEIGHTY.size())))
                        .toList();
        Sampling sampling =
                new Sampling(
                        ranges.stream().map(RangeOptions::input).toList(),
                        places -> made(reader.drawn(candidate.id(), ranges, places)),
                        anew -> again(anew, failure));
        try (Progress progress = Progress.over(Sampling.SAMPLES, "samples told", context)) {
            return sampling.of(failure, Sampling.SAMPLES, SEED, progress);
        } catch (UntoldStory e) {
            throw new Refusal("no sample can be computed: " + e.getMessage());
        }
    }

    private static RangedInput input(Range range) {
        return new RangedInput(range.place().file(), range.place().path(), range.text());
    }

    private static StudyVariant.Made made(DrawnStudy drawn) {
        return new StudyVariant.Made(drawn.study(), drawn.places(), drawn.refusal());
    }

    private static Optional<Failure> again(Candidate candidate, String failure) {
        return NamedFailures.everything(candidate).stream()
                .filter(f -> f.name().equals(failure))
                .findFirst();
    }
}
