package stillturning.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels for the ends of wires, to print, cut out and put under clear sleeving.
 *
 * @param labels both ends of a wire one after the other
 */
public record Sleeves(String title, List<Sleeve> labels) {

    /** So many stand beside each other. */
    private static final int COLUMNS = 3;

    /** More letters than this and a label is set smaller. */
    private static final int LONG = 33;

    /** More than this and it is set smaller still. */
    private static final int LONGER = 60;

    /** Letters of the first line are so much wider than those of the others. */
    private static final double BOLD = 1.25;

    /**
     * One end.
     *
     * @param wire its name
     * @param gauge as AWG has it
     * @param here where this end is
     * @param there where the other is
     */
    public record Sleeve(String wire, String gauge, String here, String there) {

        /** Style by the longest of its lines. */
        public String size() {
            double longest =
                    Math.max(
                            BOLD * (wire.length() + gauge.length()),
                            Math.max(here.length(), there.length()));
            return longest > LONGER ? "sleeve tiny" : longest > LONG ? "sleeve small" : "sleeve";
        }
    }

    public Sleeves {
        labels = List.copyOf(labels);
    }

    /** Line by line as they lie on the sheet. */
    public List<List<Sleeve>> rows() {
        List<List<Sleeve>> rows = new ArrayList<>();
        for (int i = 0; i < labels.size(); i += COLUMNS) {
            rows.add(labels.subList(i, Math.min(i + COLUMNS, labels.size())));
        }
        return rows;
    }

    /** Places of a row that stay empty. */
    public static int free(List<Sleeve> row) {
        return COLUMNS - row.size();
    }
}
