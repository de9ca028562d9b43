package stillturning.structure;

import java.util.List;

/**
 * How two vertices of a part graph hang together.
 *
 * @param ways the most ways of which no two share a part, as parts; one without parts if the ends
 *     meet in one joint
 * @param cut the fewest parts that separate the ends
 * @param shared parts that every way passes, along the way
 * @param proven whether ways and cut are certain to be most and fewest
 */
record Separation(
        List<List<Integer>> ways, List<Integer> cut, List<Integer> shared, boolean proven) {

    static final Separation APART = new Separation(List.of(), List.of(), List.of(), true);

    static final Separation ONE_JOINT =
            new Separation(List.of(List.of()), List.of(), List.of(), true);

    Separation {
        ways = ways.stream().map(List::copyOf).toList();
        cut = List.copyOf(cut);
        shared = List.copyOf(shared);
    }
}
