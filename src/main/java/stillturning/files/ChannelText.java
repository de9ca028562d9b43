package stillturning.files;

/**
 * A controller's channel, written {@code 10 A} or {@code 10 A, default on}.
 *
 * @param ratedAmps rating (A)
 * @param onByDefault its state when logic or command path is lost
 */
public record ChannelText(double ratedAmps, boolean onByDefault) {}
