package stillturning.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateCases;
import stillturning.assess.CandidateCases.Case;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.report.StoryFacts;
import stillturning.report.page.Page.CaseCell;
import stillturning.report.page.Page.CaseRow;
import stillturning.report.page.Page.CaseTable;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.OutcomeSign;
import stillturning.report.terminal.CaseTexts;

/** What happens when one of the study's own cases comes about, case by candidate. */
final class CaseSection {

    private static final CaseCell ABSENT =
            new CaseCell(new OutcomeSign("", CaseTexts.ABSENT, "o-none"), List.of(), "");

    private CaseSection() {}

    /** The section; empty where the study names no cases. */
    static Optional<CaseTable> of(
            List<CandidateCases> all, List<Appraisal> appraisals, StoryChapters stories) {
        int cases = all.isEmpty() ? 0 : all.get(0).cases().size();
        List<CaseRow> rows = new ArrayList<>();
        for (int i = 0; i < cases; i++) {
            List<CaseCell> cells = new ArrayList<>();
            for (int candidate = 0; candidate < all.size(); candidate++) {
                cells.add(cell(candidate, all.get(candidate).cases().get(i), stories));
            }
            rows.add(new CaseRow(all.get(0).cases().get(i).said(), cells));
        }
        List<Fact> meanings =
                CaseTexts.facts(all).stream().map(f -> new Fact(f.label(), f.value())).toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new CaseTable(HtmlPage.links(appraisals), rows, meanings));
    }

    private static CaseCell cell(int candidate, Case one, StoryChapters stories) {
        return one.worst()
                .map(
                        verdict ->
                                new CaseCell(
                                        MatrixSection.mark(verdict.outcome()),
                                        facts(verdict),
                                        stories.anchor(candidate, verdict.failure().name())
                                                .orElse("")))
                .orElse(ABSENT);
    }

    private static List<Fact> facts(Verdict verdict) {
        List<Fact> facts = new ArrayList<>();
        CaseTexts.interrupted(verdict).ifPresent(i -> facts.add(new Fact("interrupted", i)));
        String planned = StoryFacts.endurance(verdict.planned());
        String late = StoryFacts.endurance(verdict.late());
        String never = StoryFacts.endurance(verdict.unaided());
        if (planned.equals(late) && planned.equals(never)) {
            facts.add(new Fact("runs", planned));
        } else {
            facts.add(new Fact("as planned", planned));
            facts.add(new Fact("late", late));
            facts.add(new Fact("never", never));
        }
        verdict.actBySeconds().ifPresent(by -> facts.add(new Fact("act by", Formats.lasting(by))));
        return facts;
    }
}
