package stillturning.dossier;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Guesses;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.files.ReadStudy;
import stillturning.files.value.Assumption;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.reliability.runup.Card;
import stillturning.report.RankingOrder;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstQuestion;
import stillturning.report.explorer.Explorer;
import stillturning.report.html.HtmlPage;
import stillturning.report.html.PageContents;
import stillturning.report.html.PageContents.FrontMatter;
import stillturning.report.html.Sources;
import stillturning.report.html.Sources.SourceNote;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.JointChapters;
import stillturning.report.joint.SharedFindings;
import stillturning.report.page.Document;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.JointSection;
import stillturning.report.pair.PairQuestion;
import stillturning.report.paper.CounsellorPaper;
import stillturning.report.paper.PaperContents;
import stillturning.report.paper.PaperContents.Edition;
import stillturning.sizing.result.SizingReport;

/**
 * The page of one assessment, from what was asked beside it.
 *
 * @param read what the study's files say
 * @param cases the failures that each of the study's cases means in a candidate, in the study's
 *     order
 * @param asBuilt what the records beside the study say; none where nothing was measured
 */
public record Dossier(
        Assessment assessment,
        ReadStudy read,
        Function<Candidate, Map<String, List<Failure>>> cases,
        List<Chapter> asBuilt) {

    public Dossier {
        asBuilt = List.copyOf(asBuilt);
    }

    /**
     * What was asked beside the comparison.
     *
     * @param guesses what trying them brought, if that was asked
     * @param sizes of the candidates, in the order of the ranking; none if that was not asked
     * @param together what failures do together, if that was asked
     * @param equal what equal batteries change, if there is more than one candidate
     * @param pair two candidates held against each other, if there are two
     * @param groundTest the plan of a test on the ground of the first candidate, if that was asked
     * @param lookedAt what else was looked at, chapter by chapter; none if that was not asked
     */
    public record FurtherAnswers(
            Optional<Guesses> guesses,
            List<SizingReport> sizes,
            Optional<Jointness> together,
            Optional<EqualBatteries> equal,
            Optional<PairQuestion> pair,
            Optional<Chapter> groundTest,
            List<Chapter> lookedAt) {
        public FurtherAnswers {
            sizes = List.copyOf(sizes);
            lookedAt = List.copyOf(lookedAt);
        }
    }

    /** What failures do together, and what fails them together; in the order of the ranking. */
    public record Jointness(JointWork work, List<SharedFindings> shared) {
        public Jointness {
            shared = List.copyOf(shared);
        }
    }

    /** The study with the candidates that could be assessed, best first. */
    public Study ranked() {
        Study all = assessment.study();
        return new Study(
                all.id(),
                all.heading(),
                all.aircraft(),
                all.goals(),
                RankingOrder.of(assessment).stream().map(a -> a.candidate()).toList());
    }

    /** The page; the same in, the same text out. */
    public String page(FurtherAnswers asked) {
        return page(asked, new Edition("", ProgramVersion.words(), Edition.READ));
    }

    /** The page of an edition. */
    public String page(FurtherAnswers asked, Edition edition) {
        assessment.tellInDepth();
        PaperContents contents = contents(asked, edition);
        return HtmlPage.of(
                assessment,
                sources(),
                new PageContents(
                        asked.guesses,
                        told(),
                        asked.sizes,
                        asked.together.map(this::section),
                        new FrontMatter(
                                contents.first().lead(),
                                CounsellorPaper.front(assessment, contents)),
                        decision(contents, asked),
                        Optional.of(Explorer.of(assessment, contents.found())),
                        asked.groundTest));
    }

    /** The same for paper; the same in, the same document out. */
    public Document paper(FurtherAnswers asked, Edition edition) {
        assessment.tellInDepth();
        PaperContents contents = contents(asked, edition);
        Document document = CounsellorPaper.of(assessment, contents);
        for (Chapter chapter : asBuilt) {
            document = document.with(chapter, "sizes");
        }
        Document built = document;
        Document planned = asked.groundTest.map(plan -> built.with(plan, "sizes")).orElse(built);
        List<Chapter> decision = CounsellorPaper.decision(assessment, contents);
        String last = decision.get(decision.size() - 1).anchor();
        for (Chapter chapter : asked.lookedAt) {
            planned = planned.with(chapter, last);
            last = chapter.anchor();
        }
        return planned;
    }

    private List<Chapter> decision(PaperContents contents, FurtherAnswers asked) {
        return Stream.of(
                        CounsellorPaper.decision(assessment, contents).stream(),
                        asked.lookedAt.stream(),
                        asBuilt.stream())
                .flatMap(chapters -> chapters)
                .toList();
    }

    private PaperContents contents(FurtherAnswers asked, Edition edition) {
        return new PaperContents(
                edition,
                sources(),
                first(asked),
                asked.pair,
                told(),
                asked.sizes,
                asked.together.map(this::section),
                asked.together.map(t -> t.work().found()).orElse(List.of()));
    }

    private FirstAnswer first(FurtherAnswers asked) {
        return new FirstQuestion(
                        assessment,
                        asked.equal,
                        SizedCandidates.ofFirst(assessment, read),
                        asked.guesses,
                        MistakenFiles.of(read.problems()))
                .marked(MarkedValues.ofFirstTwo(assessment, read))
                .checked(asked.together.flatMap(this::card))
                .answer();
    }

    /** The checks that the first one needs. */
    private Optional<Card> card(Jointness together) {
        String first = assessment.ranking().map(r -> r.leader().name()).orElse("");
        return together.work.found().stream()
                .filter(found -> found.candidate().id().equals(first))
                .map(CombinedFindings::card)
                .findFirst();
    }

    private List<CandidateCases> told() {
        return RankingOrder.of(assessment).stream()
                .map(a -> CandidateCases.of(a, cases.apply(a.candidate())))
                .toList();
    }

    private JointSection section(Jointness together) {
        return JointChapters.of(
                ranked(), together.work.found(), together.shared, together.work.reasons());
    }

    private Sources sources() {
        List<SourceNote> notes = read.assumptions().stream().map(Dossier::note).toList();
        return new Sources(read.fingerprint(), notes);
    }

    private static SourceNote note(Assumption a) {
        return new SourceNote(a.file(), a.path(), a.text(), a.origin().words(), a.note());
    }
}
