package stillturning.desktop.draft;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Joins two people's changes of one text, line by line. */
final class LineMerge {

    private static final Pattern LINE_ENDS = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    /** Lines of the base from one index to another, and what stands there instead. */
    private record ChangedLines(int from, int to, List<String> lines) {

        /** Whether nothing of the base stands between the two. */
        boolean touches(ChangedLines other) {
            return from <= other.to && other.from <= to;
        }
    }

    private LineMerge() {}

    /** The text with the changes of both, unless two of them touch. */
    static Optional<String> of(String base, String mine, String theirs) {
        List<String> lines = lines(base);
        List<ChangedLines> changes = changes(lines, lines(mine));
        for (ChangedLines theirChange : changes(lines, lines(theirs))) {
            if (changes.contains(theirChange)) {
                continue;
            }
            if (changes.stream().anyMatch(theirChange::touches)) {
                return Optional.empty();
            }
            changes.add(theirChange);
        }
        changes.sort(Comparator.comparingInt(ChangedLines::from));
        return Optional.of(joined(lines, changes));
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(LINE_ENDS.split(text));
    }

    private static List<ChangedLines> changes(List<String> base, List<String> other) {
        List<ChangedLines> changes = new ArrayList<>();
        for (AbstractDelta<String> delta : DiffUtils.diff(base, other).getDeltas()) {
            int from = delta.getSource().getPosition();
            changes.add(
                    new ChangedLines(
                            from,
                            from + delta.getSource().size(),
                            List.copyOf(delta.getTarget().getLines())));
        }
        return changes;
    }

    private static String joined(List<String> base, List<ChangedLines> changes) {
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (ChangedLines change : changes) {
            base.subList(at, change.from).forEach(text::append);
            change.lines.forEach(text::append);
            at = change.to;
        }
        base.subList(at, base.size()).forEach(text::append);
        return text.toString();
    }
}
