package stillturning.cli.breaking;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillturning.cli.breaking.Stories.Told;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.report.StoryPlot;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.yaml.disk.WholeFile;

/**
 * The files that stories are drawn into: one story into the file named, several into files with a
 * number behind their name.
 */
final class PlotFiles {

    private final Path path;
    private final String ending;
    private final CommandContext context;

    private PlotFiles(Path path, String ending, CommandContext context) {
        this.path = path;
        this.ending = ending;
        this.context = context;
    }

    /**
     * A file as written by the user, looked at before anything is computed.
     *
     * @throws Refusal if it can be no picture's, or its folder cannot be written to
     */
    static PlotFiles named(String written, CommandContext context) {
        String lower = written.toLowerCase(Locale.ROOT);
        if (!lower.endsWith(".svg") && !lower.endsWith(".png")) {
            throw new Refusal(
                    "--plot draws into a file that ends in .svg or .png, not \"" + written + "\"");
        }
        Path path = path(written, context);
        if (String.valueOf(path.getFileName()).length() == ".svg".length()) {
            throw new Refusal("\"" + written + "\" has no name before its ending; write plot.svg");
        }
        Path folder = path.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Refusal(
                    "there is no folder " + folder + " for the picture; make it, or name another");
        }
        if (Files.isDirectory(path)) {
            throw new Refusal(written + " is a folder; name a file with --plot");
        }
        if (!Files.isWritable(folder)) {
            throw new Refusal(
                    "nothing can be written into "
                            + context.shown(folder)
                            + "; name a file in another folder with --plot");
        }
        return new PlotFiles(path, lower.substring(lower.length() - 3), context);
    }

    private static Path path(String written, CommandContext context) {
        try {
            return context.path(written);
        } catch (InvalidPathException e) {
            throw new Refusal("that can be no file's name: " + e.getReason());
        }
    }

    /**
     * Draws each story; what each file shows, in their order.
     *
     * @throws Refusal if a file cannot be written
     */
    List<String> write(Stories stories) {
        List<Told> told = stories.told();
        List<String> written = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            Path file = told.size() == 1 ? path : numbered(i + 1);
            Told one = told.get(i);
            replace(file, drawn(one, stories.pilot()));
            String what =
                    told.size() == 1
                            ? ""
                            : "  ("
                                    + one.candidate().id()
                                    + ", "
                                    + one.verdict().failure().name()
                                    + ")";
            written.add("Drawn: " + context.shown(file) + what);
        }
        return written;
    }

    private Path numbered(int number) {
        String name = String.valueOf(path.getFileName());
        String stem = name.substring(0, name.length() - ending.length() - 1);
        return path.resolveSibling(stem + "-" + number + "." + ending);
    }

    private byte[] drawn(Told told, Pilot pilot) {
        Story story = told.verdict().with(pilot);
        String title =
                told.candidate().title()
                        + ": "
                        + story.failure().name()
                        + ", pilot "
                        + story.pilot().words();
        return ending.equals("png")
                ? StoryPlot.png(title, story)
                : StoryPlot.svg("story", title, story).getBytes(StandardCharsets.UTF_8);
    }

    /** At every instant the old picture is there or the new one. */
    private void replace(Path file, byte[] bytes) {
        try {
            WholeFile.replace(file, bytes);
        } catch (IOException e) {
            throw Refusal.unwritten(context.shown(file), e, "file with --plot");
        }
    }
}
