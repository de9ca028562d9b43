package stillturning.files.record;

/** A text in double quotes, as YAML 1.2 reads it back on one line. */
final class Quoted {

    private Quoted() {}

    static String of(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    /** The text with a question mark for each character that is not seen: no file may hold it. */
    static String seen(String text) {
        StringBuilder seen = new StringBuilder();
        text.codePoints().forEach(c -> seen.appendCodePoint(isSeen(c) ? c : '?'));
        return seen.toString();
    }

    private static boolean isSeen(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    false;
            default -> true;
        };
    }
}
