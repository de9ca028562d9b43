package stillturning.desktop.viewmodel.draw;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.ChangeRefused;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.CandidateReading;
import stillturning.files.FileFinding;
import stillturning.files.PartPlace;

/** The text of the open candidate's file beside its diagram. */
public final class SideText {

    private final Desk desk;

    public SideText(Desk desk) {
        this.desk = desk;
    }

    /** The text as it is now; empty if there is no such file any more. */
    public String text() {
        String text = desk.texts().get().texts().get(Desk.file(desk.candidate().get()));
        return text == null ? "" : text;
    }

    /**
     * Takes the text as it is typed; what is typed without a pause is undone at once.
     *
     * @return why it cannot be taken, if it cannot
     */
    public Optional<String> type(String text) {
        if (text.equals(text())) {
            return Optional.empty();
        }
        try {
            desk.make(Change.typing(Desk.file(desk.candidate().get()), text));
            return Optional.empty();
        } catch (ChangeRefused refused) {
            return Optional.of(refused.why());
        }
    }

    /** What is to be said about each line, by its number from 1. */
    public Map<Integer, List<FileFinding>> marks() {
        Map<Integer, List<FileFinding>> marks = new TreeMap<>();
        reading()
                .ifPresent(
                        r ->
                                r.findings()
                                        .forEach(
                                                f ->
                                                        marks.merge(
                                                                f.line(),
                                                                List.of(f),
                                                                SideText::both)));
        return marks;
    }

    private static List<FileFinding> both(List<FileFinding> one, List<FileFinding> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /** The part of which a line speaks, if it speaks of one. */
    public Optional<String> partAt(int line) {
        return places().entrySet().stream()
                .filter(
                        e ->
                                e.getValue().line() == line
                                        && !e.getValue().path().startsWith("loads"))
                .min(Map.Entry.comparingByValue((a, b) -> Integer.compare(a.column(), b.column())))
                .map(Map.Entry::getKey);
    }

    private Map<String, PartPlace> places() {
        return reading().map(CandidateReading::places).orElse(Map.of());
    }

    private Optional<CandidateReading> reading() {
        return Optional.ofNullable(desk.reading().get().candidates().get(desk.candidate().get()));
    }
}
