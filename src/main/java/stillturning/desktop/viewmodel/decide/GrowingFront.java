package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.dossier.exploration.Exploration;
import stillturning.model.goal.CriterionName;
import stillturning.report.RankingOrder;
import stillturning.report.explored.Yardstick;

/**
 * What a search has found so far: values alone, since drawings are made at its end.
 *
 * @param layouts each by the steps of {@link #BY}
 */
record GrowingFront(List<List<Double>> layouts) {

    private static final Yardstick BY = new Yardstick(Exploration.USUALLY_BY);
    private static final String FOUND = "found by now";

    GrowingFront {
        layouts = List.copyOf(layouts);
    }

    /** The candidates, and what lies elsewhere, as far as the search compares by both criteria. */
    List<TradeOff.Valued> among(
            Assessment candidates, CriterionName across, CriterionName upwards) {
        List<TradeOff.Valued> all = new ArrayList<>();
        Set<List<Double>> drawn = new HashSet<>();
        for (Appraisal appraisal : RankingOrder.of(candidates)) {
            drawn.add(BY.of(appraisal.measures().values()));
            all.add(TradeOff.valued(appraisal, across, upwards));
        }
        int x = BY.criteria().indexOf(across);
        int y = BY.criteria().indexOf(upwards);
        if (x >= 0 && y >= 0) {
            layouts.stream()
                    .filter(steps -> !drawn.contains(steps))
                    .map(
                            steps ->
                                    new TradeOff.Valued(
                                            "",
                                            FOUND,
                                            0,
                                            Yardstick.value(across, steps.get(x)),
                                            Yardstick.value(upwards, steps.get(y)),
                                            true))
                    .forEach(all::add);
        }
        return all;
    }
}
