package stillturning.yaml;

/**
 * One place of a text where something was replaced.
 *
 * @param at index of the first char concerned
 * @param removed what stood there
 * @param inserted what stands there now
 */
public record Splice(int at, String removed, String inserted) {

    /** The smallest one that makes one text another. */
    public static Splice between(String before, String after) {
        int shorter = Math.min(before.length(), after.length());
        int start = 0;
        while (start < shorter && before.charAt(start) == after.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < shorter - start
                && before.charAt(before.length() - 1 - end)
                        == after.charAt(after.length() - 1 - end)) {
            end++;
        }
        return new Splice(
                start,
                before.substring(start, before.length() - end),
                after.substring(start, after.length() - end));
    }

    /** The splice that takes this one back. */
    public Splice inverse() {
        return new Splice(at, inserted, removed);
    }

    /**
     * The text with the replacement made.
     *
     * @throws IllegalArgumentException if the text does not hold what is to be removed
     */
    public String appliedTo(String text) {
        if (at < 0 || !text.startsWith(removed, at)) {
            throw new IllegalArgumentException(
                    "the text does not hold \"" + removed + "\" at " + at);
        }
        return text.substring(0, at) + inserted + text.substring(at + removed.length());
    }
}
