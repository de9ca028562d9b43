package stillturning.desktop.viewmodel;

import java.util.List;

/**
 * Something that the user should know, until it is answered or put away.
 *
 * @param topic what it is about; a newer notice of a topic replaces an older one
 * @param replies what can be done about it
 */
public record Notice(String topic, Severity weight, String words, List<Reply> replies) {

    /** How much it matters. */
    public enum Severity {
        NEWS,
        CARE,
        WRONG
    }

    /** Something that can be done about it. */
    public record Reply(String words, Runnable act) {}

    public Notice {
        replies = List.copyOf(replies);
    }

    /** One to which there is nothing to say. */
    public static Notice of(String topic, Severity weight, String words) {
        return new Notice(topic, weight, words, List.of());
    }
}
