package stillturning.sizing.result;

import java.util.List;

/**
 * The starting of the engine on the ground.
 *
 * @param conditions in words
 * @param hard whether with tired batteries in the cold, or as stated
 * @param runs whether the engine runs at the end
 * @param starterAmps highest current of the starter (A)
 * @param loads the starter and each load that the engine needs
 * @param opened protectors that open meanwhile, in order of time
 */
public record CrankingSupply(
        String conditions,
        boolean hard,
        boolean runs,
        double starterAmps,
        List<Fed> loads,
        List<String> opened) {

    /**
     * A load while the starter turns.
     *
     * @param volts lowest voltage across it (V)
     * @param minimumVolts the least it needs (V)
     * @param stops whether it stops on the way
     */
    public record Fed(String load, double volts, double minimumVolts, boolean stops) {}

    public CrankingSupply {
        loads = List.copyOf(loads);
        opened = List.copyOf(opened);
    }
}
