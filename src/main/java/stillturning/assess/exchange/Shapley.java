package stillturning.assess.exchange;

/**
 * Shares of several players in what they bring about together (Shapley 1953): what each adds,
 * averaged over all orders in which they may come in.
 */
final class Shapley {
    private Shapley() {}

    /**
     * One share for each player; they sum to the worth of all less the worth of none.
     *
     * @param worth by set of players, the n-th bit of the index standing for the n-th player
     * @throws IllegalArgumentException if it is not as long as a power of two
     */
    static double[] shares(double[] worth) {
        int players = Integer.numberOfTrailingZeros(worth.length);
        if (worth.length != 1 << players) {
            throw new IllegalArgumentException(worth.length + " sets are no power of two");
        }
        double[] shares = new double[players];
        for (int set = 0; set < worth.length; set++) {
            for (int player = 0; player < players; player++) {
                if ((set & 1 << player) == 0) {
                    double chance = chance(Integer.bitCount(set), players);
                    shares[player] += chance * (worth[set | 1 << player] - worth[set]);
                }
            }
        }
        return shares;
    }

    /** Chance that just the players of one set of this size come before a given other one. */
    private static double chance(int before, int players) {
        double sets = 1;
        for (int i = 0; i < before; i++) {
            sets *= (double) (players - 1 - i) / (i + 1);
        }
        return 1 / (players * sets);
    }
}
