package stillturning.reliability.cover;

import java.util.List;

/**
 * Choices that are equally cheap.
 *
 * @param choices each ascending, in the order of their numbers
 * @param complete whether these are all, and proven to be the cheapest
 */
public record EquallyCheap(List<List<Integer>> choices, boolean complete) {
    public EquallyCheap {
        choices = choices.stream().map(List::copyOf).toList();
    }
}
