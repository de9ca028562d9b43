package stillturning.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final StringWriter err = new StringWriter();

    private CommandContext context(boolean terminal) {
        return new CommandContext(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                new BufferedReader(new StringReader("")),
                terminal,
                terminal,
                Path.of(""));
    }

    @Test
    void slowWorkIsShownInPlaceAndWipedAway() throws InterruptedException {
        try (Progress progress =
                Progress.over(6, "candidates assessed", context(true), Duration.ZERO)) {
            progress.accept("first");
            waitFor("\r1 of 6 candidates assessed");
        }
        assertTrue(err.toString().endsWith("\r" + " ".repeat(26) + "\r"), err.toString());
    }

    private void waitFor(String text) throws InterruptedException {
        for (int i = 0; i < 200 && !err.toString().contains(text); i++) {
            Thread.sleep(20);
        }
        assertTrue(err.toString().contains(text), err.toString());
    }

    @Test
    void quickWorkShowsNothing() {
        try (Progress progress =
                Progress.over(6, "candidates assessed", context(true), Duration.ofHours(1))) {
            progress.accept("first");
        }
        assertEquals("", err.toString());
    }

    @Test
    void nothingIsShownWhereNobodySits() throws InterruptedException {
        try (Progress progress =
                Progress.over(6, "candidates assessed", context(false), Duration.ZERO)) {
            progress.accept("first");
            Thread.sleep(50);
        }
        assertEquals("", err.toString());
    }
}
