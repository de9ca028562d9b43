package stillturning.cli.decide;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.cli.terminal.Refusal;
import stillturning.files.goal.PreferencesReader;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.CriterionOrder;
import stillturning.model.goal.MeanWeights;
import stillturning.model.goal.Preferences;

/** What somebody knows of the order of the weights beside what the study says. */
final class ImportanceOption {

    @Option(
            names = "--knowing",
            paramLabel = "STATEMENT",
            description =
                    "Only weightings that agree with it: \"weight over cost\". May be given several"
                            + " times; adds to the study's own importance. The weights stay.")
    private List<String> statements = List.of();

    /**
     * The assessment ranked with what is known.
     *
     * @throws Refusal if a statement is none, or the statements contradict each other or the
     *     study's weights
     */
    Assessment applied(Assessment basis) {
        if (statements.isEmpty()) {
            return basis;
        }
        Preferences preferences = basis.study().goals().preferences();
        List<CriterionOrder> known = new ArrayList<>(preferences.importances());
        for (String said : statements) {
            CriterionOrder statement =
                    PreferencesReader.statement(said)
                            .orElseThrow(
                                    () ->
                                            new Refusal(
                                                    "--knowing \""
                                                            + said
                                                            + "\" does not say what matters more"
                                                            + " than what; write two of "
                                                            + String.join(
                                                                    ", ", PreferencesReader.keys())
                                                            + " with \"over\" between them"));
            if (weight(preferences, statement.heavier())
                    < weight(preferences, statement.lighter())) {
                throw new Refusal(
                        "--knowing \""
                                + said
                                + "\": the study's weights say the reverse; change a weight, or"
                                + " leave the statement out");
            }
            known.add(statement);
        }
        if (MeanWeights.of(List.of(CriterionName.values()), known).isEmpty()) {
            throw new Refusal(
                    "no weighting agrees with all that is known; leave out one of the statements"
                            + " that lead in a circle");
        }
        return Assess.preferring(basis, preferences.knowing(known));
    }

    private static double weight(Preferences preferences, CriterionName criterion) {
        return preferences.weights().stream()
                .filter(w -> w.criterion() == criterion)
                .mapToDouble(Weight::weight)
                .sum();
    }
}
