package stillturning.reliability.chance;

import java.util.List;

/** Probability that at least one cut set comes true, from the probability of each event. */
sealed interface Top permits DecisionDiagram, CutSetSums {

    /**
     * The answers for several flights at once.
     *
     * @param chances of the events, by flight
     * @param scratch room to work in, of {@link #scratch}; what it holds matters not
     */
    double[] at(List<double[]> chances, double[] scratch);

    /** Room that so many flights at once need. */
    int scratch(int flights);
}
