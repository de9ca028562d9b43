package stillturning.report.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.NothingBroken;
import stillturning.assess.verdict.Verdict;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.goal.ComplexityWeights;
import stillturning.quantity.Formats;
import stillturning.report.Cautions;
import stillturning.report.FailureRows;
import stillturning.report.NormalFlightTexts;
import stillturning.report.RankingOrder;
import stillturning.report.ReportSamples;
import stillturning.report.html.Sources.SourceNote;

class HtmlPageTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();
    private static final String PAGE =
            HtmlPage.of(ASSESSMENT, ReportSamples.sources(), Optional.empty(), List.of());

    @Test
    void theStudysCasesStandNearTheTopWithEveryPilot() throws Exception {
        List<CandidateCases> cases =
                RankingOrder.of(ASSESSMENT).stream()
                        .map(
                                a ->
                                        CandidateCases.of(
                                                a,
                                                Map.of(
                                                        "no charging",
                                                        List.of(a.chargingLost().failure()))))
                        .toList();
        String page = HtmlPage.of(ASSESSMENT, ReportSamples.sources(), Optional.empty(), cases);
        parsed(page);
        int at = page.indexOf("What happens when ...</h2>");
        assertTrue(at > page.indexOf("id=\"answer\"") && at < page.indexOf("id=\"ranking\""));
        String section = page.substring(at, page.indexOf("id=\"ranking\""));
        assertTrue(section.contains("no charging") && section.contains("as planned"), section);
        assertTrue(section.contains("<small>late "), section);
        assertTrue(section.contains("charging lost"), section);
    }

    @Test
    void isWellFormed() throws Exception {
        assertEquals("html", parsed(PAGE).getDocumentElement().getTagName());
    }

    @Test
    void theSameAssessmentGivesTheSameBytes() {
        assertEquals(
                PAGE,
                HtmlPage.of(
                        ReportSamples.assessment(),
                        ReportSamples.sources(),
                        Optional.empty(),
                        List.of()));
    }

    @Test
    void hasEverySection() throws Exception {
        Set<String> ids = new HashSet<>(attributes(parsed(PAGE), "id"));
        assertTrue(
                ids.containsAll(
                        List.of(
                                "question",
                                "answer",
                                "ranking",
                                "candidates",
                                "matrix",
                                "stories",
                                "departures",
                                "assumptions",
                                "end")),
                ids.toString());
    }

    @Test
    void everyLinkStaysInsideThePageAndLeadsSomewhere() throws Exception {
        Document page = parsed(PAGE);
        Set<String> ids = new HashSet<>(attributes(page, "id"));
        List<String> links = attributes(page, "href");
        assertFalse(links.isEmpty());
        for (String link : links) {
            assertTrue(link.startsWith("#") && ids.contains(link.substring(1)), link);
        }
        assertEquals(ids.size(), attributes(page, "id").size(), "an id occurs twice");
    }

    @Test
    void needsNothingBesideIt() throws Exception {
        assertEquals(List.of(), attributes(parsed(PAGE), "src"));
        assertEquals(List.of(), elements(parsed(PAGE), "script"));
        assertEquals(List.of(), elements(parsed(PAGE), "link"));
        assertFalse(PAGE.contains("@import") || PAGE.contains("url("));
        String addresses = PAGE.replaceAll("xmlns=\"http://www.w3.org/[^\"]*\"", "");
        assertFalse(addresses.contains("http:") || addresses.contains("https:"));
    }

    @Test
    void cautionsStandOnTopAndAtTheEnd() {
        int main = PAGE.indexOf("id=\"question\"");
        int end = PAGE.indexOf("id=\"end\"");
        for (String caution : Cautions.inFull(true)) {
            String written = caution.replace("'", "&#39;");
            boolean onTop =
                    PAGE.substring(0, main).contains(caution)
                            || PAGE.substring(0, main).contains(written);
            boolean below =
                    PAGE.substring(end).contains(caution) || PAGE.substring(end).contains(written);
            assertTrue(onTop && below, caution);
        }
    }

    @Test
    void neverCallsAnythingSafe() {
        assertFalse(Pattern.compile("\\b[Ss]afe(ly|ty|r|st)?\\b").matcher(PAGE).find());
    }

    @Test
    void hostileTextsStayTexts() throws Exception {
        String hostile = "<script>alert('x')</script> \"quoted\" & ]]> </style> \u0007";
        Assessment assessment = Assess.of(ReportSamples.study(hostile, hostile));
        Sources sources =
                new Sources(
                        hostile, List.of(new SourceNote(hostile, hostile, hostile, hostile, "")));
        String page = HtmlPage.of(assessment, sources, Optional.empty(), List.of());
        Document document = parsed(page);
        assertEquals(List.of(), elements(document, "script"));
        String shown = hostile.replace('\u0007', '\uFFFD');
        assertEquals(shown, elements(document, "h1").get(0).getTextContent());
        assertTrue(document.getDocumentElement().getTextContent().contains("alert('x')"));
    }

    @Test
    void aCandidateThatIsUnwellWithNothingWrongIsNamedBesideTheAnswer() throws Exception {
        assertFalse(PAGE.contains(NormalFlightTexts.MEANING));
        List<Appraisal> unwell =
                ASSESSMENT.appraisals().stream().map(HtmlPageTest::losingCharge).toList();
        Assessment assessment =
                new Assessment(
                        ASSESSMENT.study(), unwell, ASSESSMENT.unassessed(), ASSESSMENT.ranking());
        String page = HtmlPage.of(assessment, ReportSamples.sources(), Optional.empty(), List.of());
        String found = byId(parsed(page), "answer").getTextContent();
        assertTrue(found.contains(NormalFlightTexts.MEANING), found);
        assertTrue(found.contains("keeps the engine running for"), found);
        assertTrue(found.contains("more events"), found);
    }

    /** As if what follows from lost charging happened by itself. */
    private static Appraisal losingCharge(Appraisal a) {
        return new Appraisal(
                a.candidate(),
                new NothingBroken(a.flight().normal(), a.chargingLost().unaided()),
                a.singles(),
                a.cases(),
                a.structure(),
                a.measures(),
                a.met());
    }

    @Test
    void everyTableHasHeadsWithAScope() throws Exception {
        for (Element head : elements(parsed(PAGE), "th")) {
            assertTrue(
                    Set.of("col", "row", "rowgroup").contains(head.getAttribute("scope")),
                    head.getTextContent());
        }
    }

    @Test
    void everyPictureHasATitle() throws Exception {
        List<Element> pictures = elements(parsed(PAGE), "svg");
        assertTrue(pictures.size() > 2, "a drawing for each candidate, and plots");
        for (Element picture : pictures) {
            assertFalse(
                    picture.getElementsByTagName("title").item(0).getTextContent().isBlank(),
                    picture.getAttribute("id"));
        }
    }

    @Test
    void matrixCellsSayTheOutcomeInWordsAndLeadToStories() throws Exception {
        Element matrix = byId(parsed(PAGE), "matrix");
        List<String> cells = texts(matrix, "td");
        assertTrue(cells.stream().anyMatch(c -> c.contains("engine lost")), cells.toString());
        assertTrue(cells.stream().anyMatch(c -> c.contains("stops, pilot")), cells.toString());
        assertTrue(cells.stream().anyMatch(c -> c.contains("no effect")), cells.toString());
        assertTrue(texts(matrix, "a").stream().anyMatch(c -> c.contains("engine lost")));
    }

    @Test
    void theGravestFailuresOfTheOneInFirstPlaceAreTold() throws Exception {
        String stories = byId(parsed(PAGE), "stories").getTextContent();
        List<Verdict> gravest =
                RankingOrder.of(ASSESSMENT).get(0).singles().stream()
                        .sorted(FailureRows.GRAVEST_FIRST)
                        .limit(10)
                        .toList();
        for (Verdict verdict : gravest) {
            assertTrue(stories.contains(verdict.failure().name()), verdict.failure().name());
        }
        assertTrue(stories.contains(FailureCatalogue.CHARGING_LOST));
        assertTrue(stories.contains("master off in flight"));
        assertEquals(1, texts(byId(parsed(PAGE), "stories"), "h3").size());
    }

    @Test
    void guessesStandBeforeOtherSources() throws Exception {
        String assumptions = byId(parsed(PAGE), "assumptions").getTextContent();
        int guess = assumptions.indexOf("loads.pump.draws");
        int sheet = assumptions.indexOf("parts.battery.capacity");
        assertTrue(guess > 0 && guess < sheet, assumptions);
    }

    @Test
    void departuresNameWhatTheBaselineDoesNotHave() throws Exception {
        String departures = byId(parsed(PAGE), "departures").getTextContent();
        assertTrue(departures.contains("buses: engine-bus"), departures);
        assertTrue(departures.contains("diodes: engine-diode"), departures);
        assertFalse(departures.contains("parts left out"), departures);
    }

    @Test
    void complexityIsTheStatedSum() throws Exception {
        for (Appraisal appraisal : ASSESSMENT.appraisals()) {
            String index =
                    Formats.fixed(
                            appraisal.measures().complexity().index(ComplexityWeights.USUAL), 1);
            assertTrue(
                    PAGE.replaceAll("\\s", "")
                            .contains(
                                    "index:theirsum,eachtimesitsweight</th><tdclass=\"num\">"
                                            + index),
                    appraisal.candidate().id());
        }
    }

    @Test
    void aStudyOfWhichNothingCouldBeComputedSaysWhy() throws Exception {
        Assessment none =
                new Assessment(
                        ASSESSMENT.study(),
                        List.of(),
                        List.of(new Assessment.Unassessed("one-bus", "no state at main-bus")),
                        Optional.empty());
        Document page =
                parsed(HtmlPage.of(none, ReportSamples.sources(), Optional.empty(), List.of()));
        String text = page.getDocumentElement().getTextContent().toLowerCase(Locale.ROOT);
        assertTrue(text.contains("no candidate could be computed"));
        assertTrue(text.contains("no state at main-bus"));
    }

    private static Document parsed(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    private static List<Element> elements(Document page, String name) {
        return elements(page.getElementsByTagName(name));
    }

    private static List<Element> elements(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static List<String> attributes(Document page, String name) {
        return elements(page, "*").stream()
                .filter(e -> e.hasAttribute(name))
                .map(e -> e.getAttribute(name))
                .toList();
    }

    private static Element byId(Document page, String id) {
        return elements(page, "section").stream()
                .filter(e -> e.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Element within, String name) {
        return elements(within.getElementsByTagName(name)).stream()
                .map(Element::getTextContent)
                .toList();
    }
}
