package stillturning.cli.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.verdict.Outcome;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.report.Cautions;
import tools.jackson.databind.JsonNode;

class BreakCommandTest {

    @TempDir private Path here = Path.of("");

    @BeforeEach
    void aSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    private Ran breaking(String... options) {
        List<String> words = new ArrayList<>(List.of("break", "small"));
        words.addAll(List.of(options));
        return Session.in(here).run(words.toArray(new String[0]));
    }

    @Test
    void withoutAFailureEveryCandidateMeetsEveryFailure() {
        Ran ran = breaking();
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("main-bus: short to ground"), ran.out());
        assertTrue(ran.out().contains("(2)     One bus\n"), ran.out());
        assertTrue(ran.out().contains("LOST    engine lost"), ran.out());
        assertTrue(ran.out().contains("further failures, at worst:"), ran.out());
        assertCautioned(ran);
    }

    @Test
    void allFailuresAreListedWhenAskedFor() {
        Ran ran = breaking("--all");
        assertTrue(ran.out().contains("lights-wire: open"), ran.out());
        assertFalse(ran.out().contains("further failures"), ran.out());
    }

    @Test
    void aCandidateAndAFailureTellAStory() {
        Ran ran = breaking("--candidate", "one-bus", "--failure", "main bus short");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        List<String> lines = ran.lines();
        assertEquals("One bus", lines.get(3));
        assertEquals("main-bus: short to ground, pilot as planned", lines.get(4));
        assertTrue(ran.out().contains("engine lost"), ran.out());
        assertTrue(ran.out().contains("battery lead fuse opens"), ran.out());
        assertCautioned(ran);
    }

    @Test
    void aPartsNameTellsAllItsFailuresWorstFirst() {
        Ran ran = breaking("--candidate", "one bus", "--failure", "alternator");
        List<String> outcomes =
                ran.lines().stream()
                        .filter(line -> line.startsWith("  outcome:"))
                        .map(line -> line.substring(10).strip())
                        .toList();
        // no output, part output, over-voltage, regulates high, output short, field open, field
        // shorted
        assertEquals(7, outcomes.size(), ran.out());
        List<String> worstFirst = Arrays.stream(Outcome.values()).map(Outcome::words).toList();
        List<Integer> ranks = outcomes.stream().map(worstFirst::indexOf).toList();
        assertEquals(ranks.stream().sorted().toList(), ranks);
    }

    @Test
    void aCandidateMayBeNamedByItsTitleOrAPartOfIt() {
        Ran byTitle = breaking("--candidate", "second feeds", "--failure", "radio open wire");
        assertEquals("One bus, second feeds from the battery", byTitle.lines().get(3));
        Ran byId = breaking("--candidate", "bus and batery", "--failure", "wire radio open");
        assertEquals(byTitle.out(), byId.out());
    }

    @Test
    void aFailureWithoutACandidateIsComparedInAll() {
        Ran ran = breaking("--failure", "main bus short");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("Pilot as planned; "), ran.out());
        assertTrue(
                ran.out()
                        .matches(
                                "(?s).*\nOne bus +main-bus: short to +engine lost +1.0 s +1.0 s +1.0 s .*"),
                ran.out());
        assertTrue(ran.out().contains("\n  One bus, second feeds from the battery\n"), ran.out());
        assertCautioned(ran);
    }

    @Test
    void theThreeKindsOfPilotAreTold() {
        String planned = breaking("--failure", "charging lost").out();
        String late = breaking("--failure", "charging lost", "--pilot", "late").out();
        String never = breaking("--failure", "no charging", "--pilot", "NEVER").out();
        assertTrue(planned.contains("sheds lights"), planned);
        assertTrue(late.startsWith("Pilot late; ") && late.contains("sheds lights"), late);
        assertTrue(never.startsWith("Pilot never; "), never);
        assertFalse(never.contains("sheds lights"), never);
    }

    @Test
    void aPilotWhoDoesNothingIsToldInFullToo() {
        Ran ran = breaking("--candidate", "one-bus", "--failure", "charging", "--pilot", "never");
        assertTrue(ran.out().contains("charging lost, pilot never"), ran.out());
        assertTrue(ran.out().contains("  outcome:"), ran.out());
    }

    @Test
    void whatFitsSeveralPartsIsAskedBack() {
        Ran ran = breaking("--failure", "ground");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(
                ran.err()
                        .startsWith(
                                """
                                stillturning: "ground" may mean any of these; say more:
                                  panel-ground
                                  engine-ground
                                """),
                ran.err());
        assertEquals("", ran.out());
    }

    @Test
    void whatIsNotThereIsAnsweredWithTheNearest() {
        Ran ran = breaking("--failure", "engine bus");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("nearest:\n"), ran.err());
        Ran nobody = breaking("--candidate", "three batteries");
        assertEquals(ExitCode.BAD_INPUT, nobody.code());
        assertTrue(nobody.err().contains("\n  one-bus (One bus)"), nobody.err());
    }

    @Test
    void aDrillThatNoCandidateHasIsNotKnown() {
        Ran ran = breaking("--failure", "master off");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("nothing here fails by the name \"master off\""), ran.err());
    }

    @Test
    void aPilotWithoutAFailureIsRefused() {
        Ran ran = breaking("--pilot", "late");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("--pilot needs --failure"), ran.err());
    }

    @Test
    void jsonHoldsAStoryForEveryCandidate() {
        JsonNode json = Session.tree(breaking("--failure", "main bus short", "--json").out());
        assertEquals(2, json.get("stories").size());
        assertEquals("one-bus", json.get("stories").get(1).get("candidate").asString());
        JsonNode story = json.get("stories").get(1).get("story");
        assertEquals("engine-lost", story.get("outcome").asString());
        assertEquals(0, json.get("untold").size());
        assertEquals(Cautions.SHORT, json.get("caution").asString());
        Ran late = breaking("--failure", "main bus short", "--json", "--pilot", "late");
        assertEquals(ExitCode.FINE, late.code(), late.err());
        JsonNode both = Session.tree(late.out()).get("stories").get(0).get("story");
        assertTrue(both.has("pilotAsPlanned") && both.has("pilotLate"), late.out());
    }

    @Test
    void jsonHoldsTheMatrix() {
        JsonNode json = Session.tree(breaking("--json").out());
        assertEquals(2, json.get("candidates").size());
        assertTrue(json.get("failures").size() > 50, json.toString());
    }

    @Test
    void theSameStudyGivesTheSameBytes() {
        assertEquals(breaking().out(), breaking().out());
        assertEquals(
                breaking("--failure", "alternator").out(),
                breaking("--failure", "alternator").out());
    }

    @Test
    void theDemoStudyTellsOfItsMainBusAndOfTheMaster() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        Ran bus = Session.in(here).run("break", sandpiper, "--failure", "main bus short");
        assertEquals(ExitCode.FINE, bus.code(), bus.err());
        assertTrue(bus.lines().stream().allMatch(line -> line.length() <= 120), bus.out());
        Ran master = Session.in(here).run("break", sandpiper, "--failure", "master off");
        assertEquals(ExitCode.FINE, master.code(), master.err());
        assertTrue(master.out().contains("master off in flight"), master.out());
    }

    /** Rounded up it would be later than the end that it is to keep off. */
    @Test
    void byWhenHeMustActIsNeverPrintedLaterThanTheEngineLastsWithoutHim() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        String told = Session.in(here).run("break", sandpiper, "--failure", "charging lost").out();
        // 948 s, with 949 s for the engine
        assertTrue(told.contains(" 30 min  15 min   15 min\n"), told);
        assertFalse(told.contains("16 min"), told);
    }

    /** A channel that a procedure opens takes its pump along; so it is not "nothing off". */
    @Test
    void whatIsSaidOfSheddingIsNotSaidOfSwitches() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        String told =
                Session.in(here)
                        .run(
                                "break",
                                sandpiper,
                                "--candidate",
                                "solid-state",
                                "--failure",
                                "charging lost")
                        .out();
        assertTrue(told.contains("controller.8 off (30 s)"), told);
        assertTrue(told.contains("  if nothing is shed, no breaker pulled:"), told);
    }

    @Test
    void aStoryIsDrawnIntoTheFileNamedAndReplacesWhatWasThere() throws Exception {
        Files.writeString(here.resolve("bus.png"), "an older picture");
        Ran ran =
                breaking(
                        "--candidate",
                        "one-bus",
                        "--failure",
                        "main bus short",
                        "--plot",
                        "bus.png");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("\nDrawn: bus.png\n"), ran.out());
        BufferedImage image = ImageIO.read(here.resolve("bus.png").toFile());
        assertEquals(1920, image.getWidth());
        try (Stream<Path> files = Files.list(here)) {
            assertEquals(
                    List.of("bus.png", "small"),
                    files.map(f -> "" + f.getFileName()).sorted().toList());
        }
    }

    @Test
    void thePictureNumbersItsEventsAsTheyArePrinted() {
        Ran ran =
                breaking(
                        "--candidate",
                        "one-bus",
                        "--failure",
                        "main bus short",
                        "--plot",
                        "bus.SVG");
        String svg = Session.text(here.resolve("bus.SVG"));
        assertTrue(svg.contains("One bus: main-bus: short to ground, pilot as planned"), svg);
        assertTrue(svg.contains(">engine</text>") && svg.contains(">falters, starved</text>"), svg);
        int last = 0;
        while (ran.out().matches("(?s).*\\d m?s +" + (last + 1) + " (<-|  ).*")) {
            last++;
        }
        assertTrue(last > 3 && svg.matches("(?s).*[>–]" + last + "</text>.*"), last + "\n" + svg);
        assertFalse(svg.matches("(?s).*[>–]" + (last + 1) + "</text>.*"), svg);
    }

    @Test
    void severalStoriesAreDrawnIntoNumberedFiles() {
        Ran ran = breaking("--failure", "main bus short", "--plot", "bus.svg");
        assertTrue(
                ran.out().contains("Drawn: bus-1.svg  (bus-and-battery, main-bus: short"),
                ran.out());
        assertTrue(ran.out().contains("Drawn: bus-2.svg  (one-bus, main-bus: short"), ran.out());
        assertTrue(ran.out().matches("(?s).*\n +0 ms +1 +main bus: short to ground.*"), ran.out());
        assertTrue(Session.text(here.resolve("bus-2.svg")).contains("One bus: main-bus"));
        assertFalse(Files.exists(here.resolve("bus.svg")));
    }

    @Test
    void aPictureThatCannotBeWrittenIsRefusedBeforeAnythingIsComputed() throws Exception {
        Files.createDirectory(here.resolve("folder.png"));
        for (List<String> refused :
                List.of(
                        List.of("bus.pdf", "ends in .svg or .png"),
                        List.of("nowhere/bus.svg", "there is no folder"),
                        List.of("folder.png", "is a folder"))) {
            Ran ran = breaking("--failure", "main bus", "--plot", refused.get(0));
            assertEquals(ExitCode.BAD_INPUT, ran.code());
            assertTrue(ran.err().contains(refused.get(1)), ran.err());
            assertEquals("", ran.out());
        }
        assertTrue(breaking("--plot", "bus.svg").err().contains("--plot needs --failure"));
    }

    private void name(String cases) {
        Path study = here.resolve("small").resolve("study.yaml");
        Session.change(study, "\nfailures-in:", "\ncases: " + cases + "\nfailures-in:");
    }

    @Test
    void theStudysCasesAreToldForEachCandidateWithEveryPilot() {
        name("[charging lost, main bus short, ground open]");
        Ran ran = breaking("--cases", "--candidate", "one-bus");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(
                ran.out().matches("(?s).*\nmain bus short +engine lost +- +1.0 s +1.0 s +1.0 s.*"),
                ran.out());
        assertTrue(ran.out().contains("ground open: the worst of 2, "), ran.out());
        assertTrue(ran.lines().stream().allMatch(line -> line.length() <= 100), ran.out());
        assertCautioned(ran);
    }

    @Test
    void aCaseThatNoCandidateHasIsAMistakeWithItsPlaceForEveryCommand() {
        name("[charging lost, third battery explodes]");
        for (List<String> words : List.of(List.of("check", "small"), List.of("break", "small"))) {
            Ran ran = Session.in(here).run(words.toArray(new String[0]));
            assertEquals(ExitCode.BAD_INPUT, ran.code());
            String told = ran.out() + ran.err();
            assertTrue(told.matches("(?s).*study.yaml:\\d+:24: cases\\[1\\].*"), told);
            assertTrue(told.contains("by the name \"third battery explodes\""), told);
        }
    }

    @Test
    void casesThatAreNotThereAreAskedFor() {
        Ran ran = breaking("--cases");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("cases: ["), ran.err());
        assertEquals(ExitCode.BAD_INPUT, breaking("--cases", "--failure", "main bus").code());
    }

    @Test
    void aFailureMayComeInAnyPhase() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        List<String> asked = List.of("break", sandpiper, "--failure", "charging lost");
        List<String> climb = new ArrayList<>(asked);
        climb.addAll(List.of("--in", "climb"));
        Ran ran = Session.in(here).run(climb.toArray(new String[0]));
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("the failure comes as climb begins"), ran.out());
        climb.set(5, "swim");
        Ran none = Session.in(here).run(climb.toArray(new String[0]));
        assertEquals(ExitCode.BAD_INPUT, none.code());
        assertTrue(
                none.err().contains("write one of start, taxi, run-up, take-off, climb"),
                none.err());
    }

    @Test
    void aFailureIsFlownFromEveryMoment() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        Ran ran =
                Session.in(here)
                        .run(
                                "break",
                                sandpiper,
                                "--candidate",
                                "split",
                                "--failure",
                                "charging lost",
                                "--every-phase");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        // the phases of the study from approach to take-off: 10, 100, 108 and 109 minutes
        assertTrue(
                ran.out().matches("(?s).*\napproach +10 min .*to the +to the +to the.*"),
                ran.out());
        assertTrue(ran.out().matches("(?s).*\ncruise +1 h 40 min .*"), ran.out());
        assertTrue(ran.out().matches("(?s).*\nclimb +1 h 48 min .*"), ran.out());
        assertTrue(ran.out().matches("(?s).*\ntake-off +1 h 49 min .*"), ran.out());
        assertEquals(
                ExitCode.BAD_INPUT,
                breaking("--failure", "main bus", "--every-phase", "--in", "x").code());
    }

    private static void assertCautioned(Ran ran) {
        assertTrue(ran.out().replaceAll("\\s+", " ").endsWith(Cautions.SHORT + " "), ran.out());
    }
}
