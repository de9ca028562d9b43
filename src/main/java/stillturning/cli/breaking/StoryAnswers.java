package stillturning.cli.breaking;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;

/**
 * What follows from some failures.
 *
 * @param ranges how sure each story's endurance is, if that was asked
 * @param drawn what was drawn into which file
 */
record StoryAnswers(Stories stories, List<EnduranceRange> ranges, List<String> drawn)
        implements Answer {

    static Answer of(BreakRequest request) {
        return of(request, stories -> List.of());
    }

    /**
     * @param ranging how sure each story's endurance is
     */
    static Answer of(BreakRequest request, Function<Stories, List<EnduranceRange>> ranging) {
        Optional<PlotFiles> files =
                request.options().plot.map(file -> PlotFiles.named(file, request.context()));
        Stories stories = Stories.of(request);
        List<EnduranceRange> ranges = ranging.apply(stories);
        List<String> drawn = files.map(f -> f.write(stories)).orElse(List.of());
        return new StoryAnswers(stories, ranges, drawn);
    }

    @Override
    public String json() {
        return StoriesJson.of(stories, ranges);
    }

    @Override
    public void print(Output out) {
        new StoriesText(stories, ranges, out).tell(drawn);
    }
}
