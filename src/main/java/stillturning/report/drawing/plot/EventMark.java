package stillturning.report.drawing.plot;

/** An event at a time (s), numbered as in the list that stands beside the plot. */
public record EventMark(int number, double seconds) {
    public EventMark {
        if (!Double.isFinite(seconds)) {
            throw new IllegalArgumentException("event " + number + " happens at no time");
        }
    }
}
