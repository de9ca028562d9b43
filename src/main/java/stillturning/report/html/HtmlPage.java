package stillturning.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Guesses;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.AnswerWords;
import stillturning.report.Cautions;
import stillturning.report.EventLines;
import stillturning.report.NormalFlightTexts;
import stillturning.report.RankingOrder;
import stillturning.report.UntoldTexts;
import stillturning.report.html.PageContents.FrontMatter;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.ExplorerSection;
import stillturning.report.page.JointSection;
import stillturning.report.page.Page;
import stillturning.report.page.Page.AnswerSection;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.Foot;
import stillturning.report.page.Page.GuessRow;
import stillturning.report.page.Page.GuessSection;
import stillturning.report.page.Page.Link;
import stillturning.report.page.Page.MetMark;
import stillturning.report.page.Page.PageHead;
import stillturning.report.page.Page.RequirementRow;
import stillturning.report.page.Printable;
import stillturning.report.page.ReplayedReport;
import stillturning.report.terminal.GuessTexts;
import stillturning.sizing.result.SizingReport;

/**
 * An assessment as one HTML file that needs nothing beside it, and can be read without a script.
 */
public final class HtmlPage {

    private final Assessment assessment;
    private final Study study;
    private final List<Appraisal> appraisals;
    private final Sources sources;
    private final Optional<GuessTexts> guesses;
    private final List<SizingReport> sizes;
    private final List<CandidateCases> cases;
    private final Optional<JointSection> together;
    private final FrontMatter front;
    private final List<Chapter> decision;
    private final Optional<ExplorerSection> explorer;
    private final Optional<Chapter> groundTest;

    private HtmlPage(Assessment assessment, Sources sources, PageContents enclosed) {
        this.cases = enclosed.cases();
        this.sizes = enclosed.sizes();
        this.together = enclosed.together();
        this.front = enclosed.front();
        this.decision = enclosed.decision();
        this.explorer = enclosed.explorer();
        this.groundTest = enclosed.groundTest();
        this.assessment = assessment;
        this.study = assessment.study();
        this.appraisals = RankingOrder.of(assessment);
        this.sources = sources;
        this.guesses = enclosed.guesses().map(g -> new GuessTexts(assessment, g));
    }

    /** The page without sizes, and without what failures do together. */
    public static String of(
            Assessment assessment,
            Sources sources,
            Optional<Guesses> guesses,
            List<CandidateCases> cases) {
        return of(
                assessment, sources, new PageContents(guesses, cases, List.of(), Optional.empty()));
    }

