package stillturning.files.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A form to be filled in.
 *
 * @param head what stands above it, line by line
 * @param candidate whose it is
 * @param study fingerprint of the files from which everything was predicted
 * @param blanks in order
 * @param above what stands above a group of blanks as comments, by the group's path
 */
public record BlankForm(
        List<String> head,
        String candidate,
        String study,
        List<Blank> blanks,
        Map<String, List<String>> above) {

    static final String RECORD = "record";
    static final String STUDY = "study";
    static final String DATE = "date";
    static final String BY = "by";

    private static final int WIDTH = 98;
    private static final int BESIDE = 34;

    public BlankForm {
        head = List.copyOf(head);
        blanks = List.copyOf(blanks);
        above = Collections.unmodifiableMap(new LinkedHashMap<>(above));
    }

    /**
     * What somebody wrote into one.
     *
     * @param values by the path of their blanks
     */
    public record FilledIn(String date, String by, Map<String, String> values) {

        /** Nothing yet. */
        public static final FilledIn NOTHING = new FilledIn("", "", Map.of());

        public FilledIn {
            values = Map.copyOf(values);
        }
    }

    /** The form as a file; the same in, the same text out. */
    public String text() {
        return text(FilledIn.NOTHING);
    }

    /** The form as a file with something written into it. */
    public String text(FilledIn written) {
        StringBuilder text = new StringBuilder();
        head.forEach(line -> comment(text, "", line));
        text.append(RECORD).append(": ").append(candidate).append('\n');
        text.append(STUDY).append(": ").append(Quoted.of(study)).append('\n');
        String day = "day of the measurements, such as 2026-05-17";
        beside(text, DATE + ":" + value(written.date), day);
        beside(text, BY + ":" + value(written.by), "who measured");
        List<String> open = List.of();
        for (Blank blank : blanks) {
            List<String> groups = List.of(blank.group().split("\\.", -1));
            for (int depth = 0; depth < groups.size(); depth++) {
                boolean same =
                        open.size() > depth
                                && open.subList(0, depth + 1).equals(groups.subList(0, depth + 1));
                if (!same) {
                    group(text, groups.subList(0, depth + 1));
                }
            }
            open = groups;
            String value = value(written.values.getOrDefault(blank.path(), ""));
            beside(text, "  ".repeat(groups.size()) + blank.key() + ":" + value, blank.beside());
        }
        return text.toString();
    }

    private static String value(String written) {
        return written.isBlank() ? "" : " " + Quoted.of(Quoted.seen(written.strip()));
    }

    private void group(StringBuilder text, List<String> groups) {
        String indent = "  ".repeat(groups.size() - 1);
        List<String> lines = above.getOrDefault(String.join(".", groups), List.of());
        if (groups.size() == 1 || !lines.isEmpty()) {
            text.append('\n');
        }
        lines.forEach(line -> comment(text, indent, line));
        text.append(indent).append(groups.get(groups.size() - 1)).append(":\n");
    }

    private static void comment(StringBuilder text, String indent, String words) {
        for (String line : broken(words, WIDTH - indent.length())) {
            text.append(indent).append("# ").append(line).append('\n');
        }
    }

    private static void beside(StringBuilder text, String start, String words) {
        text.append(start);
        text.append(" ".repeat(Math.max(1, BESIDE - start.length())));
        text.append("# ").append(words).append('\n');
    }

    private static List<String> broken(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (!line.isEmpty()) {
                line.append(' ');
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
