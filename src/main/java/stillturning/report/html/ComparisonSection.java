package stillturning.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study.Weight;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.LeaderFirmness;
import stillturning.report.RankingOrder;
import stillturning.report.Reasons;
import stillturning.report.ResultText;
import stillturning.report.page.Block;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.Page.CriterionHead;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.Link;
import stillturning.report.page.Page.RankShareRow;
import stillturning.report.page.Page.RankShareTable;
import stillturning.report.page.Page.RankingRow;
import stillturning.report.page.Page.RankingSection;
import stillturning.report.page.Page.ScoreCell;
import stillturning.report.ranking.ScaleTexts;

/** The ranking, its reasons, and how firmly it stands. */
final class ComparisonSection {

    /** Criteria named as those that speak for a candidate. */
    private static final int NAMED = 2;

    private final Assessment assessment;
    private final RankingResult ranking;
    private final List<Appraisal> appraisals;

    private ComparisonSection(Assessment assessment, RankingResult ranking) {
        this.assessment = assessment;
        this.ranking = ranking;
        appraisals = RankingOrder.of(assessment);
    }

    static RankingSection of(Assessment assessment, List<Chapter> behind) {
        List<Fact> unassessed =
                assessment.unassessed().stream()
                        .map(u -> new Fact(title(assessment, u.candidate()), u.reason()))
                        .toList();
        return assessment
                .ranking()
                .map(
                        ranking ->
                                new ComparisonSection(assessment, ranking)
                                        .section(unassessed, behind))
                .orElse(
                        new RankingSection(
                                List.of(),
                                List.of(),
                                List.of(),
                                List.of(),
                                new RankShareTable(List.of(), List.of(), ""),
                                List.of(),
                                unassessed,
                                behind));
    }

    private static String title(Assessment assessment, String candidate) {
        return assessment.study().candidate(candidate).map(c -> c.title()).orElse(candidate);
    }

    private RankingSection section(List<Fact> unassessed, List<Chapter> behind) {
        Reasons reasons = new Reasons(assessment, ranking);
        List<Link> links = HtmlPage.links(appraisals);
        List<RankingRow> rows = new ArrayList<>();
        List<Fact> why = new ArrayList<>();
        for (int i = 0; i < appraisals.size(); i++) {
            Standing standing = ranking.standing(appraisals.get(i).candidate().id());
            rows.add(row(standing, links.get(i)));
            String head = standing.rank() == 1 ? "Why first: " : "Why not: ";
            why.add(new Fact(head + links.get(i).words(), reasons.of(standing.name())));
        }
        return new RankingSection(
                ranking.scales().stream().map(ComparisonSection::head).toList(),
                rows,
                scales(),
                why,
                shares(),
                LeaderFirmness.unseating(assessment, ranking),
                unassessed,
                behind);
    }

    private List<Block> scales() {
        ScaleTexts texts = new ScaleTexts(assessment, ranking, UnitSystem.METRIC);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(texts.table()));
        if (!texts.beyond().isEmpty()) {
            blocks.add(new Block.Points(texts.beyond()));
        }
        return blocks;
    }

    private static CriterionHead head(AppliedScale scale) {
        return new CriterionHead(scale.criterion(), Formats.percent(scale.weight()));
    }

    private RankingRow row(Standing standing, Link link) {
        List<ScoreCell> shares = new ArrayList<>();
        for (int i = 0; i < standing.contributions().size(); i++) {
            shares.add(share(standing.contributions().get(i), weights().get(i)));
        }
        List<String> marks = new ArrayList<>();
        if (!standing.missedGates().isEmpty()) {
            marks.add("misses " + standing.missedGates().size());
        }
        marks.add(
                standing.efficient()
                        ? "not dominated"
                        : "dominated by "
                                + standing.dominatedBy().stream()
                                        .map(c -> title(assessment, c))
                                        .collect(Collectors.joining(", ")));
        return new RankingRow(
                String.valueOf(standing.rank()),
                link,
                Formats.fixed(standing.total(), 3),
                shares,
                String.join("; ", marks));
    }

    private List<Weight> weights() {
        return assessment.study().goals().weights();
    }

    private ScoreCell share(Contribution contribution, Weight weight) {
        String currency = assessment.study().heading().currency();
        return new ScoreCell(
                ResultText.value(weight.criterion(), contribution.value(), currency),
                "+" + Formats.fixed(contribution.points(), 3),
                Formats.fixed(100 * contribution.worth(), 0));
    }

    private RankShareTable shares() {
        List<RankShares> all = ranking.robustness().shares();
        return new RankShareTable(
                IntStream.rangeClosed(1, all.size()).mapToObj(String::valueOf).toList(),
                all.stream().map(this::shareRow).toList(),
                LeaderFirmness.method(ranking.robustness()));
    }

    private RankShareRow shareRow(RankShares shares) {
        return new RankShareRow(
                title(assessment, shares.name()),
                shares.byRank().stream().map(Formats::percent).toList(),
                favouredBy(shares.centralWeights()));
    }

    /** Criteria that weigh more than an even share with those who put the candidate first. */
    private String favouredBy(List<Double> weights) {
        if (weights.isEmpty()) {
            return "nobody";
        }
        double even = 1.0 / weights.size();
        List<String> heavy =
                IntStream.range(0, weights.size())
                        .boxed()
                        .filter(i -> weights.get(i) > even * 1.05)
                        .sorted(Comparator.comparingDouble(i -> -weights.get(i)))
                        .limit(NAMED)
                        .map(i -> ranking.scales().get(i).criterion())
                        .toList();
        return heavy.isEmpty() ? "all alike" : String.join(", ", heavy);
    }
}
