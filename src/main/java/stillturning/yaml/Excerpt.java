package stillturning.yaml;

/** A piece of the user's text, cut to fit into a message. */
public final class Excerpt {

    private static final int LONGEST = 60;

    private Excerpt() {}

    public static String of(String text) {
        if (text.length() <= LONGEST) {
            return text;
        }
        int cut = Character.isHighSurrogate(text.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
        return text.substring(0, cut) + "...";
    }
}
