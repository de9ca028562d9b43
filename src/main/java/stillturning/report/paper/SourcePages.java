package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.report.html.Sources;
import stillturning.report.html.Sources.SourceNote;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Page.Fact;

/** Where the values come from: every guess that the chosen candidate rests on, the rest counted. */
final class SourcePages {

    private static final String GUESS = "guess";
    private static final String STATED = "stated without a source";
    private static final String STUDY = "study.yaml";

    private final Standpoint from;
    private final Sources sources;

    SourcePages(Standpoint from, Sources sources) {
        this.from = from;
        this.sources = sources;
    }

    List<Block> blocks() {
        List<SourceNote> own = sources.notes().stream().filter(this::concerns).toList();
        List<Block> blocks = new ArrayList<>();
        if (own.isEmpty()) {
            return List.of(new Words("The study gives no origin for its values."));
        }
        blocks.add(
                new Words(
                        "Values that the study and the chosen candidate state, by where they come"
                                + " from. What neither states comes from the program's catalogue, most"
                                + " of whose weights, prices and resistances are guesses."));
        Map<String, Long> counts =
                own.stream()
                        .collect(
                                Collectors.groupingBy(
                                        SourcePages::origin, TreeMap::new, Collectors.counting()));
        blocks.add(
                new Facts(
                        counts.entrySet().stream()
                                .map(e -> new Fact(e.getKey(), String.valueOf(e.getValue())))
                                .toList()));
        List<SourceNote> guesses = own.stream().filter(n -> n.origin().equals(GUESS)).toList();
        if (!guesses.isEmpty()) {
            blocks.add(new Heading("Guesses: what to find out"));
            blocks.add(
                    Grid.of(
                            guesses,
                            List.of(
                                    words("value of", 46, n -> spoken(n.path())),
                                    words("guessed", 20, SourceNote::text),
                                    words("file", 20, SourceNote::file))));
        }
        blocks.add(
                new Note(
                        "Catalogue defaults, data sheets and measured values are listed one by one on"
                                + " the page (explain --html)."));
        return List.copyOf(blocks);
    }

    private boolean concerns(SourceNote note) {
        boolean ofChosen =
                from.chosen()
                        .filter(c -> note.file().startsWith(c.candidate().id() + "."))
                        .isPresent();
        return note.file().equals(STUDY) || ofChosen;
    }

    private static String origin(SourceNote note) {
        return note.origin().isEmpty() ? STATED : note.origin();
    }

    private static String spoken(String path) {
        return path.replace('.', ' ').replace('-', ' ');
    }
}
