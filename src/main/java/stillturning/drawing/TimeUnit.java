package stillturning.drawing;

/** The unit that a time axis is written in. */
enum TimeUnit {
    MILLISECONDS("ms", 1e-3),
    SECONDS("s", 1),
    MINUTES("min", 60),
    HOURS("h", 3600);

    final String sign;
    final double seconds;

    TimeUnit(String sign, double seconds) {
        this.sign = sign;
        this.seconds = seconds;
    }

    static TimeUnit forSpan(double span) {
        if (span < 1) {
            return MILLISECONDS;
        }
        if (span <= 180) {
            return SECONDS;
        }
        return span <= 3 * 3600 ? MINUTES : HOURS;
    }
}
