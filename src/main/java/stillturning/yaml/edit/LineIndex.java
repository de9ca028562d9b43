package stillturning.yaml.edit;

import stillturning.yaml.Splice;

/** A text seen as lines, by the index of its chars. */
record LineIndex(String text) {

    String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** Index of the first char of the line around an index. */
    int start(int at) {
        int start = at;
        while (start > 0 && !isBreak(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    /** Index after the last char of the line around an index, before its line break. */
    int end(int at) {
        int end = at;
        while (end < text.length() && !isBreak(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /**
     * Index after the line around an index and after the comment lines below it that are indented
     * deeper than a column: they speak of what ends there.
     */
    int endWithOwnComments(int at, int indent) {
        int end = end(at);
        int line = next(end);
        while (line < text.length() && line > end) {
            int first = line;
            while (first < text.length() && text.charAt(first) == ' ') {
                first++;
            }
            if (first < text.length() && text.charAt(first) == '#' && first - line > indent) {
                end = end(first);
            } else if (first < end(line)) {
                return end;
            }
            int next = next(first);
            if (next == line) {
                return end;
            }
            line = next;
        }
        return end;
    }

    /** Index of the next line's first char, or the end of the text. */
    int next(int at) {
        int end = end(at);
        int width = text.startsWith("\r\n", end) ? 2 : 1;
        return Math.min(text.length(), end + width);
    }

    /** Index before the line break in front of the line around an index, or 0. */
    int endOfPrevious(int at) {
        int start = start(at);
        int width = start >= 2 && text.startsWith("\r\n", start - 2) ? 2 : 1;
        return Math.max(0, start - width);
    }

    boolean isBlank(int from, int to) {
        return text.substring(from, to).isBlank();
    }

    /** Whether only spaces stand before an index on its line. */
    boolean isFirstOnLine(int at) {
        return isBlank(start(at), at);
    }

    Splice replace(int from, int to, String by) {
        return new Splice(from, text.substring(from, to), by);
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
