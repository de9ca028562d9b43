package stillturning.report.table;

/** Whether text for a terminal carries colour. */
public enum TerminalColour {
    /** Letters only. */
    NONE,
    /** Escape sequences of ECMA-48 around what stands out. */
    ANSI;

    /** What a piece of text is, for those who see colour; the words say it too. */
    public enum Ink {
        PLAIN(""),
        STRONG("1"),
        GOOD("32"),
        WARNING("33"),
        ALARM("31;1"),
        FAINT("2");

        private final String code;

        Ink(String code) {
            this.code = code;
        }
    }

    /** The text in an ink. */
    public String on(String text, Ink ink) {
        return this == NONE || ink.code.isEmpty() || text.isBlank()
                ? text
                : "\u001B[" + ink.code + "m" + text + "\u001B[0m";
    }
}
