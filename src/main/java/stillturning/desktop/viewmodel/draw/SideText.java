package stillturning.desktop.viewmodel.draw;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.files.finding.PartPlace;

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
        return text.equals(text())
                ? Optional.empty()
                : desk.attempt(Change.typing(Desk.file(desk.candidate().get()), text));
    }

    /** What is to be said about each line, by its number from 1. */
    public Map<Integer, List<FileFinding>> marks() {
        return desk.openReading().stream()
                .flatMap(reading -> reading.findings().stream())
                .collect(
                        Collectors.groupingBy(
                                FileFinding::line, TreeMap::new, Collectors.toList()));
    }

    /** The part of which a line speaks, if it speaks of one. */
    public Optional<String> partAt(int line) {
        Map<String, PartPlace> places =
                desk.openReading().map(CandidateReading::places).orElse(Map.of());
        return places.entrySet().stream()
                .filter(e -> e.getValue().line() == line)
                .filter(e -> !e.getValue().path().startsWith("loads"))
                .min(Map.Entry.comparingByValue(Comparator.comparingInt(PartPlace::column)))
                .map(Map.Entry::getKey);
    }
}
