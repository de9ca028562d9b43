package stillturning.desktop.viewmodel.explain;

/**
 * What goes onto the page beside the comparison.
 *
 * @param sizes wires, protectors, loads and weight of each candidate
 * @param guesses which guesses matter
 * @param together what failures do together, causes, latent failures and run-up cards
 * @param groundTest the plan of a test on the ground of the first candidate
 * @param explored what else was looked at
 * @param mends the lightest change for each thing that is wrong
 */
public record Contents(
        boolean sizes,
        boolean guesses,
        boolean together,
        boolean groundTest,
        boolean explored,
        boolean mends) {}
