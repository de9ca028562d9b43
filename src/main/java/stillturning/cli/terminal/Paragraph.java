package stillturning.cli.terminal;

/** Sentences broken into lines. */
public final class Paragraph {

    private static final int WIDTH = 100;

    private Paragraph() {}

    /** Broken between words; the first line starts with the lead, the others under its end. */
    public static String of(String lead, String text) {
        StringBuilder lines = new StringBuilder(lead);
        int column = lead.length();
        boolean fresh = true;
        for (String word : text.strip().split("\\s+", -1)) {
            int needed = (fresh ? 0 : 1) + word.length();
            if (!fresh && column + needed > WIDTH) {
                lines.append('\n').append(" ".repeat(lead.length()));
                column = lead.length();
                fresh = true;
            }
            lines.append(fresh ? "" : " ").append(word);
            column += (fresh ? 0 : 1) + word.length();
            fresh = false;
        }
        return lines.toString();
    }
}
