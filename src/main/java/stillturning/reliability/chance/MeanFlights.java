package stillturning.reliability.chance;

import java.util.List;
import stillturning.reliability.chance.Flights.Both;

/**
 * Flights that stand for all between two inspections and for everything that the rates may be, each
 * with its weight: what holds in their mean is the mean over the rates' spread.
 *
 * <p>The mean of a product of lognormal rates, those of one source being one number, is known in
 * closed form: the median times exp(s²/2), s the sum of sigmas of each source, squares added over
 * the sources. It comes from rates far up in their spread, where plain samples are rare. So half of
 * the draws are made there: a cut set is chosen as often as it counts, and its sources are drawn
 * about their sum of sigmas. Each draw weighs what makes up for that, and all are fitted so that
 * the sum over the cut sets has the mean of the closed form. What is left to the draws is how much
 * the union and certainty take off it, a factor between 0 and 1.
 *
 * @see "state-of-knowledge correlation: G. Apostolakis, S. Kaplan, Reliability Engineering 2 (1981)
 *     135-145 (from memory, unverified)"
 */
final class MeanFlights {
    private static final int DRAWS = 128;

    /** For one set so rare that next to nothing takes anything off it. */
    private static final int DRAWS_OF_RARE = 16;

    private static final double RARE = 1e-5;

    /** What differs by less from draw to draw is the same in all. */
    private static final double SPECK = 1e-18;

    /** Where no diagram tells the union, its lower bound takes the time. */
    private static final int DRAWS_OF_BOUNDS = 16;

    /** Any other would do. */
    private static final long SEED = 1;

    /** Share of the draws that are made where the rates are likely to be. */
    private static final double PLAIN = .5;

    private final CutUnion union;
    private final Exposure exposure;
    private final FlightProbabilities course;
    private final Knowledge known;
    private final double[] averages;
    private double average;
    private double last;

    private MeanFlights(CutUnion union, Exposure exposure) {
        this.union = union;
        this.exposure = exposure;
        this.course = new FlightProbabilities(exposure, union.highestOrder());
        this.known = Knowledge.of(exposure);
        List<int[]> sets = union.sums().sets();
        this.averages = new double[sets.size()];
        Flights medians = course.proportional(course.medians());
        for (int set = 0; set < averages.length; set++) {
            int[] events = sets.get(set);
            double above = known.meanOverMedian(events);
            Both at = medians.of(chances -> CutSetSums.chance(events, chances));
            averages[set] = at.average() * above;
            average += averages[set];
            last += at.last() * above;
        }
    }

    static Flights of(CutUnion union, Exposure exposure) {
        MeanFlights mean = new MeanFlights(union, exposure);
        boolean spread = union.sums().sets().stream().anyMatch(mean.known::spreads);
        return spread && mean.average > 0 ? mean.drawn() : mean.course.flights(mean.course.means());
    }

    private int draws() {
        if (union.basis() == Basis.BOUNDED) {
            return DRAWS_OF_BOUNDS;
        }
        return union.size() == 1 && last < RARE ? DRAWS_OF_RARE : DRAWS;
    }

    private Flights drawn() {
        int draws = draws();
        Deviations deviations = new Deviations(exposure, draws, SEED);
        double[][] rates = new double[draws][];
        double[] weights = new double[draws];
        double[] sums = new double[draws];
        double[] lastSums = new double[draws];
        for (int n = 0; n < draws; n++) {
            int[] about = n % 2 == 0 ? union.sums().sets().get(chosen(n, draws)) : new int[0];
            rates[n] = rates(deviations, n, about);
            Both there = course.proportional(rates[n]).of(union.sums()::rareEventSum);
            weights[n] = 1 / (PLAIN + (1 - PLAIN) * there.average() / average);
            sums[n] = weights[n] * there.average();
            lastSums[n] = weights[n] * there.last();
        }
        double[] fitted = fitted(sums, average);
        double[] lastFitted = fitted(lastSums, last);
        Flights flights = new Flights();
        for (int n = 0; n < draws; n++) {
            flights.addAll(
                    course.flights(rates[n]), weights[n] * fitted[n], weights[n] * lastFitted[n]);
        }
        return flights;
    }

    /**
     * Shares of the draws by which the mean of what they tell comes out as known, by a straight
     * line through them: what follows it has its mean to the digit, what does not is no worse for
     * it.
     */
    private static double[] fitted(double[] told, double known) {
        double mean = 0;
        for (double one : told) {
            mean += one / told.length;
        }
        double squares = 0;
        for (double one : told) {
            squares += (one - mean) * (one - mean);
        }
        double[] shares = new double[told.length];
        for (int n = 0; n < shares.length; n++) {
            shares[n] =
                    squares > SPECK * mean * mean
                            ? 1.0 / shares.length + (known - mean) * (told[n] - mean) / squares
                            : known / mean / shares.length;
        }
        return shares;
    }

    /** Number of a cut set, each as often as it counts. */
    private int chosen(int draw, int draws) {
        double left = average * (draw + 1) / (draws + 1);
        int set = 0;
        while (set < averages.length - 1 && left > averages[set]) {
            left -= averages[set];
            set++;
        }
        return set;
    }

    private double[] rates(Deviations deviations, int draw, int[] about) {
        double[] rates = new double[union.events()];
        for (int event = 0; event < rates.length; event++) {
            int source = exposure.sources().get(event);
            rates[event] =
                    exposure.occurrences()
                            .get(event)
                            .spread()
                            .at(deviations.at(source, draw) + known.sigmas(about, source));
        }
        return rates;
    }
}
