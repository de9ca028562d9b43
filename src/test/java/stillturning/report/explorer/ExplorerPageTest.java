package stillturning.report.explorer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.model.Study.Weight;
import stillturning.quantity.Formats;
import stillturning.report.EventLines;
import stillturning.report.OutcomeMark;
import stillturning.report.RankingOrder;
import stillturning.report.html.HtmlPage;
import stillturning.report.html.PageContents;
import stillturning.report.html.Sources;
import stillturning.report.json.JsonReport;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.oneline.DrawingStates;
import stillturning.report.oneline.DrawnCandidate;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.WatchedStory;
import stillturning.story.timeline.Timeline;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page as somebody asks it, in the web view: first steps, with names that mean harm. */
class ExplorerPageTest {

    private static final String HOSTILE =
            "</script><script>window.harmed = 1</script><img src=x onerror=harm()> & ]]> \"two\"";

    /** Drawing and story of this one are held against the engine. */
    private static final String SHORTED = "main-bus: short to ground";

    @TempDir private static Path here;

    @SuppressWarnings("NullAway.Init") // made before all tests
    private static Assessment assessment;

    @SuppressWarnings("NullAway.Init")
    private static AskedPage page;

    @BeforeAll
    static void load() throws IOException {
        assessment = Assess.of(study());
        String text =
                HtmlPage.of(
                        assessment,
                        new Sources("0123", List.of()),
                        new PageContents(
                                Optional.empty(),
                                List.of(),
                                List.of(),
                                Optional.empty(),
                                new PageContents.FrontMatter("", List.of()),
                                List.of(),
                                Optional.of(Explorer.of(assessment)),
                                Optional.empty()));
        page = AskedPage.load(AskedPage.written(here, text));
    }

    @AfterAll
    static void close() {
        page.close();
    }

    private static Study study() throws IOException {
        Path folder = Files.createDirectory(here.resolve("first-steps"));
        try (Stream<Path> files = Files.list(Path.of("architectures", "first-steps"))) {
            for (Path file : files.toList()) {
                String text =
                        Files.readString(file)
                                .replace("candidate: One bus ", "candidate: '" + HOSTILE + "' ")
                                .replace(
                                        "main-bus:     {is: bus,",
                                        "main-bus: {is: bus, label: '" + HOSTILE + "',");
                Files.writeString(folder.resolve(file.getFileName()), text);
            }
        }
        return StudyReader.read(folder).study().orElseThrow();
    }

    @Test
    void nothingIsFetchedNothingIsRefusedAndNoNameDoesAnything() {
        page.ask("document.querySelectorAll('#explore details').forEach(d => { d.open = true; })");
        assertEquals("false", page.ask("document.getElementById('explore').hidden"));
        assertEquals("undefined", page.ask("typeof window.harmed"));
        assertEquals("0", page.ask("performance.getEntriesByType('resource').length"));
        assertEquals("0", page.ask("document.querySelectorAll('img').length"));
        assertEquals("2", page.ask("document.scripts.length"));
        assertTrue(page.text("ask-candidate").contains(HOSTILE), page.text("ask-candidate"));
        assertEquals(List.of(), page.console());
    }

    @Test
    void aScriptThatIsNotThePagesOwnIsRefused() {
        page.ask(
                "{const s = document.createElement('script'); s.textContent = 'window.other = 1';"
                        + " document.body.append(s); s.remove();}");
        assertEquals("undefined", page.ask("typeof window.other"));
        List<String> told = page.console();
        assertTrue(told.size() == 1 && told.get(0).startsWith("Refused"), told.toString());
    }

    @Test
    void everyVerdictIsThatOfTheJsonReport() {
        page.ask("document.getElementById('explore-all').open = true");
        page.enter("all-outcome", "any", "change");
        page.enter("all-where", "any", "change");
        page.enter("all-order", "kind", "change");
        Map<String, List<String>> shown = new TreeMap<>();
        for (JsonNode row :
                json(
                        "JSON.stringify([...document.querySelectorAll('#all-table tbody tr')].map(r"
                                + " => [JSON.parse(document.getElementById('explore-data').textContent)"
                                + ".failures[r.dataset.failure][1],"
                                + " ...[...r.querySelectorAll('td')].map(c => c.textContent)]))")) {
            List<String> cells = new ArrayList<>();
            row.forEach(cell -> cells.add(cell.asString()));
            shown.put(cells.get(0), cells.subList(1, cells.size()));
        }
        JsonNode report =
                JsonMapper.builder().build().readTree(JsonReport.matrix(assessment, List.of()));
        assertEquals(report.get("failures").size(), shown.size());
        for (JsonNode row : report.get("failures")) {
            List<String> cells = shown.getOrDefault(row.get("failure").asString(), List.of());
            for (int i = 0; i < report.get("candidates").size(); i++) {
                JsonNode cell =
                        row.get("byCandidate").get(report.get("candidates").get(i).asString());
                String expected = cell == null ? "" : inWords(cell.get("outcome").asString());
                assertTrue(cells.get(i).startsWith(expected), row + " " + cells);
                assertEquals(cell == null, cells.get(i).isEmpty(), row + " " + cells);
            }
        }
    }

