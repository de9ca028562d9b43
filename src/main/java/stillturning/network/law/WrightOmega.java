package stillturning.network.law;

/** The w > 0 with w + ln w = x, for any x: the closed form behind a diode with a resistance. */
final class WrightOmega {
    /** Below this, w and exp(x) agree to the last bit. */
    private static final double EXPONENTIAL_BELOW = -37.0;

    private WrightOmega() {}

    static double of(double x) {
        if (x < EXPONENTIAL_BELOW) {
            return Math.exp(x);
        }
        double w = start(x);
        double off = x - w - Math.log(w);
        w = improved(w, off);
        off = x - w - Math.log(w);
        return improved(w, off);
    }

    private static double start(double x) {
        if (x > 1.5) {
            double log = Math.log(x);
            return x - log + log / x;
        }
        if (x > -2.0) {
            // second-order expansion about w(1) = 1
            double y = x - 1.0;
            double w = 1.0 + y * (0.5 + y * (0.0625 - y * 0.0052083));
            return Math.max(w, 0.05);
        }
        double e = Math.exp(x);
        return e * (1.0 - e);
    }

    /** One fourth-order step (Fritsch, Shafer and Crowley 1973; from memory, unverified). */
    private static double improved(double w, double off) {
        double one = 1.0 + w;
        double base = 2.0 * one * (one + off * (2.0 / 3.0));
        return w * (1.0 + off / one * (base - off) / (base - 2.0 * off));
    }
}
