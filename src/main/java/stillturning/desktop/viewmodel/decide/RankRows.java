package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study.Weight;
import stillturning.quantity.UnitSystem;
import stillturning.report.Reasons;
import stillturning.report.ResultText;

/** The ranking of an assessment, row by row. */
final class RankRows {

    private final Assessment now;
    private final RankingResult ranking;
    private final RankingResult stated;
    private final UnitSystem units;

    private RankRows(
            Assessment now, RankingResult ranking, RankingResult stated, UnitSystem units) {
        this.now = now;
        this.ranking = ranking;
        this.stated = stated;
        this.units = units;
    }

    /**
     * Best first.
     *
     * @param now ranked by the weights of now
     * @param stated ranked by those of the study
     */
    static List<RankRow> of(Assessment now, Assessment stated, UnitSystem units) {
        if (now.ranking().isEmpty() || stated.ranking().isEmpty()) {
            return List.of();
        }
        RankRows rows = new RankRows(now, now.ranking().get(), stated.ranking().get(), units);
        return rows.all();
    }

    private List<RankRow> all() {
        Reasons reasons = new Reasons(now, ranking);
        List<RankRow> rows = new ArrayList<>();
        for (int i = 0; i < ranking.standings().size(); i++) {
            Standing standing = ranking.standings().get(i);
            RankShares shares = ranking.robustness().shares().get(i);
            rows.add(row(standing, shares, reasons.of(standing.name())));
        }
        return rows;
    }

    private RankRow row(Standing standing, RankShares shares, String why) {
        return new RankRow(
                standing.name(),
                title(now, standing.name()),
                standing.rank(),
                stated.standing(standing.name()).rank(),
                standing.total(),
                pieces(standing),
                standing.missedGates().size(),
                standing.efficient(),
                domination(standing),
                shares.byRank(),
                why);
    }

    private List<RankRow.Piece> pieces(Standing standing) {
        List<Weight> weights = now.study().goals().weights();
        String currency = now.study().heading().currency();
        return IntStream.range(0, weights.size())
                .mapToObj(
                        i -> {
                            Contribution c = standing.contributions().get(i);
                            var criterion = weights.get(i).criterion();
                            return new RankRow.Piece(
                                    criterion,
                                    c.points(),
                                    c.worth(),
                                    ResultText.value(criterion, c.value(), currency, units));
                        })
                .toList();
    }

    private String domination(Standing standing) {
        return standing.efficient()
                ? "not dominated"
                : "dominated by "
                        + standing.dominatedBy().stream()
                                .map(c -> title(now, c))
                                .collect(Collectors.joining(", "));
    }

    static String title(Assessment assessment, String candidate) {
        return assessment.study().candidate(candidate).map(c -> c.title()).orElse(candidate);
    }
}
