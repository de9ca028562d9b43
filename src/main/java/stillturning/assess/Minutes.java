package stillturning.assess;

/** Endurance in words. */
final class Minutes {
    private Minutes() {}

    static String inWords(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "as long as the rest of the aircraft";
        }
        return seconds < 60 ? Math.round(seconds) + " s" : (long) Math.floor(seconds / 60) + " min";
    }
}
