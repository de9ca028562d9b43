package stillturning.report.explorer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.oneline.DrawingStates;
import stillturning.report.oneline.DrawingStates.ShownStates;
import stillturning.report.oneline.DrawnCandidate;
import stillturning.story.Snapshot;

/**
 * The states of a candidate's drawing as letters, one for each symbol and then each line, in the
 * drawing's order. A capital says that the contacts stand otherwise than they are drawn.
 */
final class DrawingCode {

    private final Candidate candidate;
    private final DrawnCandidate drawn;
    private final Snapshot before;

    DrawingCode(Study study, Candidate candidate, Snapshot before) {
        this.candidate = candidate;
        this.drawn = CandidateDrawing.drawn(candidate, study);
        this.before = before;
    }

    /** The letter of a state. */
    static char letter(MarkState state) {
        return switch (state) {
            case PLAIN -> 'p';
            case LIVE -> 'l';
            case DARK -> 'd';
            case STARVED -> 's';
            case OVER_VOLTAGE -> 'o';
            case ON_BACKUP -> 'b';
            case FAILED -> 'f';
        };
    }

    /** Ids of the symbols; the lines that follow go by their numbers. */
    List<String> symbols() {
        return drawn.diagram().symbols().stream().map(DiagramSymbol::id).toList();
    }

    int lines() {
        return drawn.diagram().lines().size();
    }

    /** How it looks with nothing wrong. */
    String undisturbed() {
        Failure nothing = Failure.levers("nothing", Map.of());
        return letters(new DrawingStates(candidate, drawn, nothing, before).at(before));
    }

    /** How it looks after a failure, instant by instant. */
    DrawingStates after(Failure failure) {
        return new DrawingStates(candidate, drawn, failure, before);
    }

    String letters(ShownStates shown) {
        StringBuilder letters = new StringBuilder();
        for (DiagramSymbol symbol : drawn.diagram().symbols()) {
            char letter = letter(shown.symbols().getOrDefault(symbol.id(), MarkState.PLAIN));
            boolean turned =
                    shown.glyphs().getOrDefault(symbol.id(), symbol.glyph()) != symbol.glyph();
            letters.append(turned ? Character.toUpperCase(letter) : letter);
        }
        for (int i = 0; i < lines(); i++) {
            letters.append(letter(shown.lines().getOrDefault(i, MarkState.PLAIN)));
        }
        return letters.toString();
    }

    /**
     * What differs between two instants: each letter that something has now, followed by the
     * numbers of what has it, "d3-7,12".
     */
    static String changes(String from, String to) {
        Map<Character, List<Integer>> changed = new LinkedHashMap<>();
        for (int i = 0; i < to.length(); i++) {
            if (from.charAt(i) != to.charAt(i)) {
                changed.computeIfAbsent(to.charAt(i), letter -> new ArrayList<>()).add(i);
            }
        }
        StringBuilder text = new StringBuilder();
        changed.forEach((letter, places) -> text.append(letter).append(runs(places)));
        return text.toString();
    }

    /** Rising numbers with a hyphen where several follow each other, "3-7,12". */
    static String runs(List<Integer> places) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to = 0; from < places.size(); from = ++to) {
            while (to + 1 < places.size() && places.get(to + 1) == places.get(to) + 1) {
                to++;
            }
            runs.add(from == to ? "" + places.get(from) : places.get(from) + "-" + places.get(to));
        }
        return String.join(",", runs);
    }

    /**
     * Strokes of each symbol with contacts as it is drawn, and as it is drawn when they stand
     * otherwise: only those that differ.
     */
    Map<String, Object> contacts() {
        Map<String, Glyph> turned = new LinkedHashMap<>();
        for (DiagramSymbol symbol : drawn.diagram().symbols()) {
            symbol.glyph().turned().ifPresent(glyph -> turned.put(symbol.id(), glyph));
        }
        Diagram diagram = drawn.diagram();
        Sheet sheet = OneLine.laidOut(diagram);
        Map<String, List<Mark.Path>> now = strokes(sheet.picture().marks());
        Map<String, List<Mark.Path>> then =
                strokes(sheet.picture(diagram.looking(Map.of(), Map.of(), turned)).marks());
        Map<String, Object> contacts = new LinkedHashMap<>();
        turned.keySet().forEach(id -> contacts.put(id, exchange(now, then, id)));
        return contacts;
    }

    private static List<Object> exchange(
            Map<String, List<Mark.Path>> now, Map<String, List<Mark.Path>> then, String symbol) {
        List<Mark.Path> one = now.getOrDefault(symbol, List.of());
        List<Mark.Path> other = then.getOrDefault(symbol, List.of());
        List<Integer> gone = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            if (!other.contains(one.get(i))) {
                gone.add(i);
            }
        }
        List<Object> come = new ArrayList<>();
        other.stream()
                .filter(path -> !one.contains(path))
                .forEach(
                        path -> {
                            come.add(path.data());
                            come.add(path.pen().fill());
                            come.add(path.pen().width());
                        });
        return List.of(gone, come);
    }

    private static Map<String, List<Mark.Path>> strokes(List<Mark> marks) {
        Map<String, List<Mark.Path>> strokes = new LinkedHashMap<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.PartMarks part) {
                List<Mark.Path> paths = strokes.computeIfAbsent(part.key(), k -> new ArrayList<>());
                part.marks().stream().flatMap(DrawingCode::path).forEach(paths::add);
            }
        }
        return strokes;
    }

    private static Stream<Mark.Path> path(Mark mark) {
        return mark instanceof Mark.Path path ? Stream.of(path) : Stream.empty();
    }
}
