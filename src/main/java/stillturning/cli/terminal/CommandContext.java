package stillturning.cli.terminal;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * Where a command runs.
 *
 * @param out for results
 * @param err for errors and progress
 * @param in for answers
 * @param terminal whether a person sits in front of it
 * @param colour whether results may be coloured
 * @param here the folder in which the user stands
 */
public record CommandContext(
        PrintWriter out,
        PrintWriter err,
        BufferedReader in,
        boolean terminal,
        boolean colour,
        Path here) {

    /** A path as the user means it. */
    public Path path(String written) {
        return here.resolve(written);
    }

    /** A path as short as the user would write it. */
    public String shown(Path path) {
        Path full = path.toAbsolutePath().normalize();
        Path base = here.toAbsolutePath().normalize();
        return full.startsWith(base) && !full.equals(base)
                ? base.relativize(full).toString()
                : full.toString();
    }
}
