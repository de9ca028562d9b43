package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import tools.jackson.databind.JsonNode;

class BetweenTest {

    @TempDir private Path here = Path.of("");

    @Test
    void twoCandidatesAreHeldAgainstEachOtherTheVerdictFirst() {
        Session.in(here).copyOfFirstSteps("small");
        Ran ran =
                Session.in(here).run("decide", "small", "--between", "one-bus", "bus-and-battery");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        String out = ran.out();
        assertTrue(
                out.strip().startsWith("\"One bus, second feeds from the battery\" is ahead"), out);
        assertTrue(out.contains("What makes the difference"), out);
        assertTrue(out.contains("What is bought, what is paid"), out);
        assertTrue(out.contains("Failures that do not come to the same"), out);
        ran.lines().forEach(line -> assertTrue(line.length() <= 102, line));
    }

    /** On the first evening: what {@code new} wrote, asked as it says. */
    @Thorough
    @Test
    void breakersOrElectronicSwitchingCanBeAskedOfANewStudy() {
        Session.in(here)
                .run("new", "robin", "--batteries", "1", "--computers", "1", "--pumps", "1");
        Ran ran =
                Session.in(here)
                        .run(
                                "decide",
                                "robin",
                                "--between",
                                "two-engine-buses",
                                "two-engine-buses-solid-state");
        assertEquals("", ran.err());
        String out = ran.out().replaceAll("\\s+", " ");
        assertTrue(out.contains(" is ahead of "), out);
        assertTrue(out.contains("What controller does in "), out);
        assertTrue(out.contains("protection and switching"), out);
        assertFalse(out.contains("batteries ("), out);
        assertFalse(out.contains("Both have the same protection and switching"), out);
        assertTrue(out.contains(" EUR; its "), out);
    }

    @Test
    void sharesInItsJsonSumToTheWholeDifference() {
        Session.in(here).copyOfFirstSteps("small");
        JsonNode json =
                Session.tree(
                        Session.in(here)
                                .run(
                                        "decide",
                                        "small",
                                        "--json",
                                        "--between",
                                        "one-bus",
                                        "bus-and-battery")
                                .out());
        double shares = 0;
        for (JsonNode share : json.get("shares")) {
            shares += share.get("points").asDouble();
        }
        JsonNode mixes = json.get("mixes");
        double whole =
                mixes.get(mixes.size() - 1).get("points").asDouble()
                        - mixes.get(0).get("points").asDouble();
        assertEquals(whole, shares, 1e-5);
        assertTrue(whole > 0, json.toString());
    }

    @Test
    void oneCandidateTwiceOrOneThatIsNotThereIsRefused() {
        Session.in(here).copyOfFirstSteps("small");
        Ran twice = Session.in(here).run("decide", "small", "--between", "one-bus", "one-bus");
        assertEquals(ExitCode.BAD_INPUT, twice.code());
        assertTrue(twice.err().contains("needs two candidates"), twice.err());
        Ran absent = Session.in(here).run("decide", "small", "--between", "one-bus", "xyz");
        assertEquals(ExitCode.BAD_INPUT, absent.code());
        assertTrue(absent.err().contains("xyz"), absent.err());
    }
}
