package stillturning.replays;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.quantity.Formats;
import stillturning.replays.Replay.Replayed;
import stillturning.replays.Replay.Sample;
import stillturning.report.page.ReplayedReport;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TextTable;

/**
 * The kept table of what the program says about layouts that have failed is what it says today.
 * Renew it with {@code mvn test -Pthorough -Dtest=ReplayReportTest -Dreplays.renew=true}, and read
 * the difference.
 */
class ReplayReportTest {

    private static final Path KEPT = Path.of("reports/replays.txt").toAbsolutePath();
    private static final Path SHIPPED =
            Path.of("src/main/resources/stillturning/report/page/replays.txt").toAbsolutePath();
    private static final boolean RENEW = Boolean.getBoolean("replays.renew");

    @TempDir private Path here;

    private static final List<String> HEAD =
            List.of(
                    ReplayedReport.HEADING,
                    "",
                    "Each layout is told after a published accident report, in our own words, with"
                            + " every",
                    "value that the report does not give guessed, as a range. It lies in",
                    "src/test/resources/stillturning/replays and can be asked like any study.",
                    "",
                    "as reported    "
                            + Replay.SAMPLES
                            + " flights with the failure that the report names, the unknown values"
                            + " anywhere",
                    "               in their ranges: in how many the course is the reported one; in"
                            + " brackets",
                    "               when the engine stops in most of them (5 to 95 %)",
                    "before flight  at which place which command names the cause, without knowing"
                            + " of it;",
                    "               of so many things that it says",
                    "suggested      at which place suggest names a change that mends what has"
                            + " failed, and which;",
                    "               in brackets in how many such flights the engine is lost with"
                            + " it before landing;",
                    "               with --all: it brings more single failures that lose the"
                            + " engine than it takes away",
                    "",
                    "An aid for comparing designs. Reports are summarised, and their authorities'"
                            + " words count;",
                    "nobody is blamed. A layout that could happen so need not have happened so.",
                    "");

    /** What two reports tell of the course, beside the story drawn with likely values. */
    private static final List<String> DRAWN =
            List.of(
                    "",
                    "Two stories drawn, every unknown value at its likeliest",
                    "",
                    "replay-batteries.svg, beside report CEN12LA389: took off about 08:10,"
                            + " electrical failure in",
                    "cruise, too little voltage for the engine on either battery circuit, all lost"
                            + " about 08:30.",
                    "Told: the second battery pours into the shorted one, the avionics go first,"
                            + " and the engine",
                    "stops once it is empty; the alternator alone cannot hold the bus.",
                    "",
                    "replay-lamp.svg, beside event 20001208X09068: off at 11:45, no electrics seen"
                            + " after levelling",
                    "off, the battery ran out and the engine quit; landed at 13:15. Told: the"
                            + " battery carries all",
                    "from the start and no lamp shows it, the avionics go first, the engine within"
                            + " a minute.");

    @Thorough
    @Test
    void theTableIsWhatTheProgramSaysToday() throws IOException {
        List<String> lines = new ArrayList<>(HEAD);
        List<ReplayedReport> rows = Replay.all().stream().map(ReplayReportTest::row).toList();
        lines.addAll(
                TextTable.lines(new Table<>(ReplayedReport.COLUMNS, rows), TerminalColour.NONE));
        lines.addAll(DRAWN);
        String today = String.join("\n", lines) + "\n";
        if (RENEW) {
            Files.writeString(KEPT, today);
            Files.write(SHIPPED, rows.stream().map(ReplayedReport::line).toList());
        }
        assertEquals(Files.readString(KEPT), today);
        assertEquals(rows.stream().map(ReplayedReport::line).toList(), Files.readAllLines(SHIPPED));
    }

    @Test
    void thePageNamesEveryReport() {
        assertEquals(
                Replay.all().stream().map(replay -> replay.file().report()).toList(),
                ReplayedReport.shipped().stream().map(ReplayedReport::report).toList());
    }

    private static ReplayedReport row(Replay replay) {
        return new ReplayedReport(
                replay.file().report(),
                replay.file().cause(),
                course(replay),
                found(replay),
                ReplayMends.words(replay));
    }

    @Test
    void theStoriesAreWhatTheProgramDrawsToday() throws IOException {
        holdDrawn(
                "replay-batteries.svg",
                "cen12la389",
                List.of("--failure", "main-battery half shorted inside", "--in", "climb"));
        holdDrawn(
                "replay-lamp.svg",
                "event-20001208x09068",
                List.of(
                        "--failure",
                        "alternator-switch left off",
                        "--failure",
                        "alternator-lamp dead",
                        "--in",
                        "run-up"));
    }

    private void holdDrawn(String file, String report, List<String> asked) throws IOException {
        Path plot = here.resolve(file);
        List<String> words = new ArrayList<>(List.of("break"));
        words.add(Replay.FOLDER.resolve(report).toString());
        words.addAll(asked);
        words.addAll(List.of("--plot", plot.toString()));
        Session.in(here).run(words.toArray(new String[0]));
        String today = Files.readString(plot);
        Path kept = KEPT.resolveSibling(file);
        if (RENEW) {
            Files.writeString(kept, today);
        }
        assertEquals(Files.readString(kept), today, file);
    }

    private static String course(Replay replay) {
        if (replay.file().course().isEmpty()) {
            return ReplayedReport.NOT_MODELLED + replay.file().notModelled().orElse("");
        }
        Replayed replayed = replay.replayed();
        String share = replayed.inside() + " of " + replayed.samples().size();
        String partly = replay.file().notModelled().map(w -> "; without " + w).orElse("");
        double[] stops =
                replayed.samples().stream()
                        .mapToDouble(Sample::stopSeconds)
                        .filter(Double::isFinite)
                        .sorted()
                        .toArray();
        return stops.length == 0
                ? share + " (no stop)" + partly
                : String.format(
                        Locale.ROOT,
                        "%s (%s to %s)%s",
                        share,
                        Formats.duration(stops[stops.length / 20]),
                        Formats.duration(stops[stops.length - 1 - stops.length / 20]),
                        partly);
    }

    private static String found(Replay replay) {
        List<String> found = new ArrayList<>();
        Replayed replayed = replay.replayed();
        for (int n = 0; n < replayed.places().size(); n++) {
            found.add(
                    replay.file().beforeFlight().get(n).asked().typed()
                            + ": "
                            + replayed.places().get(n)
                            + " of "
                            + replayed.answers().get(n).size());
        }
        return String.join("; ", found);
    }
}
