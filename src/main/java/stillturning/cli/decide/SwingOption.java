package stillturning.cli.decide;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.cli.terminal.Refusal;
import stillturning.files.goal.Swings;
import stillturning.files.goal.Swings.StatedWeights;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.CriterionOrder;
import stillturning.model.goal.Preferences;

/** Other weights than the study's, asked by swing. */
final class SwingOption {

    @Option(
            names = "--swing",
            paramLabel = "SWINGS",
            description =
                    "Weigh by these instead: \"endurance 100, weight 60, cost 40\". 100 for the"
                            + " criterion by which you would go first from as bad as you could accept"
                            + " to as good as you need; the others what that is worth against it. What"
                            + " is not named does not count.")
    private Optional<String> swings = Optional.empty();

    /**
     * The assessment ranked with these weights.
     *
     * @throws Refusal if they are none, or contradict what the study knows of their order
     */
    Assessment applied(Assessment basis) {
        return swings.map(text -> weighed(basis, text)).orElse(basis);
    }

    private static Assessment weighed(Assessment basis, String text) {
        StatedWeights said = Swings.said(text);
        if (!said.mistakes().isEmpty()) {
            throw new Refusal("--swing: " + String.join("; ", said.mistakes()));
        }
        Preferences preferences = basis.study().goals().preferences();
        for (CriterionOrder known : preferences.importances()) {
            if (weight(said.weights(), known.heavier()) < weight(said.weights(), known.lighter())) {
                throw new Refusal(
                        "--swing: the study says that "
                                + known.heavier().words()
                                + " matters more than "
                                + known.lighter().words()
                                + "; change a swing, or take the statement out");
            }
        }
        return Assess.preferring(basis, preferences.weighed(said.weights()));
    }

    private static double weight(List<Weight> weights, CriterionName criterion) {
        return weights.stream()
                .filter(w -> w.criterion() == criterion)
                .mapToDouble(Weight::weight)
                .sum();
    }
}