    private static String inWords(String outcome) {
        String name = outcome.toUpperCase(Locale.ROOT).replace('-', '_');
        OutcomeMark mark = OutcomeMark.of(Outcome.valueOf(name));
        return mark.sign() + " " + mark.word();
    }

    @Test
    void typingFindsPickingShowsAndKeysStepThroughTheMoments() {
        page.enter("ask-words", "Pump.A breaker", "input");
        String found = page.text("ask-list");
        assertTrue(found.contains("pump a breaker"), found);
        assertFalse(found.contains("radio"), found);
        assertTrue(page.text("ask-count").contains("match"));
        page.enter("ask-words", "short", "input");
        page.enter("ask-list", numberOf(SHORTED), "change");
        assertTrue(page.text("ask-title").contains("short to ground"), page.text("ask-title"));
        page.press("#ask-moments", "Home");
        String before = page.text("ask-now");
        assertTrue(before.contains("nothing is wrong"), before);
        assertEquals("true", page.ask("document.getElementById('ask-back').disabled"));
        page.press("#ask-moments", "ArrowDown");
        assertNotEquals(before, page.text("ask-now"));
        page.press("#ask-moments", "End");
        assertEquals("true", page.ask("document.getElementById('ask-on').disabled"));
        page.click("ask-back");
        assertEquals("false", page.ask("document.getElementById('ask-on').disabled"));
        assertEquals(List.of(), page.console());
    }

    @Test
    void theDrawingShowsAtEveryMomentWhatTheEngineSays() throws Exception {
        List<Appraisal> ranked = RankingOrder.of(assessment);
        for (int i = 0; i < ranked.size(); i++) {
            page.enter("ask-candidate", String.valueOf(i), "change");
            page.enter("ask-words", "", "input");
            page.enter("ask-list", numberOf(SHORTED), "change");
            Appraisal appraisal = ranked.get(i);
            Verdict verdict =
                    appraisal.singles().stream()
                            .filter(v -> v.failure().name().equals(SHORTED))
                            .findFirst()
                            .orElseThrow();
            Timeline timeline = Timeline.quick(assessment.study(), appraisal.candidate());
            WatchedStory watched = timeline.watch(verdict.failure(), Setting.with(Pilot.PLANNED));
            DrawnCandidate drawn =
                    CandidateDrawing.drawn(appraisal.candidate(), assessment.study());
            DrawingStates states =
                    new DrawingStates(
                            appraisal.candidate(), drawn, verdict.failure(), timeline.before());
            List<Double> moments =
                    EventLines.of(watched.story()).stream()
                            .map(EventLines.EventLine::seconds)
                            .distinct()
                            .toList();
            page.press("#ask-moments", "Home");
            for (double seconds : moments) {
                page.press("#ask-moments", "ArrowDown");
                DrawingStates.ShownStates expected = states.at(watched.at(seconds));
                Map<String, String> onPage = looks();
                expected.symbols()
                        .forEach(
                                (symbol, state) ->
                                        assertEquals(
                                                "is-" + DrawingCode.letter(state),
                                                onPage.get(symbol),
                                                symbol + " at " + seconds + " s"));
                expected.lines()
                        .forEach(
                                (line, state) ->
                                        assertEquals(
                                                "is-" + DrawingCode.letter(state),
                                                onPage.get("line " + line),
                                                "line " + line + " at " + seconds + " s"));
            }
        }
    }

    private static Map<String, String> looks() {
        Map<String, String> looks = new TreeMap<>();
        json("JSON.stringify([...document.querySelectorAll('#ask-drawing [data-part]')]"
                        + ".map(g => [g.getAttribute('data-part'), g.getAttribute('class')]))")
                .forEach(pair -> looks.put(pair.get(0).asString(), pair.get(1).asString()));
        return looks;
    }

    @Test
    void whereACandidateHasNoSuchPartNoStoryOfAnotherStaysOnTheScreen() {
        page.enter("ask-words", "", "input");
        page.enter("ask-candidate", "0", "change");
        page.enter("ask-list", numberOf("computer-b-fuse: opens for no reason"), "change");
        String shown =
                "[...document.querySelectorAll('.of-story')].map(s => getComputedStyle(s).display)"
                        + ".filter(d => d !== 'none').length";
        assertEquals("3", page.ask(shown));
        page.enter("ask-candidate", "1", "change");
        assertEquals("This candidate has no such part.", page.text("ask-outcome"));
        assertEquals("0", page.ask(shown));
        page.enter("ask-candidate", "0", "change");
    }

