package stillturning.report.explorer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.bench.Thorough;
import stillturning.dossier.JointSearch;
import stillturning.dossier.Kept;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.reliability.combined.Event;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.report.EventLines;
import stillturning.report.PrintedNames;
import stillturning.report.RankingOrder;
import stillturning.report.html.HtmlPage;
import stillturning.report.html.PageContents;
import stillturning.report.html.Sources;
import stillturning.report.joint.CombinedFindings;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.timeline.Timeline;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Two failures at once, as somebody asks the page for them in the web view. */
@Thorough
class ExplorerPairsPageTest {

    private static final String TOGETHER = "together they end it";

    @TempDir private static Path here;

    @SuppressWarnings("NullAway.Init") // made before all tests
    private static Assessment assessment;

    @SuppressWarnings("NullAway.Init")
    private static List<CombinedFindings> found;

    @SuppressWarnings("NullAway.Init")
    private static AskedPage page;

    @BeforeAll
    static void load() throws Exception {
        ReadStudy read = StudyReader.read(Path.of("architectures", "first-steps"));
        assessment = Assess.of(read.study().orElseThrow());
        found =
                new JointSearch(assessment.study(), read.chances(), JointSearch.PAIRS)
                        .work(Kept.NOTHING, candidate -> {})
                        .found();
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
                                Optional.of(Explorer.of(assessment, found)),
                                Optional.empty()));
        page = AskedPage.load(AskedPage.written(here, text));
    }

    @AfterAll
    static void close() {
        page.close();
    }

    private static CombinedFindings ofCandidate(int number) {
        Candidate wanted = RankingOrder.of(assessment).get(number).candidate();
        return found.stream()
                .filter(f -> f.candidate().id().equals(wanted.id()))
                .findFirst()
                .orElseThrow();
    }

    private static void pick(int candidate, String first) {
        page.enter("ask-words", "", "input");
        page.enter("ask-candidate", String.valueOf(candidate), "change");
        page.ask("document.getElementById('ask-more').value = ''");
        page.enter("ask-list", numberOf(first), "change");
    }

    private static String numberOf(String failure) {
        return page.ask(
                "JSON.parse(document.getElementById('explore-data').textContent).failures"
                        + ".findIndex(f => f[1] === '"
                        + failure
                        + "')");
    }

    /** Every partner of one failure by name, with the mark that stands before it. */
    private static List<JsonNode> offered() {
        List<JsonNode> all = new ArrayList<>();
        JsonMapper.builder()
                .build()
                .readTree(
                        page.ask(
                                "JSON.stringify([...document.querySelectorAll('#ask-second"
                                        + " option')].map(o => [o.value, o.textContent]))"))
                .forEach(all::add);
        return all.subList(1, all.size());
    }

    @Thorough
    @Test
    void everyPairIsMarkedAsTheSearchFoundIt() {
        int pairs = 0;
        for (int candidate = 0; candidate < 2; candidate++) {
            CombinedFindings of = ofCandidate(candidate);
            List<Event> events = of.joint().events();
            List<String> names = events.stream().map(Event::name).toList();
            for (int i = 0; i < events.size(); i++) {
                if (events.get(i).kind() != EventKind.FAILURE) {
                    continue;
                }
                pick(candidate, names.get(i));
                for (JsonNode one : offered()) {
                    int other = names.indexOf(one.get(0).asString());
                    List<Integer> pair = List.of(Math.min(i, other), Math.max(i, other));
                    boolean ends =
                            of.joint().sets().minimal().contains(pair)
                                    || (alone(of, i) && !heals(of, i, other))
                                    || (alone(of, other) && !heals(of, other, i));
                    String words = one.get(1).asString();
                    boolean possible =
                            events.get(i).failure().goesWith(events.get(other).failure());
                    assertEquals(ends && possible, words.startsWith("✖"), i + " " + words);
                    pairs++;
                }
            }
        }
        assertTrue(pairs > 2000, pairs + " pairs");
        assertEquals(List.of(), page.console());
    }

    private static boolean alone(CombinedFindings of, int event) {
        return of.joint().sets().minimal().contains(List.of(event));
    }

    private static boolean heals(CombinedFindings of, int set, int by) {
        return of.joint().sets().healings().stream()
                .anyMatch(h -> h.set().equals(List.of(set)) && h.by() == by);
    }

    @Thorough
    @Test
    void aPairThatIsToldHasTheStoryOfTheEngine() throws Exception {
        int told = 0;
        for (int candidate = 0; candidate < 2; candidate++) {
            CombinedFindings of = ofCandidate(candidate);
            PrintedNames labels = new PrintedNames(of.candidate());
            Timeline timeline = Timeline.quick(assessment.study(), of.candidate());
            for (Event one : of.joint().events()) {
                if (one.kind() != EventKind.FAILURE) {
                    continue;
                }
                pick(candidate, one.name());
                for (JsonNode other : offered()) {
                    if (!other.get(1).asString().endsWith("(told here)")) {
                        continue;
                    }
                    page.enter("ask-second", other.get(0).asString(), "change");
                    assertTrue(page.text("ask-together").endsWith(TOGETHER + "."));
                    assertTrue(page.text("ask-title").contains(", and "));
                    Event second =
                            of.joint().events().stream()
                                    .filter(e -> e.name().equals(other.get(0).asString()))
                                    .findFirst()
                                    .orElseThrow();
                    Failure both = one.failure().and(second.failure());
                    Story story = timeline.tell(both, Setting.with(Pilot.PLANNED));
                    String last =
                            EventLines.of(story).stream().reduce((a, b) -> b).orElseThrow().event();
                    String shown = page.text("ask-moments");
                    assertTrue(shown.contains(labels.in(last)), both.name() + ": " + shown);
                    told++;
                    page.enter("ask-second", "", "change");
                    assertTrue(
                            page.ask("document.getElementById('ask-together').hidden")
                                    .equals("true"));
                }
            }
        }
        assertTrue(told >= 4, told + " told");
    }

    @Test
    void aPairWithoutAStoryShowsNoneOfAnother() {
        pick(0, ofCandidate(0).joint().events().get(0).name());
        for (JsonNode other : offered()) {
            if (!other.get(1).asString().endsWith("(told here)")) {
                page.enter("ask-second", other.get(0).asString(), "change");
                assertEquals(
                        "0",
                        page.ask(
                                "[...document.querySelectorAll('.of-story')].filter(s =>"
                                        + " getComputedStyle(s).display !== 'none').length"));
                assertFalse(page.text("ask-together").isEmpty());
            }
        }
        page.enter("ask-second", "", "change");
    }
}
