package stillturning.parts;

import java.util.Optional;

/**
 * What limits the current of a line.
 *
 * @param chart which column of the wire chart holds for it
 * @param ratedAmps rating (A)
 */
public record Protection(Chart chart, double ratedAmps) {

    /** Columns of the chart that pairs wires with protectors: AC 43.13-1B table 11-3. */
    public enum Chart {
        BREAKER("breaker"),
        FUSE("fuse");

        private final String words;

        Chart(String words) {
            this.words = words;
        }

        /** What a person calls it. */
        public String words() {
            return words;
        }
    }

    /** Whether it protects a size of wire, by AC 43.13-1B table 11-3. */
    public boolean suits(Cable size) {
        return largestFor(size).filter(most -> most >= ratedAmps).isPresent();
    }

    /** The largest of its kind for a size of wire (A), by AC 43.13-1B table 11-3. */
    public Optional<Double> largestFor(Cable size) {
        return switch (chart) {
            case BREAKER -> size.breakerAmps();
            case FUSE -> size.fuseAmps();
        };
    }
}
