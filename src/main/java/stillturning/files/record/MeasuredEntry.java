package stillturning.files.record;

import java.util.List;

/**
 * What was measured on one day, as it stands in the record.
 *
 * @param date such as {@code 2026-05-17}
 * @param by who measured; empty if nobody said
 * @param study fingerprint of the files from which it was predicted
 */
public record MeasuredEntry(String date, String by, String study, List<Item> items) {

    /**
     * One of it.
     *
     * @param what place in the form
     * @param says what it is, for people
     * @param measured with its unit; empty if it was not
     * @param prediction what was predicted; empty for what is no number
     * @param verdict in a word
     * @param from name of the file that it was concluded from; empty where somebody wrote it
     */
    public record Item(
            String what,
            String says,
            String measured,
            Prediction prediction,
            String verdict,
            String from) {
        public Item {
            what = Quoted.seen(what);
            says = Quoted.seen(says);
            measured = Quoted.seen(measured);
            verdict = Quoted.seen(verdict);
            from = Quoted.seen(from);
        }
    }

    /**
     * What was predicted, with its unit.
     *
     * @param least that would have kept to it
     * @param most that would have kept to it
     */
    public record Prediction(String likely, String least, String most) {
        /** Of what is no number. */
        public static final Prediction NONE = new Prediction("", "", "");
    }

    public MeasuredEntry {
        by = Quoted.seen(by);
        items = List.copyOf(items);
    }

    /** As it is written. */
    String text() {
        StringBuilder text = new StringBuilder();
        text.append("- date: ").append(Quoted.of(date)).append('\n');
        text.append("  by: ").append(Quoted.of(by)).append('\n');
        text.append("  study: ").append(Quoted.of(study)).append('\n');
        text.append("  items:\n");
        for (Item item : items) {
            text.append("    - {what: ").append(Quoted.of(item.what));
            text.append(", says: ").append(Quoted.of(item.says));
            text.append(",\n       measured: ").append(Quoted.of(item.measured));
            text.append(", predicted: ").append(Quoted.of(item.prediction.likely));
            text.append(", least: ").append(Quoted.of(item.prediction.least));
            text.append(", most: ").append(Quoted.of(item.prediction.most));
            text.append(", verdict: ").append(Quoted.of(item.verdict));
            text.append(", from: ").append(Quoted.of(item.from)).append("}\n");
        }
        return text.toString();
    }
}
