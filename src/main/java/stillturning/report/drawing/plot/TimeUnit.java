package stillturning.report.drawing.plot;

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

    /** A time in the largest units that it has, to the last digit that is not 0. */
    static String clock(double seconds) {
        long minutes = (long) Math.floor(seconds / 60 + 1e-12);
        double rest = seconds - 60 * minutes;
        String text =
                rest < 1e-9
                        ? ""
                        : rest < 1 ? Ticks.text(rest * 1e3) + " ms" : Ticks.text(rest) + " s";
        return minutes == 0 ? text : (minutes + " min " + text).strip();
    }
}
