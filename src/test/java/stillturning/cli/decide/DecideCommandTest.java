package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.model.goal.ComplexityCount;
import stillturning.report.Cautions;
import tools.jackson.databind.JsonNode;

class DecideCommandTest {

    @TempDir private Path here = Path.of("");

    @Test
    void theLeaderIsNamedFirstAndEverySectionFollows() {
        Session.in(here).copyOfFirstSteps("small");
        Ran ran = Session.in(here).run("decide", "small", "--full");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        String out = ran.out();
        int answer =
                out.indexOf(
                        "First in the ranking: One bus, second feeds from the battery; it meets"
                                + " every hard requirement.");
        int requirements = out.indexOf("\nHard requirements\n");
        int ranking = out.indexOf("\nRanking\n");
        int why = out.indexOf("\nWhy\n");
        assertTrue(0 < answer && answer < requirements, out);
        assertTrue(requirements < ranking && ranking < why, out);
        assertTrue(out.contains("Share of all weightings"), out);
        assertTrue(out.contains("What it still breaks or cannot do, worst first"), out);
        assertTrue(out.contains("All data of this study are invented"), out);
        assertTrue(out.replaceAll("\\s+", " ").endsWith(Cautions.SHORT + " "), out);
        assertTrue(ran.lines().stream().allMatch(line -> line.length() <= 120), out);
        assertEquals("", ran.err());
    }

