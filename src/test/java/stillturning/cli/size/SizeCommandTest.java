package stillturning.cli.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

class SizeCommandTest {

    @TempDir private Path here;
    private Path folder = Path.of("");

    @BeforeEach
    void copy() {
        folder = Session.in(here).copyOfFirstSteps("mine");
    }

    private Ran run(String... words) {
        return Session.in(here).run(words);
    }

    @Test
    void allCandidatesAreComparedAndOneIsShownInFull() {
        String all = run("size", "mine").out();
        assertTrue(all.contains("Side by side"), all);
        assertTrue(all.replaceAll("\\s+", " ").contains("No limit is broken."), all);
        assertFalse(all.contains("Voltage drop"), all);
        String one = run("size", "mine", "--candidate", "one-bus").out();
        int findings = one.indexOf("broken");
        int tables = one.indexOf("What each load takes");
        assertTrue(findings > 0 && tables > findings, "findings come first:\n" + one);
        for (String table :
                List.of("Sources on average", "Wires", "Voltage drop", "Protectors", "Weight")) {
            assertTrue(one.contains("\n" + table), table);
        }
        assertFalse(one.contains("Bill of materials"));
        String lists = run("size", "mine", "--candidate", "one-bus", "--lists").out();
        assertTrue(lists.contains("Bill of materials") && lists.contains("Wire list"), lists);
    }

    @Test
    void labelsOfAllWiresGoOntoSheetsOfThePaperThatIsNamed() throws IOException {
        Ran ran =
                run(
                        "size",
                        "mine",
                        "--candidate",
                        "one-bus",
                        "--labels",
                        "labels.pdf",
                        "--paper",
                        "letter");
        assertTrue(ran.out().contains("Written: labels.pdf"), ran.out());
        byte[] pdf = Files.readAllBytes(here.resolve("labels.pdf"));
        assertTrue(new String(pdf, StandardCharsets.ISO_8859_1).startsWith("%PDF"));
        assertEquals(ExitCode.BAD_INPUT, run("size", "mine", "--labels", "x.pdf").code());
        Ran lone = run("size", "mine", "--candidate", "one-bus", "--paper", "a4");
        assertTrue(lone.err().contains("--paper needs --labels"), lone.err());
        Files.writeString(here.resolve("mine.txt"), "my own notes");
        Ran refused = run("size", "mine", "--candidate", "one-bus", "--labels", "mine.txt");
        assertTrue(refused.err().contains("not written by this program"), refused.err());
        assertEquals("my own notes", Files.readString(here.resolve("mine.txt")));
    }

