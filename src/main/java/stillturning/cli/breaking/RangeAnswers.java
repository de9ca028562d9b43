package stillturning.cli.breaking;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.ranges.RangedInput;
import stillturning.assess.ranges.Sampling;
import stillturning.assess.ranges.StudyVariant;
import stillturning.cli.breaking.Stories.ToldFailure;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.NamedFailures;
import stillturning.files.DrawnStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Range;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.quantity.Dimension;
import stillturning.story.UntoldStory;

/** What follows from some failures, and how sure the endurance after each is. */
final class RangeAnswers {

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

    private RangeAnswers() {}

    static Answer of(BreakRequest request) {
        return StoryAnswers.of(
                request,
                stories -> stories.told().stream().map(told -> range(request, told)).toList());
    }

    private static EnduranceRange range(BreakRequest request, ToldFailure told) {
        StudyReader reader = request.found().reader();
        String candidate = told.candidate().id();
        String failure = told.verdict().failure().name();
        List<Range> ranges =
                reader.rangesOf(candidate).stream()
                        .sorted(Comparator.comparingInt(RangeAnswers::weight))
                        .toList();
        Sampling sampling =
                new Sampling(
                        ranges.stream().map(RangeAnswers::input).toList(),
                        places -> made(reader.drawn(Set.of(candidate), ranges, places)),
                        anew -> again(anew, failure));
        try (Progress progress =
                Progress.over(Sampling.SAMPLES, "samples told", request.context())) {
            return sampling.of(failure, Sampling.SAMPLES, SEED, progress);
        } catch (UntoldStory e) {
            throw new Refusal("no sample can be computed: " + e.getMessage());
        }
    }

    private static int weight(Range range) {
        int place = WEIGHTY.indexOf(range.dimension());
        return place < 0 ? WEIGHTY.size() : place;
    }

    private static RangedInput input(Range range) {
        return new RangedInput(range.place().file(), range.place().path(), range.text());
    }

    private static StudyVariant.VariedStudy made(DrawnStudy drawn) {
        return new StudyVariant.VariedStudy(drawn.study(), drawn.places(), drawn.refusal());
    }

    private static Optional<Failure> again(Candidate candidate, String failure) {
        return NamedFailures.everything(candidate).stream()
                .filter(f -> f.name().equals(failure))
                .findFirst();
    }
}
