package stillturning.cli.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import stillturning.report.drawing.Picture;
import stillturning.yaml.disk.WholeFile;

/** A file that something is drawn into. */
public final class PictureFile {

    /** Dots for each unit of the drawing in a PNG. */
    private static final int SHARPNESS = 2;

    private final Path path;
    private final String ending;
    private final CommandContext context;

    private PictureFile(Path path, String ending, CommandContext context) {
        this.path = path;
        this.ending = ending;
        this.context = context;
    }

    /**
     * A file as written by the user, looked at before anything is computed.
     *
     * @throws Refusal if it can be no picture's, or its folder cannot be written to
     */
    public static PictureFile named(String written, CommandContext context) {
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
        return new PictureFile(path, lower.substring(lower.length() - 3), context);
    }

    private static Path path(String written, CommandContext context) {
        try {
            return context.path(written);
        } catch (InvalidPathException e) {
            throw new Refusal("that can be no file's name: " + e.getReason());
        }
    }

    /** The same with a number behind its name. */
    public PictureFile numbered(int number) {
        String name = String.valueOf(path.getFileName());
        String stem = name.substring(0, name.length() - ending.length() - 1);
        return new PictureFile(
                path.resolveSibling(stem + "-" + number + "." + ending), ending, context);
    }

    /** Whether it takes dots, not lines. */
    public boolean isPng() {
        return ending.equals("png");
    }

    /**
     * Draws; what was done, in words.
     *
     * @throws Refusal if it cannot be written
     */
    public String write(Picture picture) {
        return write(
                isPng()
                        ? picture.toPng(SHARPNESS)
                        : picture.toSvg().getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes what is drawn already; at every instant the old picture is there or the new one.
     *
     * @throws Refusal if it cannot be written
     */
    public String write(byte[] bytes) {
        try {
            WholeFile.replace(path, bytes);
        } catch (IOException e) {
            throw Refusal.unwritten(context.shown(path), e, "file with --plot");
        }
        return "Drawn: " + context.shown(path);
    }
}