    @Test
    void aLeaderThatMissesARequirementIsAnExitCode() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("study.yaml"), "charging: 30 min", "charging: 300 min");
        Ran ran = Session.in(here).run("decide", "small", "--full");
        assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code());
        assertTrue(
                ran.out()
                        .replaceAll("\\s+", " ")
                        .contains("no candidate meets every hard requirement"),
                ran.out());
        assertTrue(ran.out().contains("MISSED"), ran.out());
    }

    @Test
    void jsonNamesTheLeader() {
        Session.in(here).copyOfFirstSteps("small");
        JsonNode json = Session.tree(Session.in(here).run("decide", "small", "--json").out());
        assertEquals("bus-and-battery", json.get("leader").asString());
        assertEquals(ComplexityCount.values().length, json.get("complexity").size());
        assertTrue(json.has("complexityTurns"), json.toString());
    }

    /** The same statement in the file and on the command line. */
    @Test
    void whatIsKnownOfTheWeightsNarrowsTheWeightings() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session session = Session.in(here);
        String all = session.run("decide", "small", "--json").out();
        String knowing =
                session.run("decide", "small", "--json", "--knowing", "engine-stops over cost")
                        .out();
        Path file = folder.resolve("study.yaml");
        Session.change(
                file, "requirements:", "importance: [engine-stops over cost]\nrequirements:");
        String written = session.run("decide", "small", "--json").out();
        assertEquals(shares(written), shares(knowing));
        assertFalse(shares(all).equals(shares(knowing)), knowing);
    }

    private static String shares(String json) {
        StringBuilder shares = new StringBuilder();
        Session.tree(json)
                .get("candidates")
                .forEach(c -> shares.append(c.findValue("centralWeights")).append('\n'));
        return shares.toString();
    }

    @Test
    void swingsOnTheCommandLineCountAsThoseOfTheStudy() throws IOException {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session session = Session.in(here);
        String said =
                session.run("decide", "small", "--json", "--swing", "endurance 100, cost 25").out();
        assertTrue(
                session.run("decide", "small", "--swing", "endurance 100, cost 25")
                        .out()
                        .contains("80 %"),
                said);
        Session.change(
                folder.resolve("study.yaml"),
                "requirements:",
                """
                criteria:
                  endurance: {acceptable: 30 min, enough: 2 h, swing: 100}
                  cost: {acceptable: 4000, enough: 1000, swing: 25}
                requirements:\
                """);
        String written = session.run("decide", "small", "--json").out();
        assertEquals(2, Session.tree(said).get("criteria").size());
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    Session.tree(written).get("criteria").get(i).get("weight"),
                    Session.tree(said).get("criteria").get(i).get("weight"));
        }
    }

    @Test
    void swingsThatAreNoneAreRefusedAllAtOnce() {
        Session.in(here).copyOfFirstSteps("small");
        Ran two = Session.in(here).run("decide", "small", "--swing", "wieght 100, cost much");
        assertEquals(ExitCode.BAD_INPUT, two.code());
        assertTrue(two.err().contains("\"wieght 100\""), two.err());
        assertTrue(two.err().contains("\"cost much\""), two.err());
        Ran low = Session.in(here).run("decide", "small", "--swing", "weight 60, cost 40");
        assertTrue(low.err().contains("the largest swing is not 100"), low.err());
    }

    @Test
    void aStatementThatIsNoneIsRefused() {
        Session.in(here).copyOfFirstSteps("small");
        Ran none = Session.in(here).run("decide", "small", "--knowing", "weight beats cost");
        assertEquals(ExitCode.BAD_INPUT, none.code());
        assertTrue(none.err().contains("write two of engine-stops, pilot-needed"), none.err());
        Ran reverse =
                Session.in(here).run("decide", "small", "--knowing", "cost over engine-stops");
        assertEquals(ExitCode.BAD_INPUT, reverse.code());
        assertTrue(reverse.err().contains("weights say the reverse"), reverse.err());
    }

    @Thorough
    @Test
    void guessesAreTriedOnlyWhenAskedAndThoseThatMatterAreNamed() {
        Session.in(here).copyOfFirstSteps("small");
        String without = Session.in(here).run("decide", "small", "--full").out();
        assertFalse(without.contains("What to find out next"), without);
        Ran ran = Session.in(here).run("decide", "small", "--guesses", "--full");
        String out = ran.out();
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(out.indexOf("\nWhy\n") < out.indexOf("\nWhat to find out next\n"), out);
        assertTrue(out.contains("\nparts.battery.capacity,"), out);
        assertTrue(out.matches("(?s).*The other \\d+ guesses change none of this.*"), out);
        assertTrue(ran.lines().stream().allMatch(line -> line.length() <= 120), out);
        JsonNode json =
                Session.tree(Session.in(here).run("decide", "small", "--guesses", "--json").out());
        assertTrue(json.get("guesses").get("matter").size() > 0);
        Session.in(here).run("explain", "small", "--guesses");
        String page = Session.text(here.resolve("small.html"));
        assertTrue(page.contains("<section id=\"guesses\">"), "the page has no such section");
        assertTrue(page.contains("href=\"#guesses\""), "nothing leads there");
    }

    @Thorough
    @Test
    void runUpChecksAreCountedWhereAskedAndElsewhereItSaysHowToAsk() {
        Session.in(here).copyOfFirstSteps("small");
        String without = Session.in(here).run("decide", "small").out().replaceAll("\\s+", " ");
        assertTrue(without.contains("how many run-up checks it needs (--run-up)"), without);
        JsonNode card =
                Session.tree(
                        Session.in(here)
                                .run("run-up", "small", "--candidate", "bus-and-battery", "--json")
                                .out());
        int checks = card.findValue("checks").size();
        String with =
                Session.in(here).run("decide", "small", "--run-up").out().replaceAll("\\s+", " ");
        assertTrue(
                with.contains(
                        "It needs "
                                + checks
                                + (checks == 1 ? " check" : " checks")
                                + " before each flight: "),
                with);
        assertFalse(with.contains("(--run-up)"), with);
    }

    @Test
    void colourIsOnlyForThoseWhoSeeIt() {
        Session.in(here).copyOfFirstSteps("small");
        String plain = Session.in(here).run("decide", "small", "--full").out();
        String dull = new Session(here, true, false).run("decide", "small", "--full").out();
        String coloured = new Session(here, true, true).run("decide", "small", "--full").out();
        String json = new Session(here, true, true).run("decide", "small", "--json").out();
        assertEquals(plain, dull);
        assertFalse(plain.contains("\u001B"), plain);
        assertTrue(coloured.contains("\u001B["), coloured);
        assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
        assertFalse(json.contains("\u001B"), json);
    }

    @Thorough
    @Test
    void theSameStudyGivesTheSameBytes() {
        Session.in(here).copyOfFirstSteps("small");
        Session session = Session.in(here);
        assertEquals(session.run("decide", "small").out(), session.run("decide", "small").out());
        assertEquals(
                session.run("decide", "small", "--json").out(),
                session.run("decide", "small", "--json").out());
    }
}
