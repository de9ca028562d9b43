package stillturning.dossier.exploration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileEdits;
import stillturning.files.move.Drawn;
import stillturning.report.explored.ExploredFront;
import stillturning.yaml.YamlDocument;

/**
 * What a search found, and how it is drawn.
 *
 * @param drawn everything on the front that was not drawn before, by its name
 */
public record Explored(ExploredFront front, Map<String, Drawn> drawn) {
    public Explored {
        drawn = Collections.unmodifiableMap(new LinkedHashMap<>(drawn));
    }

    /** The same with how many pairs of failures end the engine, by the name of a layout. */
    public Explored withPairs(Map<String, Integer> pairs) {
        return new Explored(front.withPairs(pairs), drawn);
    }

    /** It as it is kept. */
    public KeptFront kept() {
        return new KeptFront(
                front.by().criteria(),
                front.front().stream().map(this::kept).toList(),
                KeptFront.KeptSearch.of(front.search()));
    }

    private KeptFront.KeptLayout kept(ExploredFront.ExploredLayout layout) {
        Drawn made = drawn.get(layout.id());
        return made == null
                ? new KeptFront.KeptLayout(layout.id(), layout.from(), layout.steps(), "")
                : new KeptFront.KeptLayout(
                        made.candidate().id(), layout.from(), layout.steps(), made.text().text());
    }

    /**
     * The file of a layout that was found, its title telling it from what it was made from.
     *
     * @throws ChangeRefused if the title cannot be changed
     * @throws IllegalArgumentException if there is no such layout, or it was drawn before
     */
    public YamlDocument file(String name) throws ChangeRefused {
        Drawn layout = drawn.get(name);
        if (layout == null) {
            throw new IllegalArgumentException("no layout " + name + " was found");
        }
        FileEdits edits = new FileEdits(name, layout.text());
        edits.set("candidate", layout.candidate().title() + ", " + name);
        return edits.document();
    }
}
