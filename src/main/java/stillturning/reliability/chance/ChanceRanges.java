package stillturning.reliability.chance;

import java.util.List;

/**
 * Where the probability of a flight lies when every rate may be anywhere in its spread.
 *
 * @param flightSeconds length of the flight (s)
 * @param basis of every sample; where bounded each is its min-cut upper bound
 * @param average of all flights between two inspections
 * @param last the flight just before all inspections
 * @param contributors whose spread the average's spread comes from, the greatest first
 */
public record ChanceRanges(
        double flightSeconds,
        Basis basis,
        ChanceRange average,
        ChanceRange last,
        List<RateContributor> contributors) {

    /**
     * A source of rates that stands out from chance.
     *
     * @param source number given in {@link Exposure}
     * @param share squared rank correlation with the probability, 0 to 1
     */
    public record RateContributor(int source, double share) {}

    public ChanceRanges {
        contributors = List.copyOf(contributors);
    }

    /** The average flight's range over its length (1/h). */
    public ChanceRange averagePerHour() {
        return average.times(TopChance.HOUR_SECONDS / flightSeconds);
    }

    /** The last flight's range over its length (1/h). */
    public ChanceRange lastPerHour() {
        return last.times(TopChance.HOUR_SECONDS / flightSeconds);
    }
}
