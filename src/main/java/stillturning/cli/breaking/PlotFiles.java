package stillturning.cli.breaking;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stillturning.cli.breaking.Stories.ToldFailure;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.PictureFile;
import stillturning.cli.terminal.Refusal;
import stillturning.report.StoryPlot;
import stillturning.story.Pilot;
import stillturning.story.Story;

/**
 * The files that stories are drawn into: one story into the file named, several into files with a
 * number behind their name.
 */
final class PlotFiles {

    private final PictureFile file;

    private PlotFiles(PictureFile file) {
        this.file = file;
    }

    /**
     * A file as written by the user, looked at before anything is computed.
     *
     * @throws Refusal if it can be no picture's, or its folder cannot be written to
     */
    static PlotFiles named(String written, CommandContext context) {
        return new PlotFiles(PictureFile.named(written, context));
    }

    /**
     * Draws each story; what each file shows, in their order.
     *
     * @throws Refusal if a file cannot be written
     */
    List<String> write(Stories stories) {
        List<ToldFailure> told = stories.told();
        List<String> written = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            PictureFile own = told.size() == 1 ? file : file.numbered(i + 1);
            ToldFailure one = told.get(i);
            String what =
                    told.size() == 1
                            ? ""
                            : "  ("
                                    + one.candidate().id()
                                    + ", "
                                    + one.verdict().failure().name()
                                    + ")";
            written.add(own.write(drawn(one, stories.pilot())) + what);
        }
        return written;
    }

    private byte[] drawn(ToldFailure told, Pilot pilot) {
        Story story = told.verdict().with(pilot);
        String title =
                told.candidate().title()
                        + ": "
                        + story.failure().name()
                        + ", pilot "
                        + story.pilot().words();
        return file.isPng()
                ? StoryPlot.png(title, story)
                : StoryPlot.svg("story", title, story).getBytes(StandardCharsets.UTF_8);
    }
}