    private void change(String file, String written, String instead) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(written), text);
        Files.writeString(path, text.replace(written, instead));
    }

    @Test
    void aPlaceHotterThanTheInsulationStandsIsToldInWords() throws IOException {
        change("study.yaml", "hazards: [heat],", "hazards: [heat], temperature: 200 °C (guess),");
        Ran ran = run("size", "mine", "--candidate", "one-bus");
        assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code());
        String flat = ran.out().replaceAll("\\s+", " ");
        assertFalse(flat.contains("Infinity") || flat.contains("NaN"), flat);
        assertTrue(
                flat.contains(
                        "pump.a: what its wires drop cannot be told: where one lies it is hotter"
                                + " than its insulation stands, without any current. Mend: lead it"
                                + " through a cooler place"),
                flat);
        String json = run("size", "mine", "--json").out();
        assertFalse(json.contains("Infinity") || json.contains("NaN"), json);
    }

    @Test
    void aLoadThatIsSwitchedOffHasNoDropToLookFor() throws IOException {
        change("study.yaml", "draws: 4 A (guess), shed", "draws: 4 A (guess), minimum: 9 V, shed");
        change(
                "one-bus.yaml",
                "  main-bus:     {",
                "  lights-switch: {is: switch, zone: panel}\n  main-bus:     {");
        change(
                "one-bus.yaml",
                "lights:     from main-bus, breaker 7.5 A",
                "lights:     from main-bus, breaker 7.5 A, via lights-switch");
        change("one-bus.yaml", "flight: {}", "flight: {lights-switch: off}");
        Ran ran = run("size", "mine", "--candidate", "one-bus");
        assertEquals(ExitCode.FINE, ran.code(), ran.out());
        String flat = ran.out().replaceAll("\\s+", " ");
        assertTrue(
                flat.contains(
                        "look lights: gets nothing in cruise: what leads to it is switched off or"
                                + " open"),
                flat);
        assertFalse(flat.contains("0.00 V in cruise"), flat);
        change("one-bus.yaml", "lights-switch: off", "lights-switch: on");
        assertFalse(run("size", "mine", "--candidate", "one-bus").out().contains("gets nothing"));
    }

    @Test
    void aBatteryJoinedBackwardsIsToldByName() throws IOException {
        change("one-bus.yaml", "from battery.minus to panel", "from battery to panel");
        change("one-bus.yaml", "from battery to main-bus", "from battery.minus to main-bus");
        Ran ran = run("check", "mine");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        String flat = ran.out().replaceAll("\\s+", " ");
        assertTrue(
                flat.contains(
                        "parts.battery: the battery is joined backwards: its plus leads to where"
                                + " loads return, and its minus does not; exchange what is joined"
                                + " to the two"),
                flat);
        assertFalse(flat.contains("has -"), flat);
    }

    @Test
    void aFindingNamesItsPlaceInTheFileAndWhatMends() {
        weakenTheRadio();
        Ran ran = run("size", "mine", "--candidate", "one-bus");
        assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code());
        String flat = ran.out().replaceAll("\\s+", " ");
        assertTrue(
                flat.contains(
                        "radio breaker (15.0 A) guards it; AC 43.13-1B table 11-3 has at most"
                                + " 5.00 A for this size. Mend: AWG 16"),
                flat);
        assertTrue(
                flat.matches(".*radio wire, AWG 22, [0-9.]+ m \\(one-bus.yaml:[0-9]+:[0-9]+\\):.*"),
                flat);
    }

    /** A breaker far too large for a thin wire. */
    private void weakenTheRadio() {
        Session.change(
                folder.resolve("one-bus.yaml"),
                feedOf("radio"),
                "  radio: from main-bus, breaker 15 A, wire AWG 22 # mine\n");
    }

    private String feedOf(String load) {
        return Session.text(folder.resolve("one-bus.yaml"))
                        .lines()
                        .filter(l -> l.strip().startsWith(load + ":"))
                        .findFirst()
                        .orElseThrow()
                + "\n";
    }

    @Test
    void aProposalIsAPatchAndChangesNothing() throws Exception {
        weakenTheRadio();
        String before = Session.text(folder.resolve("one-bus.yaml"));
        Ran ran = run("size", "mine", "--candidate", "one-bus", "--propose");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(
                ran.out().contains("-  radio: from main-bus, breaker 15 A, wire AWG 22 # mine\n"));
        assertTrue(
                ran.out().contains("+  radio: from main-bus, breaker 15 A, wire AWG 16 # mine\n"));
        assertEquals(before, Session.text(folder.resolve("one-bus.yaml")));
    }

    @Test
    void anAppliedProposalReadsKeepsCommentsAndLeavesNothingToMend() {
        weakenTheRadio();
        Path file = folder.resolve("one-bus.yaml");
        String before = Session.text(file);
        Ran ran = run("size", "mine", "--candidate", "one-bus", "--propose", "--apply");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertEquals(before, Session.text(folder.resolve("one-bus.yaml~")));
        String after = Session.text(file);
        assertTrue(after.contains("# mine"));
        assertEquals(comments(before), comments(after));
        assertFalse(run("size", "mine", "--candidate", "one-bus").out().contains("Mend: AWG"));
        String again = run("size", "mine", "--candidate", "one-bus", "--propose").out();
        assertTrue(again.contains("nothing to change"), again);
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(l -> l.contains("#"))
                .map(l -> l.substring(l.indexOf('#')))
                .toList();
    }

    @Test
    void everyTableIsWrittenForTheSpreadsheet() throws Exception {
        Ran ran = run("size", "mine", "--csv", "tables");
        assertTrue(ran.out().contains("Written: tables"), ran.out());
        for (String name :
                List.of(
                        "load-analysis",
                        "wires",
                        "protectors",
                        "bill-of-materials",
                        "wire-list",
                        "labels",
                        "weight")) {
            String text = Files.readString(here.resolve("tables").resolve(name + ".csv"));
            assertTrue(text.startsWith("candidate,"), name);
            assertTrue(text.contains("\r\none-bus,"), name);
        }
    }

    @Test
    void applyingNeedsAProposalAndAPatchIsNoJson() {
        assertEquals(ExitCode.BAD_INPUT, run("size", "mine", "--apply").code());
        assertEquals(ExitCode.BAD_INPUT, run("size", "mine", "--propose", "--json").code());
    }

    @Test
    void aNoteOnAWireThatIsNotThereIsRefused() {
        Session.change(
                folder.resolve("one-bus.yaml"),
                "positions:",
                "wires: {radio-wier: {colour: white}}\npositions:");
        Ran ran = run("size", "mine");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("there is no wire \"radio-wier\""), ran.err());
        assertTrue(ran.err().contains("radio-wire"), ran.err());
    }

    @Test
    void colourInsulationAndArmsComeFromTheFiles() {
        Session.change(
                folder.resolve("one-bus.yaml"),
                "positions:",
                "wires: {radio-wire: {colour: white-blue, terminals: ring 4 mm, insulation: 200 °C,"
                        + " bundle: 1}}\narms: {battery: -0.4 m}\npositions:");
        String lists = run("size", "mine", "--candidate", "one-bus", "--lists").out();
        assertTrue(lists.contains("white-blue"), lists);
        assertTrue(lists.contains("-0.40"), lists);
    }
}
