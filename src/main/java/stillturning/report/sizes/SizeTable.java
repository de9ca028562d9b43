package stillturning.report.sizes;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of words and numbers. Units stand in the heads, so that a spreadsheet can count.
 *
 * @param name name of its file, without ending
 * @param rows each with as many cells as there are heads
 */
public record SizeTable(
        String name, String title, List<Head> heads, List<List<String>> rows, List<String> notes) {

    /** Head of a column. */
    public record Head(String words, boolean number, int widest) {
        static Head words(String words, int widest) {
            return new Head(words, false, widest);
        }

        static Head number(String words) {
            return new Head(words, true, 10);
        }
    }

    public SizeTable {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
        for (List<String> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException(
                        name + ": " + row + " does not fill " + heads.size() + " columns");
            }
        }
    }

    /** The table with its rows marked by a candidate, below those of another. */
    SizeTable with(String candidate, SizeTable below) {
        List<List<String>> all = new ArrayList<>();
        rows.forEach(all::add);
        below.rows.forEach(row -> all.add(prefixed(candidate, row)));
        return new SizeTable(name, title, heads, all, notes);
    }

    /** The same table, empty, with a column for the candidate before the others. */
    SizeTable byCandidate() {
        List<Head> wider = new ArrayList<>();
        wider.add(Head.words("candidate", 30));
        wider.addAll(heads);
        return new SizeTable(name, title, wider, List.of(), notes);
    }

    private static List<String> prefixed(String candidate, List<String> row) {
        List<String> cells = new ArrayList<>();
        cells.add(candidate);
        cells.addAll(row);
        return cells;
    }
}
