package stillturning.desktop.viewmodel.record;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import stillturning.dossier.record.AskedFor;
import stillturning.report.record.FormLine;
import stillturning.report.record.MeasuredWords;

/** One blank: what it asks for, what somebody wrote, what is wrong with that or came of it. */
public final class Entry {

    private final String path;
    private final String says;
    private final String predicted;
    private final String example;
    private final StringProperty written = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper mistake = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper verdict = new ReadOnlyStringWrapper("");

    Entry(FormLine line, String already) {
        this.path = line.path();
        this.says = line.says();
        this.predicted = AskedFor.predicted(line);
        this.example = AskedFor.example(line);
        written.set(already);
    }

    /** Its place in the form. */
    public String path() {
        return path;
    }

    /** What is measured. */
    public String says() {
        return says;
    }

    /** What is predicted, and what keeps to it. */
    public String predicted() {
        return predicted;
    }

    /** How it might be written. */
    public String example() {
        return example;
    }

    /** What somebody wrote; empty where nothing was measured. */
    public StringProperty written() {
        return written;
    }

    /** What is wrong with it, and what would be right; empty if nothing is. */
    public ReadOnlyStringProperty mistake() {
        return mistake.getReadOnlyProperty();
    }

    /** How it stands to its prediction, since it was last compared; empty before. */
    public ReadOnlyStringProperty verdict() {
        return verdict.getReadOnlyProperty();
    }

    void wrong(String words) {
        mistake.set(words);
    }

    void compared(FormLine line) {
        boolean measured = line.compared().measured().isPresent();
        verdict.set(measured ? MeasuredWords.verdict(line.compared()) : "");
    }

    void anew() {
        mistake.set("");
        verdict.set("");
    }
}