    @Test
    void whoDoesNothingHasAStoryOfHisOwnWhereItMatters() {
        page.enter("ask-words", "charging lost", "input");
        page.enter("ask-list", numberOf("charging lost"), "change");
        String planned = page.text("ask-moments");
        page.click("ask-pilot-2");
        String never = page.text("ask-moments");
        page.click("ask-pilot-0");
        assertTrue(planned.contains("pilot, by shed"), planned);
        assertFalse(never.contains("pilot, by shed"), never);
    }

    @Test
    void theStudysOwnWeightsGiveItsPointsAndOrderAndOthersThoseOfTheSameArithmetic() {
        page.click("weigh-own");
        RankingResult own = assessment.ranking().orElseThrow();
        assertEquals(expected(own), ranked());
        assertTrue(page.text("weigh-whose").startsWith("With the study's own weights"));
        List<Double> weights =
                new ArrayList<>(
                        assessment.study().goals().weights().stream().map(Weight::weight).toList());
        weights.set(0, 0.0);
        page.enter("weigh-0", "0", "input");
        assertEquals(expected(Ranking.reweighted(own, weights)), ranked());
        assertTrue(page.text("weigh-whose").contains("not the study's"));
        for (int i = 1; i < weights.size(); i++) {
            page.enter("weigh-" + i, "0", "input");
        }
        assertTrue(page.text("weigh-whose").contains("No criterion counts"));
        page.click("weigh-own");
        assertEquals(expected(own), ranked());
    }

    private static List<List<String>> expected(RankingResult ranking) {
        return ranking.standings().stream().map(ExplorerPageTest::row).toList();
    }

    private static List<String> row(Standing standing) {
        return List.of(
                String.valueOf(standing.rank()),
                assessment.of(standing.name()).orElseThrow().candidate().title(),
                Formats.fixed(standing.total(), 3));
    }

    private static List<List<String>> ranked() {
        List<List<String>> rows = new ArrayList<>();
        json("JSON.stringify([...document.querySelectorAll('#weigh-table tbody tr')]"
                        + ".map(r => [...r.cells].slice(0, 3).map(c => c.textContent)))")
                .forEach(
                        row -> {
                            List<String> cells = new ArrayList<>();
                            row.forEach(cell -> cells.add(cell.asString()));
                            rows.add(cells);
                        });
        return rows;
    }

    @Test
    void twoCandidatesDifferWhereTheirVerdictsDo() {
        page.ask("document.getElementById('explore-two').open = true");
        page.enter("two-one", "0", "change");
        page.enter("two-other", "1", "change");
        List<Appraisal> ranked = RankingOrder.of(assessment);
        long differ =
                Stream.concat(
                                Stream.of(ranked.get(0).chargingLost()),
                                ranked.get(0).singles().stream())
                        .filter(v -> differs(v, ranked.get(1)))
                        .count();
        assertTrue(differ > 0);
        assertEquals(
                String.valueOf(differ),
                page.ask("document.querySelectorAll('#two-table tbody tr').length"));
        page.press("#two-table td", "Enter");
        assertTrue(page.text("ask-title").contains(", in: "));
    }

    private static boolean differs(Verdict verdict, Appraisal other) {
        return Stream.concat(Stream.of(other.chargingLost()), other.singles().stream())
                .anyMatch(
                        v ->
                                v.failure().name().equals(verdict.failure().name())
                                        && v.outcome() != verdict.outcome());
    }

    @Test
    void filterAndSortKeepWhatIsAskedFor() {
        page.ask("document.getElementById('explore-all').open = true");
        page.enter("all-where", "0", "change");
        page.enter(
                "all-outcome",
                String.valueOf(List.of(Outcome.values()).indexOf(Outcome.ENGINE_LOST)),
                "change");
        long lost =
                RankingOrder.of(assessment).get(0).singles().stream()
                        .filter(v -> v.outcome() == Outcome.ENGINE_LOST)
                        .count();
        assertTrue(lost > 0);
        assertEquals(
                String.valueOf(lost),
                page.ask("document.querySelectorAll('#all-table tbody tr').length"));
        page.enter("all-outcome", "any", "change");
        page.enter("all-order", "worst", "change");
        assertTrue(
                page.ask("document.querySelector('#all-table tbody tr').textContent")
                        .contains("engine lost"));
        page.enter("all-order", "kind", "change");
        page.enter("all-where", "any", "change");
    }

    private static String numberOf(String failure) {
        return page.ask(
                "JSON.parse(document.getElementById('explore-data').textContent).failures"
                        + ".findIndex(f => f[1] === '"
                        + failure
                        + "')");
    }

    private static JsonNode json(String expression) {
        return JsonMapper.builder().build().readTree(page.ask(expression));
    }
}
