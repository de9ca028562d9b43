package stillturning.desktop.draft;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stillturning.desktop.draft.Conflict.Dispute;
import stillturning.desktop.draft.Conflict.KeptText;

/** Joins two people's changes of one text, line by line. */
final class LineMerge {

    private static final Pattern LINE_ENDS = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    /** Lines of the base from one index to another, and what stands there instead. */
    private record ChangedLines(int from, int to, List<String> lines) {}

    private LineMerge() {}

    /** A stretch of the base that one of the two or both have changed. */
    private record Stretch(int from, int to, List<ChangedLines> mine, List<ChangedLines> theirs) {

        boolean isDisputed() {
            return !mine.isEmpty() && !theirs.isEmpty() && !mine.equals(theirs);
        }

        boolean touches(ChangedLines change) {
            return from <= change.to && change.from <= to;
        }

        Stretch with(ChangedLines change, boolean isMine) {
            List<ChangedLines> more = new ArrayList<>(isMine ? mine : theirs);
            more.add(change);
            return new Stretch(
                    Math.min(from, change.from),
                    Math.max(to, change.to),
                    isMine ? more : mine,
                    isMine ? theirs : more);
        }

        List<String> text(List<String> base, KeptText choice) {
            List<ChangedLines> changes = choice == KeptText.MINE ? mine : theirs;
            List<String> lines = new ArrayList<>();
            int at = from;
            for (ChangedLines change : changes) {
                lines.addAll(base.subList(at, change.from));
                lines.addAll(change.lines);
                at = change.to;
            }
            lines.addAll(base.subList(at, to));
            return lines;
        }
    }

    /** The text with the changes of both, unless two of them touch. */
    static Optional<String> of(String base, String mine, String theirs) {
        boolean disputed = stretches(base, mine, theirs).stream().anyMatch(Stretch::isDisputed);
        return disputed ? Optional.empty() : Optional.of(joined(base, mine, theirs, List.of()));
    }

    /** The places where changes of both touch, from top to bottom. */
    static List<Dispute> disputes(String base, String mine, String theirs) {
        List<String> lines = lines(base);
        return stretches(base, mine, theirs).stream()
                .filter(Stretch::isDisputed)
                .map(
                        s ->
                                new Dispute(
                                        s.from + 1,
                                        String.join("", s.text(lines, KeptText.MINE)),
                                        String.join("", s.text(lines, KeptText.THEIRS)),
                                        String.join("", lines.subList(s.from, s.to))))
                .toList();
    }

    /**
     * The text with the changes of both, and in each place where they touch the chosen one.
     *
     * @param choices one for each place, from top to bottom
     */
    static String joined(String base, String mine, String theirs, List<KeptText> choices) {
        List<String> lines = lines(base);
        StringBuilder text = new StringBuilder();
        Iterator<KeptText> chosen = choices.iterator();
        int at = 0;
        for (Stretch stretch : stretches(base, mine, theirs)) {
            KeptText whose = stretch.mine.isEmpty() ? KeptText.THEIRS : KeptText.MINE;
            KeptText choice = stretch.isDisputed() ? chosen.next() : whose;
            lines.subList(at, stretch.from).forEach(text::append);
            stretch.text(lines, choice).forEach(text::append);
            at = stretch.to;
        }
        lines.subList(at, lines.size()).forEach(text::append);
        return text.toString();
    }

    /** Changes that touch, or touch what touches, belong together. */
    private static List<Stretch> stretches(String base, String mine, String theirs) {
        List<String> lines = lines(base);
        List<ChangedLines> own = changes(lines, lines(mine));
        List<ChangedLines> other = changes(lines, lines(theirs));
        List<ChangedLines> all = new ArrayList<>(own);
        all.addAll(other);
        all.sort(Comparator.comparingInt(ChangedLines::from).thenComparingInt(ChangedLines::to));
        List<Stretch> stretches = new ArrayList<>();
        for (ChangedLines change : new LinkedHashSet<>(all)) {
            int last = stretches.size() - 1;
            boolean joins = last >= 0 && stretches.get(last).touches(change);
            Stretch stretch =
                    joins
                            ? stretches.remove(last)
                            : new Stretch(change.from, change.to, List.of(), List.of());
            stretch = own.contains(change) ? stretch.with(change, true) : stretch;
            stretch = other.contains(change) ? stretch.with(change, false) : stretch;
            stretches.add(stretch);
        }
        return stretches;
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
}