    /** The page; the same assessment, sources and enclosed, the same text. */
    public static String of(Assessment assessment, Sources sources, PageContents enclosed) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("page.jte", new HtmlPage(assessment, sources, enclosed).page(), output);
        return Printable.of(output.toString());
    }

    private Page page() {
        StoryChapters stories = StoryChapters.of(appraisals);
        return new Page(
                head(),
                front.chapters(),
                answer(),
                CaseSection.of(cases, appraisals, stories),
                ComparisonSection.of(assessment, decision),
                CandidateSheets.of(study, appraisals, stories),
                MatrixSection.of(appraisals, stories),
                stories.chapters(),
                Departures.of(study, appraisals),
                foot(),
                explorer);
    }

    private PageHead head() {
        Study.Goals goals = study.goals();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("The question", AnswerWords.QUESTION));
        facts.add(new Fact("The engine needs", study.aircraft().engine().logic().inWords()));
        facts.add(
                new Fact(
                        "It stops when that is missing for",
                        EventLines.time(study.aircraft().engine().toleratedSeconds())));
        facts.add(new Fact("Failures happen in", goals.failurePhase().name()));
        facts.add(
                new Fact(
                        "Long enough to get down",
                        Formats.duration(goals.enoughSeconds())
                                + ", counted from "
                                + goals.countsFrom().words()
                                + "; an engine that runs on for less counts as lost"));
        facts.add(new Fact("Loads on in " + goals.failurePhase().name(), loadSum()));
        facts.add(
                new Fact(
                        "Candidates",
                        study.candidates().size()
                                + ", with "
                                + appraisals.stream().mapToInt(a -> a.singles().size()).sum()
                                + " single failures told one by one"));
        return new PageHead(
                study.heading().title(),
                study.heading().about(),
                facts,
                study.heading().rationale(),
                Cautions.inFull(study.heading().invented()));
    }

    private String loadSum() {
        String phase = study.goals().failurePhase().name();
        List<LoadNeed> running =
                study.aircraft().loads().stream().filter(l -> l.averageAmps(phase) > 0).toList();
        double amps = running.stream().mapToDouble(l -> l.averageAmps(phase)).sum();
        return running.size() + ", together " + Formats.fixed(amps, 1) + " A on average";
    }

    private AnswerSection answer() {
        List<Link> links = links(appraisals);
        if (assessment.ranking().isEmpty()) {
            return new AnswerSection(
                    "No candidate could be computed.", "", links, List.of(), List.of(), List.of());
        }
        return new AnswerSection(
                lead(), AnswerWords.why(assessment), links, requirements(), unwell(), untold());
    }

    /** The same as on the first page, where there is one. */
    private String lead() {
        return front.lead().isEmpty() ? AnswerWords.lead(assessment) : front.lead();
    }

    private List<Fact> unwell() {
        return appraisals.stream()
                .filter(a -> a.flight().unwell())
                .map(
                        a ->
                                new Fact(
                                        a.candidate().title(),
                                        String.join("; ", NormalFlightTexts.findings(a.flight()))))
                .toList();
    }

    private List<Fact> untold() {
        return appraisals.stream()
                .filter(a -> !UntoldTexts.findings(a).isEmpty())
                .map(
                        a ->
                                new Fact(
                                        a.candidate().title(),
                                        String.join("; ", UntoldTexts.findings(a))))
                .toList();
    }

    /** Each candidate's title with a link to its sheet. */
    static List<Link> links(List<Appraisal> appraisals) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < appraisals.size(); i++) {
            links.add(new Link(appraisals.get(i).candidate().title(), anchor(i)));
        }
        return links;
    }

    static String anchor(int candidate) {
        return "candidate-" + (candidate + 1);
    }

    private List<RequirementRow> requirements() {
        List<RequirementRow> rows = new ArrayList<>();
        for (int i = 0; i < study.goals().requirements().size(); i++) {
            int row = i;
            List<MetMark> cells =
                    appraisals.stream()
                            .map(a -> a.met().get(row))
                            .map(m -> new MetMark(m.met(), m.reasonInFull()))
                            .toList();
            rows.add(new RequirementRow(study.goals().requirements().get(i).inWords(), cells));
        }
        return rows;
    }

    private Foot foot() {
        Optional<String> baseline = study.goals().baseline().flatMap(this::titleOf);
        return new Foot(
                baseline.orElse(""),
                SizeSheets.of(sizes),
                together,
                guesses.map(HtmlPage::guesses),
                Stream.concat(groundTest.stream(), Stream.of(ReplayedReport.chapter())).toList(),
                Assumptions.of(sources),
                Cautions.inFull(study.heading().invented()),
                sources.fingerprint());
    }

    private static GuessSection guesses(GuessTexts texts) {
        return new GuessSection(
                texts.method(),
                texts.lower(),
                texts.higher(),
                texts.rows().stream()
                        .map(
                                r ->
                                        new GuessRow(
                                                r.source(),
                                                r.name(),
                                                r.value(),
                                                r.chance() + ", " + r.worth(),
                                                r.ifLess(),
                                                r.ifMore(),
                                                r.finding()))
                        .toList(),
                texts.rest());
    }

    private Optional<String> titleOf(String candidate) {
        return study.candidate(candidate).map(c -> c.title());
    }
}
