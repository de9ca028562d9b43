package stillturning.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.html.Sources.SourceNote;
import stillturning.report.page.Page.AssumptionGroup;
import stillturning.report.page.Page.AssumptionRow;

/** Values by where they come from, guesses first. */
final class Assumptions {

    private static final List<String> ORDER =
            List.of("guess", "", "automatic", "catalogue", "data sheet", "measured");
    private static final String STATED = "stated without a source";

    private Assumptions() {}

    static List<AssumptionGroup> of(Sources sources) {
        Map<String, List<AssumptionRow>> groups = new LinkedHashMap<>();
        ORDER.forEach(origin -> groups.put(origin, new ArrayList<>()));
        for (SourceNote note : sources.notes()) {
            groups.computeIfAbsent(note.origin(), o -> new ArrayList<>())
                    .add(new AssumptionRow(note.file(), note.path(), note.text(), note.note()));
        }
        return groups.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(
                        e ->
                                new AssumptionGroup(
                                        e.getKey().isEmpty() ? STATED : e.getKey(),
                                        e.getKey().equals(ORDER.get(0)),
                                        e.getValue()))
                .toList();
    }
}
