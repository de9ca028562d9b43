package stillturning.files.move;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stillturning.files.edit.ChangeRefused;

/** One small change of a drawing, not yet made. It belongs to the drawing that it was found in. */
public final class Move {

    /** How it is drawn. */
    interface Redrawing {
        void with(Pen pen) throws ChangeRefused;
    }

    private final MoveKind kind;
    private final String words;
    private final Set<String> touches;
    private final Redrawing drawing;

    /**
     * @param words what is done, as one would tell it: {@code Take the switch bus-tie out}
     * @param touches parts of the drawing that it changes, takes out or joins something to
     */
    Move(MoveKind kind, String words, List<String> touches, Redrawing drawing) {
        this.kind = kind;
        this.words = words;
        this.touches = new LinkedHashSet<>(touches);
        this.drawing = drawing;
    }

    public MoveKind kind() {
        return kind;
    }

    /** What is done, as one would tell it. */
    public String words() {
        return words;
    }

    /** Parts of the drawing that it changes, takes out or joins something to, in that order. */
    public Set<String> touches() {
        return Collections.unmodifiableSet(touches);
    }

    /**
     * The drawing after it.
     *
     * @param drawn the drawing that it was found in
     * @throws ChangeRefused if the file forbids it, or if what comes of it has a mistake
     */
    public Drawn on(Drawn drawn) throws ChangeRefused {
        Pen pen = new Pen(drawn);
        drawing.with(pen);
        return drawn.with(pen.text());
    }

    @Override
    public String toString() {
        return words;
    }
}
